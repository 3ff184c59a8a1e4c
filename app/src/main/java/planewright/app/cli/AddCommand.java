package planewright.app.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import planewright.api.journal.Entry;
import planewright.api.quantity.Units;
import planewright.app.Program;
import planewright.app.journal.CaptureLine;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.MeasurementRecord;
import planewright.app.journal.PictureRecord;
import planewright.app.store.JsonFiles;
import planewright.shared.quantity.QuantityProblem;
import planewright.shared.quantity.QuantityText;

@Command(
        name = "add",
        description = "Write an entry into a build's log. 'left wing panel 212 g' is a measurement,"
                + " 'fin joint contact adhesive 12 h' starts a joint, anything else is text.")
final class AddCommand implements Callable<Integer> {
    private final Desk desk;

    @Mixin
    private JournalOption common;

    @Option(names = "--build", required = true, paramLabel = "NAME", description = "Whose log.")
    private String build;

    @Parameters(paramLabel = "LINE", arity = "0..*", description = "Lines, each in quotes.")
    private List<String> lines = List.of();

    @Option(names = "--title", paramLabel = "WORDS")
    private String title = "";

    @Option(names = "--text", paramLabel = "WORDS", description = "A paragraph of CommonMark; may be repeated.")
    private List<String> text = List.of();

    @Option(names = "--kind", paramLabel = "WORD", description = "work, note, flight, repair, set-up or hand-over.")
    private String kind = Entry.Kind.WORK.word();

    @Option(names = "--tag", paramLabel = "WORD", description = "May be repeated.")
    private List<String> tags = List.of();

    @Option(names = "--at", paramLabel = "TIME", description = "Such as 2025-03-14T20:15; else now.")
    private Optional<String> at = Optional.empty();

    @Option(
            names = "--measurement",
            paramLabel = "NAME=QUANTITY",
            description = "Such as 'fin height=3 1/2 in ± 1/16 in'; may be repeated.")
    private List<String> measurements = List.of();

    @Option(names = "--picture", paramLabel = "FILE", description = "JPEG or PNG; may be repeated.")
    private List<Path> pictures = List.of();

    AddCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() throws IOException {
        var when = time();
        var measured = measured();
        if (lines.isEmpty() && text.isEmpty() && measured.isEmpty() && pictures.isEmpty() && title.isBlank()) {
            throw CommandFailed.words(
                    "nothing to write; accepted: a line, --title, --text, --measurement or --picture");
        }
        try (var program = desk.open(common.journal())) {
            var log = Desk.build(program, build);
            var entry = EntryRecord.blank(log.id(), kind(), when)
                    .withTitle(title)
                    .withText(text)
                    .withTags(tags)
                    .withMeasurements(measured);
            for (var line : lines) {
                var before = entry;
                entry = CaptureLine.of(line)
                        .map(meant -> meant.addedTo(before, when))
                        .orElse(before);
            }
            entry = entry.withPictures(taken(program));
            program.journal().apply(Edit.add("add entry", entry));
            tell(log.name(), entry);
        }
        return 0;
    }

    private void tell(String log, EntryRecord entry) {
        if (common.json()) {
            desk.json(JsonFiles.object().put("id", entry.id()).put("build", entry.build()));
            return;
        }
        desk.out().println("Wrote into the log of '" + log + "':");
        entry.measurements()
                .forEach(each -> desk.out()
                        .println("  measurement  " + each.name() + ": "
                                + each.quantity().text()));
        entry.joints()
                .forEach(each -> desk.out()
                        .println("  joint        " + each.name() + ", " + each.material() + ", cured from "
                                + each.fullyCured().map(Desk::time).orElse("")));
        entry.text().forEach(each -> desk.out().println("  text         " + each));
        entry.pictures()
                .forEach(each ->
                        desk.out().println("  picture      " + each.hash().substring(0, 12)));
    }

    private List<PictureRecord> taken(Program program) throws IOException {
        for (var picture : pictures) {
            program.pictures().check(picture);
        }
        var records = new ArrayList<PictureRecord>();
        for (var picture : pictures) {
            records.add(program.pictures().add(picture, ""));
        }
        return records;
    }

    private List<MeasurementRecord> measured() {
        return measurements.stream()
                .map(written -> {
                    int sign = written.indexOf('=');
                    if (sign < 1) {
                        throw CommandFailed.words("--measurement is '" + written
                                + "'; accepted: a name, =, and a quantity such as 'fin height=3 1/2 in'");
                    }
                    try {
                        return MeasurementRecord.of(
                                written.substring(0, sign),
                                QuantityText.parse(written.substring(sign + 1), Units.NUMBER),
                                "");
                    } catch (QuantityProblem problem) {
                        throw CommandFailed.words(
                                "--measurement " + written.substring(0, sign) + ": " + problem.getMessage());
                    }
                })
                .toList();
    }

    private Entry.Kind kind() {
        return List.of(Entry.Kind.values()).stream()
                .filter(each -> each != Entry.Kind.KEPT_RESULT && each.word().equalsIgnoreCase(kind.strip()))
                .findFirst()
                .orElseThrow(() -> CommandFailed.words(
                        "--kind is '" + kind + "'; accepted: work, note, flight, repair, set-up, hand-over"));
    }

    private LocalDateTime time() {
        try {
            return at.map(LocalDateTime::parse).orElseGet(desk::now);
        } catch (DateTimeException wrong) {
            throw CommandFailed.words(
                    "--at is '" + at.orElse("") + "'; accepted: a date and time such as 2025-03-14T20:15");
        }
    }
}
