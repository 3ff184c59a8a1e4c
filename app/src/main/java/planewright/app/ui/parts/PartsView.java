package planewright.app.ui.parts;

import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Rectangle2D;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.Texts;
import planewright.app.ui.planform.Ground;
import planewright.app.ui.planform.GroundView;
import planewright.app.ui.planform.Sight;
import planewright.app.ui.planform.Silhouette;

/**
 * The mass ledger as a drawing. Parts are dragged, out of the tray too, or chosen and moved by keys; the ground is dragged and
 * zoomed. What a drag, or a run of keys, has changed is one edit.
 */
final class PartsView extends GroundView {
    private static final long serialVersionUID = 1L;
    private static final double REACH = 4;
    /** So far the pointer goes before a press becomes a drag, px. */
    private static final int DRAG = 3;

    private final transient PartsModel model;
    private final transient Sight sight;
    private final transient Choice choice;
    private transient Optional<Drag> drag = Optional.empty();

    /** The part that is chosen, in the table as on the drawings. */
    interface Choice {
        /** Its row; −1 where none is. */
        int row();

        void choose(int row);

        /** Lets its name, or its mass, be typed. */
        void edit(int row, boolean name);

        /** Ends what is being typed; false where it cannot be understood and stays. */
        boolean stopTyping();

        void remove(int row);
    }

    /**
     * A press that may become a drag.
     *
     * @param part what was pressed; empty for the ground
     * @param from where
     * @param offX from there to the middle of the part, px
     * @param offY likewise
     * @param under way once the pointer has gone far enough
     */
    private record Drag(Optional<DrawnPart> part, Point from, double offX, double offY, boolean underWay) {
        Drag to(Point now, boolean begun) {
            return new Drag(part, now, offX, offY, begun);
        }
    }

    PartsView(PartsModel model, Sight sight, Choice choice) {
        super(new Dimension(320, 260), new Dimension(110, 120));
        this.model = model;
        this.sight = sight;
        this.choice = choice;
        setName(sight == Sight.ABOVE ? "parts-above" : "parts-side");
        listen(new Mouse(), new Keys());
        refresh();
    }

    /** What is shown, or what is chosen, is another. */
    void refresh() {
        var words = (sight == Sight.ABOVE ? Texts.PARTS_ABOVE : Texts.PARTS_SIDE).text();
        getAccessibleContext()
                .setAccessibleName(
                        chosen().map(part -> words + ": " + model.words(part)).orElse(words));
        repaint();
    }

    private Optional<DrawnPart> chosen() {
        return model.drawn().stream().filter(part -> part.row() == choice.row()).findFirst();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        var g = (Graphics2D) graphics.create();
        var colours = Look.figures();
        g.setColor(colours.paper());
        g.fillRect(0, 0, getWidth(), getHeight());
        Silhouette.smooth(g);
        var parts = model.drawn();
        var tray = tray();
        Silhouette.datum(g, ground(), getWidth(), getHeight(), colours);
        model.shape().ifPresent(shape -> Silhouette.paint(g, shape, sight, ground(), colours));
        var picture = new PartsPicture(g, sight, ground(), colours);
        model.range().ifPresent(picture::range);
        picture.parts(parts, choice.row(), isFocusOwner());
        Balance.of(parts).ifPresent(picture::balance);
        picture.names(parts, choice.row(), new Rectangle2D.Double(0, 0, getWidth(), tray.top()));
        picture.tray(tray, choice.row(), getWidth(), getHeight());
        g.dispose();
    }

    /** Only from above is it seen where a part from the tray comes to sit along and across. */
    private Tray tray() {
        return Tray.of(
                sight == Sight.ABOVE ? model.drawn() : List.of(),
                getFontMetrics(Look.figures().font()),
                getWidth(),
                getHeight());
    }

    @Override
    protected Optional<Ground> fitting() {
        return Optional.of(Ground.fitting(reach(), getWidth(), tray().top()));
    }

    /** All of the shape and of the parts, m. */
    private Rectangle2D reach() {
        var bounds = model.shape().map(shape -> Ground.bounds(shape, sight));
        var all = bounds.orElse(null);
        for (var part : model.drawn()) {
            if (part.isPlaced()) {
                var at = part.place();
                all = all == null ? new Rectangle2D.Double(sight.across(at), at.x(), 0, 0) : all;
                all.add(sight.across(at), at.x());
            }
        }
        return all == null ? new Rectangle2D.Double(-0.5, -0.1, 1, 0.8) : all;
    }

