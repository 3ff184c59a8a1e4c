package planewright.app.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Unmatched;
import planewright.api.calculator.Proposal;
import planewright.app.Program;
import planewright.app.calc.Calculation;
import planewright.app.calc.Described;
import planewright.app.calc.Filled;
import planewright.app.calc.JsonSchemas;
import planewright.app.calc.Keeping;
import planewright.app.calc.Kind;
import planewright.app.calc.Origin;
import planewright.app.calc.Outcome;
import planewright.app.calc.PluginHost;
import planewright.app.calc.Prefill;
import planewright.app.calc.ResultView;
import planewright.app.calc.Runs;
import planewright.app.journal.BuildRecord;
import planewright.app.store.JsonFiles;
import planewright.app.store.Unreadable;

@Command(
        name = "calc",
        header = "Run a calculator; without an id, list them.",
        description = {
            "Inputs come from the build's journal, then from --inputs, then from options named after the calculator's"
                    + " inputs; the later ones win. 'calc ID --describe' lists them.",
            "",
            "  calc balance.ledger --build NAME --target-x '92 mm'",
            "  calc balance.ledger --every-build --set 'targetX=92 mm'",
            "  calc balance.ledger --parts 'name=motor, mass=62 g, x=40 mm' \\",
            "                      --parts 'name=pack, mass=186 g, x=-20 mm'",
            ""
        })
final class CalcCommand implements Callable<Integer> {
    private static final Filled NOTHING = new Filled(JsonFiles.object(), Map.of());

    private final Desk desk;

    @Mixin
    private JournalOption common;

    @Parameters(paramLabel = "ID", arity = "0..1", description = "Such as balance.ledger.")
    private Optional<String> id = Optional.empty();

    @Option(names = "--build", paramLabel = "NAME", description = "Take inputs from this build's journal.")
    private Optional<String> build = Optional.empty();

    @Option(names = "--inputs", paramLabel = "FILE", description = "Inputs as JSON; - reads them from standard input.")
    private Optional<String> inputs = Optional.empty();

    @Option(
            names = "--set",
            paramLabel = "INPUT=VALUE",
            description = "An input by its name in JSON, such as 'targetX=92 mm'; may be repeated.")
    private List<String> sets = List.of();

    @Option(names = "--every-build", description = "Compute for every build of the journal, a line each.")
    private boolean everyBuild;

    @Option(names = "--describe", description = "Write the JSON Schema of inputs and results, and run nothing.")
    private boolean describe;

    @Option(names = "--keep", description = "Keep the answer in the build's log, with all that it proposes.")
    private boolean keep;

    @Mixin
    private ResultFiles files;

    @Unmatched
    private List<String> more = new ArrayList<>();

    CalcCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() throws IOException {
        files.check();
        if (everyBuild && id.isPresent()) {
            return everyBuild();
        }
        if (id.isEmpty() || describe || build.isEmpty()) {
            return withoutBuild();
        }
        try (var program = desk.open(common.journal())) {
            var described = Desk.calculator(program.plugins().join(), id.get());
            var log = Desk.build(program, build.get());
            var filled = Prefill.of(described, program.journal(), log.id());
            return answer(described, filled, given(described), Optional.of(program), Optional.of(log));
        }
    }

    private int everyBuild() throws IOException {
        if (build.isPresent() || keep || describe || files.wanted()) {
            throw CommandFailed.words(
                    "--every-build goes with inputs and --json only; accepted: without --build, --keep, --describe, --print");
        }
        try (var program = desk.open(common.journal())) {
            var described = Desk.calculator(program.plugins().join(), id.get());
            new EveryBuild(desk, described, given(described)).write(program.journal(), common.json());
        }
        return 0;
    }

    private int withoutBuild() throws IOException {
        if (keep) {
            throw CommandFailed.words("--keep needs --build NAME, in whose log the answer is kept");
        }
        if (id.isEmpty()
                && (describe
                        || everyBuild
                        || !sets.isEmpty()
                        || build.isPresent()
                        || inputs.isPresent()
                        || files.wanted()
                        || !more.isEmpty())) {
            throw CommandFailed.words("no calculator is named; accepted: an id that 'calc' alone lists");
        }
        ObjectNode given;
        try (var plugins = PluginHost.open(
                desk.settings().pluginPlaces(), desk.settings().user().data())) {
            if (id.isEmpty()) {
                list(plugins);
                return 0;
            }
            var described = Desk.calculator(plugins, id.get());
            if (describe) {
                desk.json(JsonSchemas.describe(described));
                return 0;
            }
            given = given(described);
            if (!namesWhatTheJournalHolds(described, given)) {
                return answer(described, NOTHING, given, Optional.empty(), Optional.empty());
            }
        }
        try (var program = desk.open(common.journal())) {
            var described = Desk.calculator(program.plugins().join(), id.get());
            return answer(described, NOTHING, given, Optional.of(program), Optional.empty());
        }
    }

