package planewright.app.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.text.TextContentRenderer;
import planewright.app.calc.Described;
import planewright.app.calc.InputTexts;
import planewright.app.calc.KeptFigures;
import planewright.app.calc.Kind;
import planewright.app.calc.Origin;
import planewright.app.calc.Outcome;
import planewright.app.calc.ResultView;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.EntryWords;
import planewright.app.journal.JointRecord;
import planewright.app.pictures.PictureShelf;

/** Puts together what is printed. */
public final class Sheets {
    private Sheets() {}

    /** One entry. */
    public static Sheet entry(BuildRecord build, EntryRecord entry, PictureShelf pictures) {
        return new Sheet(build.name() + " · " + PrintWords.when(entry.at()), blocks(entry, pictures));
    }

    /** A build's whole log, in order of time, after what the build is. */
    public static Sheet log(BuildRecord build, List<EntryRecord> entries, PictureShelf pictures) {
        var blocks = new ArrayList<Sheet.Block>();
        blocks.add(new Sheet.Heading(1, build.name()));
        Stream.of(
                        PrintWords.say(build.layout()),
                        PrintWords.say(
                                "begun {0}, {1}",
                                PrintWords.day(build.begun()),
                                PrintWords.say(build.life().word())),
                        datum(build))
                .filter(line -> !line.isEmpty())
                .forEach(line -> blocks.add(new Sheet.Paragraph(line)));
        build.notes().forEach(note -> blocks.add(new Sheet.Paragraph(plain(note))));
        entries.forEach(entry -> blocks.addAll(blocks(entry, pictures)));
        return new Sheet(PrintWords.say("Build book · {0}", build.name()), blocks);
    }

    /**
     * A calculator's question, what it was given and from where, its answer, sources and cautions.
     *
     * @param pictures of the journal; empty where there is none
     */
    public static Sheet result(
            Described described,
            String build,
            Outcome.Answered answered,
            Map<String, Origin> origins,
            Optional<PictureShelf> pictures) {
        var view = ResultView.of(described, answered);
        var blocks = new ArrayList<Sheet.Block>();
        blocks.add(new Sheet.Heading(1, described.title()));
        blocks.add(new Sheet.Paragraph(described.question()));
        var values = view.byHeading();
        blocks.add(values(PrintWords.say("Result"), values.remove("")));
        view.findings()
                .forEach(finding -> blocks.add(
                        new Sheet.Remark(PrintWords.say(finding.grade().word()), finding.text())));
        view.drawings().forEach(drawing -> blocks.add(new Sheet.DrawingBlock(drawing)));
        pictures.ifPresent(shelf -> view.pictures()
                .forEach(picture -> blocks.add(new Sheet.Photo(shelf.file(picture), picture.caption()))));
        view.charts().forEach(chart -> blocks.add(new Sheet.ChartBlock(chart)));
        for (var table : view.tables()) {
            blocks.add(new Sheet.Heading(2, table.title()));
            blocks.add(new Sheet.Table(table.headings(), table.numeric(), table.rows()));
        }
        values.forEach((heading, aside) -> blocks.add(values(heading, aside)));
        inputs(described, answered, origins, blocks);
        lines(PrintWords.say("Cautions"), described.cautions(), blocks);
        lines(PrintWords.say("Sources"), List.of(described.about().sources()), blocks);
        lines(
                PrintWords.say("Computed by"),
                List.of(PrintWords.say(
                        "{0} version {1}, plugin {2}",
                        described.id(), described.about().version(), described.plugin())),
                blocks);
        return new Sheet(title(described, build), blocks);
    }

    /** The drawings of an answer that are to be cut from, at true size; no blocks where there are none. */
    public static Sheet trueSize(Described described, String build, Outcome.Answered answered) {
        return new Sheet(
                title(described, build),
                ResultView.of(described, answered).drawings().stream()
                        .filter(CutLines::in)
                        .<Sheet.Block>map(Sheet.TrueSize::new)
                        .toList());
    }

    private static String title(Described described, String build) {
        return described.title() + (build.isEmpty() ? "" : " · " + build);
    }

    private static Sheet.Table values(String heading, List<ResultView.Value> values) {
        return new Sheet.Table(
                List.of(heading, PrintWords.say("Value")),
                List.of(false, true),
                values.stream()
                        .map(value -> List.of(value.label(), value.text()))
                        .toList());
    }

