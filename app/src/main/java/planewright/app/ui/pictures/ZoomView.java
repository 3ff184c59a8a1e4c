package planewright.app.ui.pictures;

import java.awt.BasicStroke;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import planewright.api.figure.Point;
import planewright.app.journal.PictureRecord;
import planewright.app.pictures.PictureShelf;
import planewright.app.ui.common.Background;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;

/** A picture to come close to: zoomed by wheel and keys, moved by dragging and keys. */
final class ZoomView extends JPanel {
    private static final long serialVersionUID = 1L;
    /** Full size, and smaller ones, so that what is drawn is never shrunk by more than half: quick and without flicker. */
    private static final int[] EDGES = {6000, 3000, 1500, 750};

    private static final double STEP = 1.25;
    private static final int MOVE = 60;

    private final transient Workroom room;
    private final transient Background.Latest reading;
    private final JTextArea words = Words.quiet("");
    private transient BufferedImage[] levels = {};
    private transient Optional<PictureRecord> picture = Optional.empty();
    private transient Optional<Viewing> viewing = Optional.empty();
    private boolean fitted = true;
    private transient Runnable moved = () -> {};
    private transient Tool tool = new Tool() {};

    /** What is done to the picture besides looking at it. */
    interface Tool {
        /** Whether a press of the mouse is for the tool, in pixels of the view; else it moves the picture. */
        default boolean press(MouseEvent event, Viewing viewing) {
            return false;
        }

        /** What is taken hold of is drawn along. */
        default void drag(MouseEvent event, Viewing viewing) {}

        default void paint(Graphics2D g, Viewing viewing, Dimension view) {}
    }