    /** Whether an outline template or a picture is called by its name. */
    private static boolean namesWhatTheJournalHolds(Described described, ObjectNode given) {
        return described.inputs().fields().stream()
                .filter(field -> field.kind() == Kind.OUTLINE || field.kind() == Kind.PICTURE)
                .anyMatch(field -> given.path(field.name()).isTextual());
    }

    private int answer(
            Described described, Filled filled, ObjectNode given, Optional<Program> program, Optional<BuildRecord> log)
            throws IOException {
        var origins = new LinkedHashMap<>(filled.origins());
        given.fieldNames()
                .forEachRemaining(
                        name -> origins.keySet().removeIf(path -> path.equals(name) || path.startsWith(name + "[")));
        var all = filled.inputs().deepCopy();
        all.setAll(given);
        var journal = program.map(Program::journal).orElse(null);
        var outcome = Calculation.run(
                described, all, Runs.unwatched(journal == null ? NoJournal.READER : journal, desk.now()));
        if (outcome instanceof Outcome.Answered answered) {
            finish(described, answered, origins, program, log);
            return 0;
        }
        if (outcome instanceof Outcome.Refused refused) {
            throw given.isEmpty() ? CommandFailed.work(refused.message()) : CommandFailed.words(refused.message());
        }
        throw CommandFailed.work(outcome instanceof Outcome.Failed failed ? failed.message() : "stopped");
    }

    private void finish(
            Described described,
            Outcome.Answered answered,
            Map<String, Origin> origins,
            Optional<Program> program,
            Optional<BuildRecord> log)
            throws IOException {
        var name = log.map(BuildRecord::name).orElse("");
        files.write(described, name, answered, origins, program.map(Program::pictures));
        var view = ResultView.of(described, answered);
        if (keep) {
            keep(described, answered, origins, view.proposals(), program.orElseThrow(), log.orElseThrow());
        }
        if (common.json()) {
            var node = JsonFiles.object()
                    .put("calculator", described.id())
                    .put("version", described.about().version());
            log.ifPresent(each -> node.put("build", each.name()));
            node.set("inputs", answered.inputs());
            node.set("origins", Origin.json(origins));
            node.set("results", answered.json());
            desk.json(node);
        } else {
            new ResultText(desk).write(described, name, view);
            files.written().forEach(line -> desk.out().println("\n" + line));
            if (keep) {
                desk.out().println("\nKept in the log of '" + name + "'");
            }
        }
    }

    private void keep(
            Described described,
            Outcome.Answered answered,
            Map<String, Origin> origins,
            List<Proposal> proposals,
            Program program,
            BuildRecord log)
            throws IOException {
        var entry = Keeping.entry(described, log.id(), answered, origins, proposals, desk.now());
        program.journal()
                .apply(Keeping.edit(
                        "keep " + described.id(),
                        entry,
                        proposals,
                        program.journal(),
                        program.folder().outlines()));
    }

    private ObjectNode given(Described described) throws IOException {
        var given = JsonFiles.object();
        if (inputs.isPresent()) {
            var tree = read(inputs.get());
            given.setAll(tree.path("inputs") instanceof ObjectNode nested ? nested : tree);
        }
        given.setAll(InputOptions.parse(described, InputOptions.words(described, sets)));
        given.setAll(InputOptions.parse(described, more));
        return given;
    }

    private static ObjectNode read(String from) throws IOException {
        try {
            return from.equals("-")
                    ? JsonFiles.parse(new String(System.in.readAllBytes(), StandardCharsets.UTF_8))
                    : JsonFiles.read(file(from));
        } catch (Unreadable unreadable) {
            throw CommandFailed.words("--inputs " + from + ": " + unreadable.getMessage());
        }
    }

    private static Path file(String name) {
        var file = Path.of(name);
        if (!Files.isRegularFile(file)) {
            throw CommandFailed.words("--inputs " + name + " is not there or no file; accepted: a JSON file, or -");
        }
        return file;
    }

    private void list(PluginHost plugins) {
        if (common.json()) {
            var node = JsonFiles.object();
            var array = node.putArray("calculators");
            plugins.calculators()
                    .forEach(each -> array.addObject()
                            .put("id", each.id())
                            .put("title", each.title())
                            .put("question", each.question())
                            .put("plugin", each.plugin()));
            var problems = node.putArray("problems");
            plugins.problems()
                    .forEach(each -> problems.addObject()
                            .put("file", each.file().toString())
                            .put("reason", each.reason()));
            desk.json(node);
            return;
        }
        desk.table(
                List.of(false, false, false),
                plugins.calculators().stream()
                        .map(each -> List.of(each.id(), each.question(), "plugin " + each.plugin()))
                        .toList());
        plugins.problems().forEach(each -> desk.out().println("Cannot be used: " + each.file() + ": " + each.reason()));
    }
}
