package planewright.app.ui.log;

import java.awt.Font;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.List;
import java.util.StringJoiner;
import java.util.stream.Stream;
import javax.swing.JLabel;
import javax.swing.JPanel;
import planewright.api.quantity.Measured;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.EntryWords;
import planewright.app.journal.JointRecord;
import planewright.app.journal.PictureRecord;
import planewright.app.journal.Reading;
import planewright.app.print.Sheets;
import planewright.app.ui.common.Amounts;
import planewright.app.ui.common.Beside;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.Card;
import planewright.app.ui.common.Chip;
import planewright.app.ui.common.Files;
import planewright.app.ui.common.Icons;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.Markup;
import planewright.app.ui.common.MeasurementChip;
import planewright.app.ui.common.PictureTile;
import planewright.app.ui.common.Stack;
import planewright.app.ui.common.Terms;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Times;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;
import planewright.app.ui.common.Wrapping;

/** An entry to read. */
final class EntryCard extends Card {
    private static final long serialVersionUID = 1L;
    private static final DateTimeFormatter WHEN =
            DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT);
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofLocalizedTime(FormatStyle.SHORT);
    private static final int PICTURE_HEIGHT = 150;

    private final transient Workroom room;
    private final transient BuildRecord build;
    private final transient EntryRecord entry;
    private final JLabel when = Look.quiet("");
    private final transient List<String> told;

    EntryCard(Workroom room, BuildRecord build, EntryRecord entry, Runnable edit) {
        super(new Stack(8));
        this.room = room;
        this.build = build;
        this.entry = entry;
        setName("entry-" + entry.id());
        getAccessibleContext()
                .setAccessibleName(
                        WHEN.format(entry.at()) + " " + Terms.of(entry.kind().word()) + " " + entry.title());
        add(head(edit));
        if (!entry.text().isEmpty()) {
            add(Markup.of(entry.text()));
        }
        entry.keptResult().ifPresent(kept -> add(new KeptPanel(room, entry, kept)));
        told = told();
        addFacts();
        entry.joints().forEach(joint -> add(Words.of(joint(joint))));
        deeds().forEach(each -> add(Words.of(each)));
        if (!entry.pictures().isEmpty()) {
            add(pictures(entry.pictures()));
        }
        if (!entry.tags().isEmpty()) {
            add(Look.sized(Look.quiet(String.join("  ·  ", entry.tags())), 0.9, Font.PLAIN));
        }
    }

    /** Whether this card needs no redrawing: units, the time that a joint has left and marks of staleness change without the entry. */
    boolean stillShows(BuildRecord nowBuild, EntryRecord now) {
        return entry.equals(now)
                && build.name().equals(nowBuild.name())
                && told.equals(told())
                && entry.keptResult().isEmpty();
    }

    /** Tells when it was: under a heading of its day the time is enough; with the day where it is seen without one. */
    void tellWhen(boolean withDay) {
        when.setText((withDay ? WHEN : TIME).format(entry.at()) + "  ·  "
                + Terms.of(entry.kind().word()));
    }

    private JPanel head(Runnable edit) {
        var words = new JPanel(new Stack(2));
        words.setOpaque(false);
        tellWhen(false);
        words.add(Look.sized(when, 0.92, Font.PLAIN));
        if (!entry.title().isEmpty()) {
            words.add(Look.sized(Words.of(entry.title()), 1.15, Font.BOLD));
        }
        var head = new JPanel(new Beside(0, 0));
        head.setOpaque(false);
        head.add(words);
        head.add(Buttons.asSign(Icons.PRINT, Buttons.plain("print-entry", Texts.PRINT.text(), this::print)));
        head.add(Buttons.with(Icons.EDIT, Buttons.plain("edit-entry", Texts.EDIT.text(), edit)));
        return head;
    }

    private void print() {
        Files.print(
                this,
                room,
                build.name() + " " + entry.at().toLocalDate(),
                () -> Sheets.entry(build, entry, room.program().pictures()));
    }

    private void addFacts() {
        if (entry.measurements().isEmpty() && entry.setUp().isEmpty()) {
            return;
        }
        var chips = new JPanel(new Wrapping(6));
        chips.setOpaque(false);
        Reading.of(List.of(entry)).forEach(each -> chips.add(new MeasurementChip(room, each)));
        setUp().forEach(each -> chips.add(new Chip(each, "second")));
        add(chips);
    }

    private List<String> setUp() {
        return entry.setUp().stream()
                .map(each -> Texts.SET_UP.text() + ": " + each.name() + "  "
                        + Amounts.of(room.units().written(each.quantity())))
                .toList();
    }

    /** What the chips and lines say in the units that the builder prefers now, and the joints of the time they have left. */
    private List<String> told() {
        return Stream.of(
                        Reading.of(List.of(entry)).stream().map(each -> MeasurementChip.text(room, each)),
                        setUp().stream(),
                        deeds().stream(),
                        entry.joints().stream().map(this::joint))
                .flatMap(each -> each)
                .toList();
    }

    /** What was flown, mended and done. */
    private List<String> deeds() {
        return Stream.of(
                        entry.flights().stream().map(each -> Texts.FLIGHT.text(EntryWords.flight(each, this::read))),
                        entry.repairs().stream().map(each -> Texts.REPAIR.text(EntryWords.repair(each, this::read))),
                        entry.tasks().stream().map(each -> Texts.TASK.text(EntryWords.task(each, this::read))))
                .flatMap(each -> each)
                .toList();
    }

    private String read(Measured<?> value) {
        return Amounts.of(room.units().written(value));
    }

    private String joint(JointRecord joint) {
        var words = new StringJoiner(" · ");
        words.add(Texts.JOINT.text(joint.name()));
        if (!joint.material().isEmpty()) {
            words.add(joint.material());
        }
        words.add(Texts.JOINT_FROM.text(WHEN.format(joint.start())));
        joint.handsOffUntil().ifPresent(end -> words.add(end(Texts.HANDS_OFF, joint.start(), end)));
        joint.fullyCured().ifPresent(end -> words.add(end(Texts.CURED, joint.start(), end)));
        return words.toString();
    }

    private String end(Texts what, LocalDateTime start, LocalDateTime end) {
        var left = Duration.between(room.now(), end);
        boolean isOver = left.isNegative() || left.isZero();
        return what.text(WHEN.format(end)) + " "
                + (isOver
                        ? Texts.TIME_TAKEN.text(Times.span(Duration.between(start, end)))
                        : Texts.TIME_LEFT.text(Times.span(left)));
    }

    private JPanel pictures(List<PictureRecord> pictures) {
        var strip = new JPanel(new Wrapping(10));
        strip.setOpaque(false);
        for (var picture : pictures) {
            strip.add(new Captioned(PictureTile.of(room, entry, picture, PICTURE_HEIGHT), picture.caption()));
        }
        return strip;
    }
}