    private static void inputs(
            Described described, Outcome.Answered answered, Map<String, Origin> origins, List<Sheet.Block> blocks) {
        blocks.add(new Sheet.Heading(2, PrintWords.say("Given")));
        var rows = new ArrayList<List<String>>();
        for (var field : described.inputs().fields()) {
            var node = answered.inputs().path(field.name());
            if (field.kind() == Kind.ROWS) {
                rows.add(List.of(field.label(), PrintWords.say("{0} rows", node.size()), ""));
            } else if (!node.isMissingNode()) {
                var origin = origins.get(field.name());
                rows.add(List.of(
                        field.label(),
                        InputTexts.shown(field, node, answered.units()),
                        origin == null ? PrintWords.say("as entered") : origin.said()));
            }
        }
        blocks.add(new Sheet.Table(
                List.of(PrintWords.say("Input"), PrintWords.say("Value"), PrintWords.say("From")),
                List.of(false, true, false),
                rows));
    }

    private static List<Sheet.Block> blocks(EntryRecord entry, PictureShelf pictures) {
        var blocks = new ArrayList<Sheet.Block>();
        blocks.add(new Sheet.Heading(2, heading(entry)));
        blocks.add(new Sheet.Paragraph(
                PrintWords.when(entry.at()) + ", " + PrintWords.say(entry.kind().word())
                        + (entry.tags().isEmpty() ? "" : " · " + String.join(", ", entry.tags()))));
        entry.text().forEach(paragraph -> blocks.add(new Sheet.Paragraph(plain(paragraph))));
        if (!entry.measurements().isEmpty()) {
            blocks.add(new Sheet.Table(
                    List.of(PrintWords.say("Measured"), PrintWords.say("Value"), PrintWords.say("How")),
                    List.of(false, true, false),
                    entry.measurements().stream()
                            .map(each -> List.of(each.name(), PrintWords.quantity(each.quantity()), each.method()))
                            .toList()));
        }
        if (!entry.setUp().isEmpty()) {
            blocks.add(new Sheet.Table(
                    List.of(PrintWords.say("Set-up"), PrintWords.say("Value")),
                    List.of(false, true),
                    entry.setUp().stream()
                            .map(each -> List.of(each.name(), PrintWords.quantity(each.quantity())))
                            .toList()));
        }
        entry.joints().forEach(joint -> blocks.add(new Sheet.Remark(PrintWords.say("joint"), joint(joint))));
        entry.flights()
                .forEach(flight -> blocks.add(
                        new Sheet.Remark(PrintWords.say("flight"), EntryWords.flight(flight, PrintWords::quantity))));
        entry.repairs()
                .forEach(repair -> blocks.add(
                        new Sheet.Remark(PrintWords.say("repair"), EntryWords.repair(repair, PrintWords::quantity))));
        entry.tasks()
                .forEach(task -> blocks.add(
                        new Sheet.Remark(PrintWords.say("done"), EntryWords.task(task, PrintWords::quantity))));
        entry.keptResult().ifPresent(kept -> {
            KeptFigures.drawings(kept.results()).forEach(drawing -> blocks.add(new Sheet.DrawingBlock(drawing)));
            KeptFigures.charts(kept.results()).forEach(chart -> blocks.add(new Sheet.ChartBlock(chart)));
        });
        entry.pictures().forEach(picture -> blocks.add(new Sheet.Photo(pictures.file(picture), picture.caption())));
        return blocks;
    }

    /** Its title, or what kind of entry it is. */
    static String heading(EntryRecord entry) {
        return entry.title().isEmpty() ? PrintWords.say(entry.kind().word()) : entry.title();
    }

    private static String joint(JointRecord joint) {
        return joint.name()
                + (joint.material().isEmpty() ? "" : ", " + joint.material())
                + PrintWords.say(", from {0}", PrintWords.when(joint.start()))
                + joint.handsOffUntil()
                        .map(end -> PrintWords.say(", hands off until {0}", PrintWords.when(end)))
                        .orElse("")
                + joint.fullyCured()
                        .map(end -> PrintWords.say(", cured from {0}", PrintWords.when(end)))
                        .orElse("");
    }

    private static void lines(String heading, List<String> lines, List<Sheet.Block> blocks) {
        if (!lines.isEmpty()) {
            blocks.add(new Sheet.Heading(3, heading));
            lines.forEach(line -> blocks.add(new Sheet.Paragraph(line)));
        }
    }

    private static String datum(BuildRecord build) {
        return build.datum().isEmpty() ? "" : PrintWords.say("Stations are measured from: {0}", build.datum());
    }

    private static String plain(String markup) {
        return TextContentRenderer.builder()
                .build()
                .render(Parser.builder().build().parse(markup));
    }
}
