package planewright.app.ui.log;

import java.awt.Font;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.CaptureLine;
import planewright.app.journal.DayEntry;
import planewright.app.ui.common.Amounts;
import planewright.app.ui.common.Background;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.Completion;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.PictureIntake;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Times;
import planewright.app.ui.common.Typing;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;

/** One line for gluey hands, with a preview of what Enter will write into today's entry. */
public final class CaptureBar extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Workroom room;
    private final JTextField line = new JTextField();
    private final transient CaptureNames names;
    private final transient Background.Latest completing;
    /** The build into whose log the line as it stands is being written. */
    private transient Optional<String> writing = Optional.empty();

    private final JLabel preview = Look.sized(Look.quiet(""), 0.92, Font.PLAIN);

    public CaptureBar(Workroom room, LogPage log) {
        super(new MigLayout("insets 8 10 2 10, gap 2, wrap 1, fillx", "[grow,fill]"));
        this.room = room;
        names = new CaptureNames(room.program());
        completing = room.background().latest();
        setName("capture");
        Words.named(line, Texts.CAPTURE.text(), "capture-line");
        line.putClientProperty("JTextField.placeholderText", Texts.CAPTURE_HINT.text());
        Buttons.hint(line, Texts.CAPTURE.text(), "ctrl L");
        preview.setName("capture-preview");
        add(line);
        add(preview, "wmin 0, hmin 16");
        line.addActionListener(event -> write());
        Buttons.onEdit(line, () -> {
            writing = Optional.empty();
            preview();
        });
        Completion.on(line, this::complete);
        PictureIntake.on(line, log::takeFiles, log::takePasted);
        room.onChange(this::preview);
        preview();
    }

    /** Puts the caret here. */
    public void focus() {
        line.requestFocusInWindow();
    }

    private void preview() {
        line.setEnabled(room.build().isPresent());
        preview.setText(CaptureLine.of(line.getText()).map(this::words).orElse(" "));
    }

    private void complete(String typed, Consumer<List<Completion.Offer>> answer) {
        room.build().ifPresent(build -> {
            completing.ask(() -> names.offers(typed, build), answer);
            names.onMore(() -> {
                if (line.getText().equals(typed)) {
                    completing.ask(() -> names.offers(typed, build), answer);
                }
            });
        });
    }

    private String words(CaptureLine meant) {
        if (meant instanceof CaptureLine.Measured measured) {
            return Texts.WILL_MEASURE.text(measured.name(), Amounts.of(measured.quantity()));
        }
        if (meant instanceof CaptureLine.Joined joined) {
            var end = room.now().plus(joined.cure());
            return Texts.WILL_JOIN.text(
                    joined.name(),
                    joined.material(),
                    Times.clock(end, room.now().toLocalDate()));
        }
        return Texts.WILL_WRITE.text();
    }

    /** What the edit is called that writes it. */
    private static String told(CaptureLine meant) {
        if (meant instanceof CaptureLine.Measured measured) {
            return Texts.CAPTURE_MEASURED_EDIT.text(measured.name(), Amounts.of(measured.quantity()));
        }
        return meant instanceof CaptureLine.Joined joined
                ? Texts.CAPTURE_JOINED_EDIT.text(joined.name())
                : Texts.CAPTURE_EDIT.text();
    }

    private void write() {
        room.build()
                .filter(build -> writing.filter(build.id()::equals).isEmpty())
                .ifPresent(build ->
                        CaptureLine.of(line.getText()).ifPresent(meant -> write(build, meant, line.getText())));
    }

    /** The line is cleared once it is saved, unless it was changed meanwhile. */
    private void write(BuildRecord build, CaptureLine meant, String typed) {
        var now = room.now();
        writing = Optional.of(build.id());
        room.edit(
                () -> DayEntry.writing(
                        room.journal(), build.id(), now, told(meant), entry -> meant.addedTo(entry, now)),
                () -> {
                    if (line.getText().equals(typed)) {
                        line.setText("");
                        Typing.forget(line);
                    }
                },
                failure -> {
                    if (line.getText().equals(typed)) {
                        writing = Optional.empty();
                    }
                    room.failed(failure);
                });
    }
}
