package planewright.app.ui.pictures;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Font;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.JToggleButton;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.Column;
import planewright.app.ui.common.Icons;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.SignBar;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Typing;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;

/** One picture, as large as there is room, with its caption to be written under it. */
final class LargePicture extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Workroom room;
    private final ZoomView view;
    private final JLabel heading = Look.sized(Look.quiet(" "), 0.95, Font.PLAIN);
    private final JTextField caption = Words.named(new JTextField(), Texts.CAPTION.text(), "large-caption");
    private final JToggleButton measure = new JToggleButton(Texts.MEASURE.text(), Icons.MEASURE);
    private final MeasurePanel measuring;
    private final Column beside = new Column(0, 0);
    private final JScrollPane besideScroll;
    private final JButton earlier =
            Buttons.with(Icons.NEXT, Buttons.plain("large-next", Texts.NEXT.text(), () -> step(1)));
    private final JButton later =
            Buttons.with(Icons.PREVIOUS, Buttons.plain("large-previous", Texts.PREVIOUS.text(), () -> step(-1)));
    private transient List<LoggedPicture> all = List.of();
    private transient Optional<LoggedPicture> shown = Optional.empty();
    private boolean alone;
    private transient Optional<Consumer<String>> captioned = Optional.empty();

    /**
     * @param back leads to the grid
     */
    LargePicture(Workroom room, Runnable back) {
        super(new MigLayout("insets 0, gap 6, fill, hidemode 3", "[grow,fill][]", "[][grow,fill][][]"));
        this.room = room;
        view = new ZoomView(room, "large-picture");
        measuring = new MeasurePanel(room, view::repaint);
        setName("large");
        add(bar(back), "cell 0 0 2 1, wmin 0");
        add(view, "cell 0 1, wmin 0, hmin 80");
        beside.add(measuring);
        besideScroll = beside.scrolled();
        besideScroll.setVisible(false);
        add(besideScroll, "cell 1 1, w " + UIScale.scale(280) + "!, hmin 0");
        add(caption, "cell 0 2 2 1, wmin 0");
        add(heading, "cell 0 3 2 1, wmin 0");
        caption.addActionListener(event -> {
            saveCaption();
            view.requestFocusInWindow();
        });
        caption.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent event) {
                saveCaption();
            }
        });
        keys(back);
    }

    private SignBar bar(Runnable back) {
        var bar = new SignBar(6);
        bar.put(Buttons.with(Icons.GRID, Buttons.of("large-back", Texts.PICTURES_ALL.text(), () -> {
            saveCaption();
            back.run();
        })));
        bar.put(later);
        bar.put(earlier);
        bar.put(tipped(Buttons.plain("large-closer", "+", () -> view.zoom(1.25)), Texts.ZOOM_IN));
        bar.put(tipped(Buttons.plain("large-farther", "−", () -> view.zoom(1 / 1.25)), Texts.ZOOM_OUT));
        bar.put(tipped(
                Buttons.with(Icons.FIT, Buttons.plain("large-fit", Texts.FIT.text(), view::fitNow)), Texts.FIT_HINT));
        bar.put(tipped(Buttons.plain("large-one", "1:1", view::oneToOne), Texts.ONE_TO_ONE_HINT));
        bar.put(tipped(
                Buttons.asSign(
                        Icons.TURN_LEFT, Buttons.plain("large-turn-left", Texts.TURN_LEFT.text(), () -> turn(-1))),
                Texts.TURN_LEFT));
        bar.put(tipped(
                Buttons.asSign(
                        Icons.TURN_RIGHT, Buttons.plain("large-turn-right", Texts.TURN_RIGHT.text(), () -> turn(1))),
                Texts.TURN_RIGHT));
        measure.setName("large-measure");
        measure.setToolTipText(Texts.MEASURE_HINT.text());
        measure.addActionListener(event -> refresh());
        bar.put(measure);
        new PictureActions(this, room, () -> shown.stream().toList())
                .buttons("large")
                .forEach(bar::put);
        return bar;
    }

    private static JButton tipped(JButton button, Texts hint) {
        button.setToolTipText(hint.text());
        button.getAccessibleContext().setAccessibleName(hint.text());
        return button;
    }

    private void keys(Runnable back) {
        view.key("LEFT", () -> step(-1));
        view.key("RIGHT", () -> step(1));
        view.key("typed r", () -> turn(1));
        view.key("typed R", () -> turn(-1));
        view.key("F2", caption::requestFocusInWindow);
        view.key("SPACE", this::markInTheMiddle);
        around("PAGE_UP", () -> step(-1));
        around("PAGE_DOWN", () -> step(1));
        around("ESCAPE", () -> {
            if (caption.isFocusOwner()) {
                shown.ifPresent(this::fillCaption);
                view.requestFocusInWindow();
            } else {
                saveCaption();
                back.run();
            }
        });
    }

    private void around(String stroke, Runnable action) {
        getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke(stroke), stroke);
        getActionMap().put(stroke, new javax.swing.AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(java.awt.event.ActionEvent event) {
                action.run();
            }
        });
    }

    /** Whoever has no mouse moves the picture under the cross in the middle. */
    private void markInTheMiddle() {
        if (measure.isSelected() && !alone) {
            view.viewing().ifPresent(now -> measuring.tool().set(view.getWidth() / 2.0, view.getHeight() / 2.0, now));
        }
    }

    /** Shows one of these pictures. */
    void show(List<LoggedPicture> pictures, LoggedPicture wanted) {
        alone = false;
        put(pictures, wanted);
    }

    /**
     * Shows a picture that stands in no log yet: to be looked at and turned.
     *
     * @param written takes its caption; without, it has none
     */
    void showAlone(LoggedPicture picture, Optional<Consumer<String>> written) {
        alone = true;
        captioned = written;
        put(List.of(picture), picture);
    }

    private void put(List<LoggedPicture> pictures, LoggedPicture wanted) {
        all = pictures;
        boolean same =
                shown.map(LoggedPicture::key).filter(wanted.key()::equals).isPresent();
        if (!same || !caption.isFocusOwner()) {
            fillCaption(wanted);
        }
        shown = Optional.of(wanted);
        refresh();
    }

    /** One field serves all pictures: what was typed for another is not to be taken back here. */
    private void fillCaption(LoggedPicture picture) {
        caption.setText(picture.caption());
        Typing.forget(caption);
    }

    /** What is shown, in whatever state it is in now; empty where it has left the log. */
    Optional<LoggedPicture> shown() {
        return shown;
    }

    void editCaption() {
        caption.requestFocusInWindow();
        caption.selectAll();
    }

    void focusPicture() {
        view.requestFocusInWindow();
    }

    void close() {
        shown = Optional.empty();
        view.clear();
    }

    private void refresh() {
        shown.ifPresent(picture -> {
            int place = place(picture);
            heading.setText(
                    alone
                            ? (captioned.isPresent() ? Texts.PICTURE_UNSAVED : Texts.PICTURE_ALONE).text()
                            : Texts.PICTURE_OF.text(place + 1, all.size(), picture.heading()));
            heading.setToolTipText(heading.getText());
            caption.setEnabled(!alone || captioned.isPresent());
            measure.setEnabled(!alone);
            boolean measures = measure.isSelected() && !alone;
            later.setEnabled(place > 0);
            earlier.setEnabled(place < all.size() - 1);
            measuring.about(picture);
            besideScroll.setVisible(measures);
            view.setTool(measures ? new WithCross(measuring.tool(), view) : new ZoomView.Tool() {});
            view.show(picture);
            revalidate();
        });
    }

    private int place(LoggedPicture picture) {
        for (int place = 0; place < all.size(); place++) {
            if (all.get(place).key().equals(picture.key())) {
                return place;
            }
        }
        return 0;
    }

    private void step(int by) {
        saveCaption();
        shown.ifPresent(picture -> {
            int place = place(picture) + by;
            if (place >= 0 && place < all.size()) {
                show(all, all.get(place));
            }
        });
    }

    private void turn(int by) {
        shown.ifPresent(picture -> Turns.turn(room, picture.picture(), by));
    }

    private void saveCaption() {
        var written = caption.getText().strip();
        shown.filter(picture -> caption.isEnabled() && !picture.caption().equals(written))
                .ifPresent(picture -> {
                    var after = picture.captioned(written);
                    shown = Optional.of(after);
                    if (alone) {
                        captioned.ifPresent(takes -> takes.accept(written));
                    } else {
                        room.edit(picture.edit(Texts.CAPTION_EDIT.text(), after), () -> {});
                    }
                });
    }

    /** A cross in the middle, where the space bar sets a mark, while keys move the picture. */
    private record WithCross(MeasureTool tool, ZoomView view) implements ZoomView.Tool {
        private static final int ARM = 9;

        @Override
        public boolean press(java.awt.event.MouseEvent event, Viewing viewing) {
            return tool.press(event, viewing);
        }

        @Override
        public void drag(java.awt.event.MouseEvent event, Viewing viewing) {
            tool.drag(event, viewing);
        }

        @Override
        public void paint(java.awt.Graphics2D g, Viewing viewing, java.awt.Dimension size) {
            tool.paint(g, viewing, size);
            if (view.isFocusOwner()) {
                double x = view.getWidth() / 2.0;
                double y = view.getHeight() / 2.0;
                ZoomView.stroke(g, new java.awt.geom.Line2D.Double(x - ARM, y, x + ARM, y));
                ZoomView.stroke(g, new java.awt.geom.Line2D.Double(x, y - ARM, x, y + ARM));
            }
        }
    }
}
