package planewright.app.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.UnaryOperator;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import planewright.api.journal.Life;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.CarryOver;
import planewright.app.journal.Edit;
import planewright.app.store.JournalFolder;
import planewright.app.store.JsonFiles;

@Command(name = "new", description = "Begin a build; or, with --in, begin a journal in an empty folder.")
final class NewCommand implements Callable<Integer> {
    private final Desk desk;

    @Mixin
    private JournalOption common;

    @Parameters(paramLabel = "NAME", description = "What the build, or the journal, is called.")
    private String name;

    @Option(names = "--in", paramLabel = "FOLDER", description = "Begin a journal here instead of a build.")
    private Optional<Path> folder = Optional.empty();

    @Option(names = "--layout", paramLabel = "WORDS", description = "Such as: tailless with elevons.")
    private String layout = "";

    @Option(names = "--datum", paramLabel = "WORDS", description = "Where stations are measured from.")
    private String datum = "";

    @Option(
            names = "--life",
            paramLabel = "WORD",
            description = "sketched, on the bench, ready, flying, resting or gone.")
    private String life = Life.SKETCHED.word();

    @Mixin
    private StartOptions start;

    NewCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() throws IOException {
        if (!start.isGiven()) {
            start.requireNone();
        } else if (folder.isPresent()) {
            throw CommandFailed.words("--in begins a journal and --from or --template a build; accepted: one of them");
        }
        return folder.isPresent() ? journal(folder.get()) : build();
    }

    private int journal(Path place) throws IOException {
        JournalFolder.create(place, name);
        if (common.json()) {
            desk.json(JsonFiles.object().put("journal", place.toString()).put("name", name));
        } else {
            desk.out().println("Began journal '" + name + "' in " + place);
        }
        return 0;
    }

    private int build() throws IOException {
        var stage = List.of(Life.values()).stream()
                .filter(each -> each.word().equalsIgnoreCase(life.strip()))
                .findFirst()
                .orElseThrow(() -> CommandFailed.words(
                        "--life is '" + life + "'; accepted: sketched, on the bench, ready, flying, resting, gone"));
        try (var program = desk.open(common.journal())) {
            var taken = program.journal().builds().stream()
                    .anyMatch(each -> each.name().equalsIgnoreCase(name.strip()));
            if (taken) {
                throw CommandFailed.work(
                        "build '" + name.strip() + "' is in the journal already; accepted: another name");
            }
            var build = BuildRecord.begin(name, desk.now().toLocalDate())
                    .withLayout(layout)
                    .withDatum(datum)
                    .withLife(stage);
            var carried = start.read(program);
            var told = carried.map(NewCommand::told);
            program.journal()
                    .apply(carried.map(all -> all.begin(build, desk.now(), told.orElseThrow()))
                            .orElseGet(() -> Edit.add("new build", build)));
            if (common.json()) {
                desk.json(JsonFiles.object().put("id", build.id()).put("name", build.name()));
            } else {
                desk.out().println("Began build '" + build.name() + "'");
                told.ifPresent(begun -> begun.text().forEach(line -> desk.out().println("  " + line)));
            }
        }
        return 0;
    }

    private static CarryOver.Told told(CarryOver carried) {
        return new CarryOver.Told(
                "new build",
                carried.from().map(proven -> "Begun from " + proven.name()).orElse("Begun from templates"),
                carried.told(UnaryOperator.identity()));
    }
}