    /** The part under a pixel, the smallest where several are. */
    private Optional<DrawnPart> at(Point place) {
        var waiting = tray().at(place.x, place.y);
        if (waiting.isPresent() || place.y >= tray().top()) {
            return waiting;
        }
        double heaviest = PartsPicture.heaviest(model.drawn());
        return model.drawn().stream()
                .filter(DrawnPart::isPlaced)
                .filter(part ->
                        ground().at(part.place(), sight).distance(place) <= PartsPicture.radius(part, heaviest) + REACH)
                .min(Comparator.comparingDouble(DrawnPart::grams));
    }

    @Override
    protected void keepTried() {
        if (drag.isEmpty()) {
            model.keep();
        }
    }

    private void step(int across, int aft, boolean finer) {
        chosen().ifPresent(part -> {
            stand();
            double step = model.step(finer);
            var from = part.place();
            boolean isPlaced = part.isPlaced();
            double x = isPlaced
                    ? from.x() + aft * step
                    : Balance.of(model.drawn()).map(now -> now.x().station()).orElse(0.0);
            model.tryOut(part, sight, sight.across(from) + (isPlaced ? across * step : 0), x, model.step(true));
            keepSoon();
        });
    }

    /** The next part, or the one before; beyond the last the next component has its turn. */
    private void go(int by) {
        int next = choice.row() < 0 ? (by > 0 ? 0 : model.getRowCount() - 1) : choice.row() + by;
        if (next >= 0 && next < model.getRowCount()) {
            choice.choose(next);
        } else {
            leave(by);
        }
    }

    private final class Mouse extends MouseAdapter {
        @Override
        public void mousePressed(MouseEvent event) {
            if (!choice.stopTyping()) {
                return;
            }
            keep();
            requestFocusInWindow();
            stand();
            var part = at(event.getPoint());
            part.ifPresent(each -> choice.choose(each.row()));
            var middle = part.filter(DrawnPart::isPlaced)
                    .map(each -> ground().at(each.place(), sight))
                    .orElse(event.getPoint());
            drag = Optional.of(new Drag(
                    part, event.getPoint(), middle.getX() - event.getX(), middle.getY() - event.getY(), false));
        }

        @Override
        public void mouseDragged(MouseEvent event) {
            drag.ifPresent(held -> {
                boolean begun = held.underWay() || held.from().distance(event.getPoint()) >= DRAG;
                if (held.part().isPresent()) {
                    drag = Optional.of(held.to(held.from(), begun));
                    if (begun && event.getY() < tray().top()) {
                        model.tryOut(
                                held.part().get(),
                                sight,
                                ground().across(event.getX() + held.offX()),
                                ground().aft(event.getY() + held.offY()),
                                model.step(true));
                    }
                } else {
                    drag(
                            event.getX() - held.from().getX(),
                            event.getY() - held.from().getY());
                    drag = Optional.of(held.to(event.getPoint(), true));
                }
            });
        }

        @Override
        public void mouseReleased(MouseEvent event) {
            drag = Optional.empty();
            keep();
        }

        @Override
        public void mouseClicked(MouseEvent event) {
            if (event.getClickCount() != 2) {
                return;
            }
            at(event.getPoint()).ifPresentOrElse(part -> choice.edit(part.row(), false), () -> {
                if (event.getY() < tray().top()) {
                    model.add(
                            sight,
                            ground().across(event.getX()),
                            ground().aft(event.getY()),
                            row -> choice.edit(row, true));
                }
            });
        }

        @Override
        public void mouseMoved(MouseEvent event) {
            setCursor(Cursor.getPredefinedCursor(
                    at(event.getPoint()).isPresent() ? Cursor.HAND_CURSOR : Cursor.DEFAULT_CURSOR));
        }
    }

    private final class Keys extends KeyAdapter {
        @Override
        public void keyPressed(KeyEvent event) {
            boolean finer = event.isShiftDown();
            switch (event.getKeyCode()) {
                case KeyEvent.VK_LEFT -> step(-1, 0, finer);
                case KeyEvent.VK_RIGHT -> step(1, 0, finer);
                case KeyEvent.VK_UP -> step(0, -1, finer);
                case KeyEvent.VK_DOWN -> step(0, 1, finer);
                case KeyEvent.VK_TAB -> {
                    keep();
                    go(finer ? -1 : 1);
                }
                case KeyEvent.VK_ENTER -> chosen().ifPresent(part -> choice.edit(part.row(), false));
                case KeyEvent.VK_DELETE -> chosen().ifPresent(part -> choice.remove(part.row()));
                case KeyEvent.VK_ESCAPE -> {
                    if (!model.isTrying()) {
                        return;
                    }
                    forget();
                    drag = Optional.empty();
                    model.drop();
                }
                default -> {
                    return;
                }
            }
            event.consume();
        }
    }
}
