package planewright.app.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import javax.measure.quantity.Time;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.app.Program;
import planewright.app.journal.BuildDayRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.StepRecord;
import planewright.app.journal.TemplateRecord;
import planewright.app.store.JsonFiles;
import planewright.app.store.RecordFiles;
import planewright.shared.material.Cautions;
import planewright.shared.quantity.QuantityText;

@Command(name = "template", description = "Outlines, procedures and set-ups that the next build starts from.")
final class TemplateCommand extends Group {
    static CommandLine line(Desk desk) {
        return new CommandLine(new TemplateCommand())
                .addSubcommand(new All(desk))
                .addSubcommand(new Show(desk))
                .addSubcommand(new NewTemplate(desk))
                .addSubcommand(new Flew(desk))
                .addSubcommand(new Remove(desk));
    }

    @Command(name = "list", description = "List the templates of the journal.")
    private static final class All implements Callable<Integer> {
        private final Desk desk;

        @Mixin
        private JournalOption common;

        All(Desk desk) {
            this.desk = desk;
        }

        @Override
        public Integer call() throws IOException {
            try (var program = desk.open(common.journal())) {
                var templates = program.journal().templates();
                if (common.json()) {
                    var node = JsonFiles.object();
                    var array = node.putArray("templates");
                    templates.forEach(each -> array.add(RecordFiles.json(each)));
                    desk.json(node);
                    return 0;
                }
                var rows = new ArrayList<List<String>>();
                rows.add(List.of("TEMPLATE", "KIND", "MADE", "FROM", "FLEW ON"));
                for (var each : templates) {
                    rows.add(List.of(
                            each.name(),
                            each.kind().word(),
                            each.made().toString(),
                            each.cameFrom().map(BuildDayRecord::name).orElse(""),
                            String.join(
                                    ", ",
                                    each.flewOn().stream()
                                            .map(BuildDayRecord::name)
                                            .distinct()
                                            .toList())));
                }
                desk.table(List.of(false, false, false, false, false), rows);
            }
            return 0;
        }
    }

    @Command(name = "show", description = "Show a template: its steps, values or size, and where it came from.")
    private static final class Show implements Callable<Integer> {
        private final Desk desk;

        @Mixin
        private JournalOption common;

        @Parameters(paramLabel = "NAME")
        private String name;

        Show(Desk desk) {
            this.desk = desk;
        }

        @Override
        public Integer call() throws IOException {
            try (var program = desk.open(common.journal())) {
                var shown = Desk.template(program, name);
                if (common.json()) {
                    desk.json(RecordFiles.json(shown));
                    return 0;
                }
                var out = desk.out();
                out.println(shown.name() + " · " + shown.kind().word() + " · made " + shown.made()
                        + (shown.tags().isEmpty() ? "" : " · " + String.join(", ", shown.tags())));
                shown.notes().forEach(note -> out.println("\n" + note));
                out.println();
                lineage(program, shown);
                if (shown.outline().isPresent()) {
                    var outline =
                            program.folder().outlines().read(shown.outline().get());
                    out.println("  sheet: " + millimetres(outline.width()) + " × " + millimetres(outline.height())
                            + ", " + Desk.count(outline.paths().size(), "line", "lines"));
                    out.println("  file: "
                            + program.folder().outlines().file(shown.outline().get()));
                }
                shown.values()
                        .forEach(each -> out.println(
                                "  " + each.name() + ": " + each.quantity().text()));
                for (int i = 0; i < shown.steps().size(); i++) {
                    step(i + 1, shown.steps().get(i));
                }
            }
            return 0;
        }

        private static String millimetres(double length) {
            return QuantityText.show(Measured.of(length, Units.MILLIMETRE));
        }

        private void lineage(Program program, TemplateRecord shown) {
            var out = desk.out();
            shown.cameFrom().ifPresent(each -> out.println("  came from: " + said(each)));
            shown.derivedFrom()
                    .ifPresent(id -> out.println("  made from: "
                            + program.journal().templates().stream()
                                    .filter(each -> each.id().equals(id))
                                    .map(TemplateRecord::name)
                                    .findFirst()
                                    .orElse("template " + id + ", which is not in the journal")));
            shown.wentTo().forEach(each -> out.println("  went to: " + said(each)));
            shown.flewOn().forEach(each -> out.println("  flew on: " + said(each)));
        }

        private void step(int number, StepRecord step) {
            var times = Stream.of(shown("hands on ", step.handsOn()), shown("then wait ", step.waiting()))
                    .filter(each -> !each.isEmpty())
                    .toList();
            desk.out()
                    .println("  " + number + ". " + step.text()
                            + (times.isEmpty() ? "" : " (" + String.join(", ", times) + ")"));
            if (!step.materials().isEmpty()) {
                desk.out().println("     materials: " + String.join(", ", step.materials()));
            }
            var said = new ArrayList<>(step.materials());
            said.add(step.text());
            Stream.concat(step.cautions().stream(), Cautions.usual(said).stream())
                    .distinct()
                    .forEach(each -> desk.out().println("     caution: " + each));
        }

        private static String said(BuildDayRecord day) {
            return day.name() + ", " + day.date();
        }

        private static String shown(String words, Optional<Measured<Time>> time) {
            return time.map(known -> words + QuantityText.show(known)).orElse("");
        }
    }

    @Command(name = "flew", description = "Note that a build has flown with a template, or was given it.")
    private static final class Flew implements Callable<Integer> {
        private final Desk desk;

        @Mixin
        private JournalOption common;

        @Parameters(paramLabel = "NAME")
        private String name;

        @Option(names = "--build", required = true, paramLabel = "NAME", description = "Which build.")
        private String build;

        @Option(names = "--day", paramLabel = "DATE", description = "Such as 2025-03-14; else today.")
        private Optional<String> day = Optional.empty();

        @Option(names = "--given", description = "It was given the template and has not flown with it yet.")
        private boolean given;

        Flew(Desk desk) {
            this.desk = desk;
        }

        @Override
        public Integer call() throws IOException {
            var date = desk.day("--day", day);
            try (var program = desk.open(common.journal())) {
                var before = Desk.template(program, name);
                var flown = BuildDayRecord.of(Desk.build(program, build), date);
                var lineage = given
                        ? before.lineage().goneTo(flown)
                        : before.lineage().flownOn(flown);
                var after = before.withLineage(lineage);
                program.journal().apply(Edit.change("template flew", before, after));
                desk.said(
                        common.json(),
                        after,
                        (given ? "Given to " : "Flew on ") + flown.name() + ", " + date + ": '" + before.name() + "'");
            }
            return 0;
        }
    }

    @Command(name = "remove", description = "Put a template into the bin; 'bin --restore' brings it back.")
    private static final class Remove implements Callable<Integer> {
        private final Desk desk;

        @Mixin
        private JournalOption common;

        @Parameters(paramLabel = "NAME")
        private String name;

        Remove(Desk desk) {
            this.desk = desk;
        }

        @Override
        public Integer call() throws IOException {
            try (var program = desk.open(common.journal())) {
                var removed = Desk.template(program, name);
                program.journal().apply(Edit.remove("remove template", removed));
                desk.said(common.json(), removed, "Put '" + removed.name() + "' into the bin");
            }
            return 0;
        }
    }
}
