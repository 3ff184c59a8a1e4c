package planewright.app.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import javax.measure.quantity.Time;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.app.Program;
import planewright.app.journal.BuildDayRecord;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.Ids;
import planewright.app.journal.Lineage;
import planewright.app.journal.SetUpRecord;
import planewright.app.journal.StepRecord;
import planewright.app.journal.TemplateContent;
import planewright.app.journal.TemplateRecord;
import planewright.shared.quantity.QuantityProblem;
import planewright.shared.quantity.QuantityText;

@Command(
        name = "new",
        description =
                "Make a template: an outline from an SVG file with millimetres, a procedure of steps, or a set-up of"
                        + " values, which are those that --from flies with now where none are given.")
final class NewTemplate implements Callable<Integer> {
    private final Desk desk;

    @Mixin
    private JournalOption common;

    @Parameters(paramLabel = "NAME", description = "What it is called.")
    private String name;

    @Option(names = "--outline", paramLabel = "FILE.svg", description = "The shape at true size.")
    private Optional<Path> outline = Optional.empty();

    @ArgGroup(exclusive = false, multiplicity = "0..*", heading = "A procedure has one or more of:%n")
    private List<StepOptions> steps = new ArrayList<>();

    @Option(names = "--set-up", description = "Make a set-up.")
    private boolean setUp;

    @Option(
            names = "--value",
            paramLabel = "NAME=QUANTITY",
            description = "Of a set-up, such as 'elevon, low rate=8 mm'; may be repeated.")
    private List<String> values = List.of();

    @Option(names = "--from", paramLabel = "BUILD", description = "The build that it came from.")
    private Optional<String> from = Optional.empty();

    @Option(names = "--derived-from", paramLabel = "NAME", description = "The template that it was made from.")
    private Optional<String> derivedFrom = Optional.empty();

    @Option(names = "--day", paramLabel = "DATE", description = "When it was made, such as 2025-03-14; else today.")
    private Optional<String> day = Optional.empty();

    @Option(names = "--note", paramLabel = "WORDS", description = "A paragraph; may be repeated.")
    private List<String> notes = List.of();

    @Option(names = "--tag", paramLabel = "WORD", description = "May be repeated.")
    private List<String> tags = List.of();

    NewTemplate(Desk desk) {
        this.desk = desk;
    }

    /** One step; what follows {@code --step} belongs to it until the next one. */
    private static final class StepOptions {
        @Option(names = "--step", required = true, paramLabel = "WORDS", description = "What to do.")
        private String text;

        @Option(names = "--hands-on", paramLabel = "TIME", description = "How long hands are busy: 20 min.")
        private String handsOn;

        @Option(names = "--wait", paramLabel = "TIME", description = "How long to leave it alone after: 12 h.")
        private String waiting;

        @Option(names = "--material", paramLabel = "WORDS", description = "By class; may be repeated.")
        private List<String> materials = List.of();

        @Option(names = "--caution", paramLabel = "WORDS", description = "May be repeated.")
        private List<String> cautions = List.of();

        StepRecord record() {
            return new StepRecord(
                    Ids.small(), text, time("--hands-on", handsOn), time("--wait", waiting), materials, cautions);
        }

        private static Optional<Measured<Time>> time(String option, String typed) {
            return Optional.ofNullable(typed).map(text -> Desk.quantity(option, text, Units.MINUTE, Time.class));
        }
    }

    @Override
    public Integer call() throws IOException {
        boolean ofValues = setUp || !values.isEmpty();
        if ((outline.isPresent() ? 1 : 0) + (steps.isEmpty() ? 0 : 1) + (ofValues ? 1 : 0) != 1) {
            throw CommandFailed.words(
                    "what '" + name + "' is is not clear; accepted: one of --outline, --step, and --set-up or --value");
        }
        var made = desk.day("--day", day);
        try (var program = desk.open(common.journal())) {
            requireFree(program);
            var build = from.map(called -> Desk.build(program, called));
            var template = TemplateRecord.of(name, made, content(program, build))
                    .withNotes(notes)
                    .withTags(tags)
                    .withLineage(lineage(program, build, made));
            program.journal().apply(Edit.add("new template", template));
            desk.said(common.json(), template, "Made " + template.kind().word() + " '" + template.name() + "'");
        }
        return 0;
    }

    private void requireFree(Program program) {
        if (program.journal().templates().stream().anyMatch(each -> each.name().equalsIgnoreCase(name.strip()))) {
            throw CommandFailed.work(
                    "template '" + name.strip() + "' is in the journal already; accepted: another name");
        }
    }

    private Lineage lineage(Program program, Optional<BuildRecord> build, LocalDate made) {
        var lineage = build.map(known -> Lineage.NONE.from(BuildDayRecord.of(known, made)))
                .orElse(Lineage.NONE);
        return derivedFrom
                .map(called -> lineage.derivedFrom(Desk.template(program, called)))
                .orElse(lineage);
    }

    private TemplateContent content(Program program, Optional<BuildRecord> build) throws IOException {
        if (outline.isPresent()) {
            return new TemplateContent.Outline(program.folder().outlines().add(outline.get()));
        }
        if (!steps.isEmpty()) {
            return new TemplateContent.Procedure(
                    steps.stream().map(StepOptions::record).toList());
        }
        var given = values.stream().map(NewTemplate::value).toList();
        return new TemplateContent.SetUp(
                given.isEmpty()
                        ? build.map(known ->
                                        SetUpRecord.newest(program.journal().log(known.id())))
                                .orElse(List.of())
                        : given);
    }

    private static SetUpRecord value(String written) {
        int sign = written.lastIndexOf('=');
        if (sign < 1) {
            throw CommandFailed.words("--value is '" + written
                    + "'; accepted: a name, =, and a quantity such as 'elevon, low rate=8 mm'");
        }
        try {
            return new SetUpRecord(
                    written.substring(0, sign), QuantityText.parse(written.substring(sign + 1), Units.NUMBER));
        } catch (QuantityProblem problem) {
            throw CommandFailed.words("--value " + written.substring(0, sign) + ": " + problem.getMessage());
        }
    }
}
