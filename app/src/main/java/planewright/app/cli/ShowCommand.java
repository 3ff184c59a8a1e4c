package planewright.app.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import planewright.app.Program;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Comparison;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.EntryWords;
import planewright.app.store.JsonFiles;
import planewright.app.store.RecordFiles;
import planewright.shared.quantity.UnitChoice;

@Command(name = "show", description = "Show all builds, or a build with its log, or an entry.")
final class ShowCommand implements Callable<Integer> {
    private final Desk desk;

    @Mixin
    private JournalOption common;

    @Parameters(index = "0", paramLabel = "BUILD", arity = "0..1")
    private Optional<String> build = Optional.empty();

    @Parameters(index = "1", paramLabel = "ENTRY", arity = "0..1", description = "Its id, or the end of it.")
    private Optional<String> entry = Optional.empty();

    @Option(
            names = "--beside",
            paramLabel = "BUILD",
            description = "Set the build beside this one: what they are, fly with, weigh and measured last.")
    private Optional<String> beside = Optional.empty();

    ShowCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() throws IOException {
        try (var program = desk.open(common.journal())) {
            if (beside.isPresent()) {
                compare(program, beside.get());
            } else if (build.isEmpty()) {
                builds(program);
            } else if (entry.isEmpty()) {
                log(program, Desk.build(program, build.get()));
            } else {
                entry(Desk.entry(program, Desk.build(program, build.get()), entry.get()));
            }
        }
        return 0;
    }

    private void compare(Program program, String other) {
        if (build.isEmpty() || entry.isPresent()) {
            throw CommandFailed.words("--beside sets one build beside another; accepted: show BUILD --beside OTHER");
        }
        var first = Desk.build(program, build.get());
        var second = Desk.build(program, other);
        var compared = Comparison.of(program.journal(), first, second, UnitChoice.NONE);
        if (common.json()) {
            var array = JsonFiles.object();
            var rows = array.putArray("compared");
            compared.forEach(row -> rows.addObject()
                    .put("kind", row.what().word())
                    .put("name", row.name())
                    .put("first", row.first().text())
                    .put("firstCarried", row.first().carried())
                    .put("second", row.second().text())
                    .put("secondCarried", row.second().carried())
                    .put("difference", row.difference()));
            desk.json(array);
            return;
        }
        var rows = new ArrayList<List<String>>();
        rows.add(List.of("KIND", "NAME", first.name(), second.name(), "DIFFERENCE"));
        compared.forEach(row -> rows.add(List.of(
                row.what().word(), row.name(), row.first().words(), row.second().words(), row.difference())));
        desk.table(List.of(false, false, true, true, true), rows);
    }

    private void builds(Program program) {
        if (common.json()) {
            var node = JsonFiles.object().put("journal", program.journal().name());
            var array = node.putArray("builds");
            program.journal().builds().forEach(each -> array.add(RecordFiles.json(each)));
            desk.json(node);
            return;
        }
        var rows = new ArrayList<List<String>>();
        rows.add(List.of("BUILD", "LIFE", "LAYOUT", "BEGUN", "ENTRIES"));
        for (var each : program.journal().builds()) {
            rows.add(List.of(
                    each.name(),
                    each.life().word(),
                    each.layout(),
                    each.begun().toString(),
                    Integer.toString(program.journal().log(each.id()).size())));
        }
        desk.table(List.of(false, false, false, false, true), rows);
    }

    private void log(Program program, BuildRecord shown) {
        var entries = program.journal().log(shown.id());
        if (common.json()) {
            var node = RecordFiles.json(shown);
            var array = node.putArray("log");
            entries.forEach(each -> array.add(RecordFiles.json(each)));
            desk.json(node);
            return;
        }
        desk.out()
                .println(shown.name() + (shown.layout().isEmpty() ? "" : " · " + shown.layout()) + " · "
                        + shown.life().word() + " · begun " + shown.begun()
                        + shown.begunFrom().map(day -> " from " + day.name()).orElse(""));
        if (!shown.datum().isEmpty()) {
            desk.out().println("Stations from: " + shown.datum());
        }
        desk.out().println();
        var rows = new ArrayList<List<String>>();
        for (var each : entries) {
            rows.add(List.of(
                    each.at().toLocalDate().toString(),
                    each.kind().word(),
                    Desk.heading(each),
                    each.id().substring(18)));
        }
        desk.table(List.of(false, false, false, false), rows);
    }

    private void entry(EntryRecord shown) {
        if (common.json()) {
            desk.json(RecordFiles.json(shown));
            return;
        }
        var out = desk.out();
        out.println(Desk.time(shown.at()) + " · " + shown.kind().word()
                + (shown.tags().isEmpty() ? "" : " · " + String.join(", ", shown.tags())));
        out.println(Desk.heading(shown));
        shown.text().forEach(paragraph -> out.println("\n" + paragraph));
        out.println();
        shown.measurements()
                .forEach(each -> out.println("  " + each.name() + ": "
                        + each.quantity().text() + (each.method().isEmpty() ? "" : " (" + each.method() + ")")));
        shown.setUp()
                .forEach(each -> out.println(
                        "  set-up " + each.name() + ": " + each.quantity().text()));
        shown.joints()
                .forEach(each -> out.println("  joint " + each.name() + ", " + each.material() + ", from "
                        + Desk.time(each.start())
                        + each.fullyCured()
                                .map(cured -> ", cured from " + Desk.time(cured))
                                .orElse("")));
        shown.flights().forEach(each -> out.println("  flight: " + EntryWords.flight(each)));
        shown.repairs().forEach(each -> out.println("  repair: " + EntryWords.repair(each)));
        shown.tasks().forEach(each -> out.println("  done: " + EntryWords.task(each)));
        shown.pictures()
                .forEach(each -> out.println("  picture " + each.hash().substring(0, 12) + ": " + each.caption()));
    }
}