    ZoomView(Workroom room, String name) {
        super(new MigLayout("fill, insets 20", "[center]", "[center]"));
        this.room = room;
        this.reading = room.background().latest();
        setName(name);
        setFocusable(true);
        setBorder(BorderFactory.createEmptyBorder(2, 2, 2, 2));
        add(words, "w 420, wmin 0");
        var mouse = new Mouse();
        addMouseListener(mouse);
        addMouseMotionListener(mouse);
        addMouseWheelListener(mouse);
        addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                viewing.ifPresent(now -> show(fitted ? fit() : now.within(getSize()), fitted));
            }
        });
        addFocusListener(new java.awt.event.FocusAdapter() {
            @Override
            public void focusGained(java.awt.event.FocusEvent event) {
                repaint();
            }

            @Override
            public void focusLost(java.awt.event.FocusEvent event) {
                repaint();
            }
        });
        keys();
    }

    private void keys() {
        for (var stroke : List.of("typed +", "typed =", "ADD")) {
            key(stroke, () -> zoom(STEP));
        }
        for (var stroke : List.of("typed -", "SUBTRACT")) {
            key(stroke, () -> zoom(1 / STEP));
        }
        key("typed 0", this::fitNow);
        key("typed 1", this::oneToOne);
        key("ctrl LEFT", () -> shift(MOVE, 0));
        key("ctrl RIGHT", () -> shift(-MOVE, 0));
        key("ctrl UP", () -> shift(0, MOVE));
        key("ctrl DOWN", () -> shift(0, -MOVE));
    }

    void key(String stroke, Runnable action) {
        getInputMap().put(KeyStroke.getKeyStroke(stroke), stroke);
        getActionMap().put(stroke, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(java.awt.event.ActionEvent event) {
                action.run();
            }
        });
    }

    void setTool(Tool tool) {
        this.tool = tool;
        repaint();
    }

    /** Runs after the builder has zoomed or moved the picture. */
    void onMoved(Runnable listener) {
        moved = listener;
    }

    /** Shows a picture; one that is shown already stays as it lies. */
    void show(LoggedPicture wanted) {
        var record = wanted.picture();
        getAccessibleContext().setAccessibleName(Texts.PICTURE.text(wanted.heading()));
        if (picture.map(PictureRecord::hash).filter(record.hash()::equals).isPresent()) {
            viewing.filter(now -> now.turns() != Turns.of(room, record)).ifPresent(now -> show(fit(), true));
            return;
        }
        picture = Optional.of(record);
        levels = new BufferedImage[0];
        viewing = Optional.empty();
        Words.show(words, Texts.PICTURE_READING.text());
        repaint();
        reading.ask(
                () -> Read.of(() -> PictureShelf.views(room.program().pictures().file(record), EDGES)), this::take);
    }

    /** A picture that was read, or the reason why it cannot be. */
    private record Read(BufferedImage[] views, String reason) {
        static Read of(java.util.concurrent.Callable<BufferedImage[]> reader) {
            try {
                return new Read(reader.call(), "");
            } catch (Exception unreadable) {
                return new Read(new BufferedImage[0], unreadable.getLocalizedMessage());
            }
        }
    }

    private void take(Read read) {
        levels = read.views();
        Words.show(words, read.reason());
        if (levels.length > 0) {
            show(fit(), true);
        }
    }

    /** Lets the memory of a picture go that nobody looks at. */
    void clear() {
        reading.drop();
        picture = Optional.empty();
        viewing = Optional.empty();
        levels = new BufferedImage[0];
    }

    boolean isThere() {
        return viewing.isPresent();
    }

    Optional<Viewing> viewing() {
        return viewing;
    }

    /** How much larger than in whole it is shown. */
    double zoom() {
        return viewing.map(now -> now.scale() / fit().scale()).orElse(1.0);
    }

    /** Shows the same part in the same size as another view does of its own picture. */
    void follow(ZoomView other) {
        if (viewing.isPresent() && other.viewing.isPresent()) {
            var centre = other.viewing.get().centre(other.getSize());
            var own = fit().zoomedTo(fit().scale() * other.zoom(), 0, 0).centred(centre, getSize());
            show(own.within(getSize()), other.fitted);
        }
    }

    void zoom(double factor) {
        viewing.ifPresent(now -> change(
                now.zoomedTo(now.scale() * factor, getWidth() / 2.0, getHeight() / 2.0)
                        .within(getSize()),
                false));
    }

    void fitNow() {
        viewing.ifPresent(now -> change(fit(), true));
    }

    /** One pixel of the picture on one of the screen. */
    void oneToOne() {
        viewing.ifPresent(now -> change(
                now.zoomedTo(1 / density(), getWidth() / 2.0, getHeight() / 2.0).within(getSize()), false));
    }

    private void shift(int right, int down) {
        viewing.ifPresent(now -> change(now.moved(right, down).within(getSize()), fitted));
    }

    private double density() {
        var configuration = getGraphicsConfiguration();
        return configuration == null ? 1 : configuration.getDefaultTransform().getScaleX();
    }

    private Viewing fit() {
        var size = new Dimension(levels[0].getWidth(), levels[0].getHeight());
        int turns = picture.map(shown -> Turns.of(room, shown)).orElse(0);
        return Viewing.fit(size, turns, getSize(), Math.max(1, 2 / density()));
    }

    private void change(Viewing changed, boolean whole) {
        show(changed, whole);
        moved.run();
    }

    private void show(Viewing changed, boolean whole) {
        viewing = Optional.of(changed);
        fitted = whole;
        repaint();
    }

    @Override
    protected void paintComponent(Graphics g) {
        super.paintComponent(g);
        var own = (Graphics2D) g.create();
        viewing.ifPresent(now -> paint(own, now));
        if (isFocusOwner()) {
            own.setColor(javax.swing.UIManager.getColor("Component.focusColor"));
            own.setStroke(new BasicStroke(2));
            own.drawRect(1, 1, getWidth() - 2, getHeight() - 2);
        }
        own.dispose();
    }

    private void paint(Graphics2D g, Viewing now) {
        var level = level(now.scale() * density());
        var place = now.transform();
        place.concatenate(AffineTransform.getScaleInstance(
                (double) levels[0].getWidth() / level.getWidth(), (double) levels[0].getHeight() / level.getHeight()));
        boolean single = now.scale() * density() >= 3;
        g.setRenderingHint(
                RenderingHints.KEY_INTERPOLATION,
                single
                        ? RenderingHints.VALUE_INTERPOLATION_NEAREST_NEIGHBOR
                        : RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        g.drawImage(level, place, null);
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        tool.paint(g, now, getSize());
    }

    /** The smallest that is still as fine as the screen. */
    private BufferedImage level(double wanted) {
        for (int i = levels.length - 1; i > 0; i--) {
            if (levels[i].getWidth() >= wanted * levels[0].getWidth()) {
                return levels[i];
            }
        }
        return levels[0];
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(80, 80);
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(400, 300);
    }

    /** Whatever is no colour of the picture itself stands out from it in both looks. */
    static void stroke(Graphics2D g, java.awt.Shape shape) {
        g.setColor(Look.colour("card"));
        g.setStroke(new BasicStroke(4f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(shape);
        g.setColor(Look.colour("second"));
        g.setStroke(new BasicStroke(1.8f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(shape);
    }

    private final class Mouse extends MouseAdapter {
        private Optional<Point> hold = Optional.empty();
        private boolean forTool;

        @Override
        public void mousePressed(MouseEvent event) {
            requestFocusInWindow();
            if (event.getButton() == MouseEvent.BUTTON1 && viewing.isPresent()) {
                forTool = tool.press(event, viewing.get());
                hold = forTool ? Optional.empty() : Optional.of(new Point(event.getX(), event.getY()));
                setCursor(Cursor.getPredefinedCursor(forTool ? Cursor.CROSSHAIR_CURSOR : Cursor.MOVE_CURSOR));
                repaint();
            }
        }

        @Override
        public void mouseDragged(MouseEvent event) {
            if (forTool && viewing.isPresent()) {
                tool.drag(event, viewing.get());
                repaint();
            }
            hold.ifPresent(from -> {
                hold = Optional.of(new Point(event.getX(), event.getY()));
                shift((int) (event.getX() - from.x()), (int) (event.getY() - from.y()));
            });
        }

        @Override
        public void mouseReleased(MouseEvent event) {
            hold = Optional.empty();
            forTool = false;
            setCursor(null);
        }

        @Override
        public void mouseWheelMoved(MouseWheelEvent event) {
            double factor = Math.pow(STEP, -event.getPreciseWheelRotation());
            viewing.ifPresent(now -> change(
                    now.zoomedTo(now.scale() * factor, event.getX(), event.getY())
                            .within(getSize()),
                    false));
        }
    }
}
