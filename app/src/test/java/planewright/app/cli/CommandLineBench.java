package planewright.app.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.app.Bench;
import planewright.app.Settings;
import planewright.app.calc.TestPlugins;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.PartRecord;
import planewright.app.store.JournalFolder;
import planewright.app.store.UserFolders;

/** A journal with a weighed build and a plugin, and the command line on both. */
final class CommandLineBench {
    static final LocalDateTime NOW = LocalDateTime.of(2025, 3, 14, 20, 15, 42);

    private final Path folder;
    private final Settings settings;

    CommandLineBench(Path folder) throws IOException {
        this.folder = folder;
        this.settings = new Settings(
                UserFolders.under(folder.resolve("user")),
                List.of(TestPlugins.station(folder.resolve("plugins"))),
                Optional.of(journal()));
        JournalFolder.create(journal(), "Loft workshop");
        try (var opened = JournalFolder.open(journal(), settings.user())) {
            opened.journal().apply(Edit.add("build", heron()));
            opened.journal().apply(Edit.add("build", Bench.build("Grebe")));
        }
    }

    /** What a command wrote, and its exit code. */
    record Said(int code, String out, String err) {}

    Said run(String... words) {
        return run(settings, words);
    }

    Said withoutJournal(String... words) {
        return run(new Settings(settings.user(), settings.pluginPlaces(), Optional.empty()), words);
    }

    Settings settings() {
        return settings;
    }

    Path journal() {
        return folder.resolve("journal");
    }

    Path file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    Path path(String name) {
        return folder.resolve(name);
    }

    /** Every file of the journal with its bytes; the lock tells only which process has it open. */
    TreeMap<String, List<Byte>> bytes() throws IOException {
        var bytes = new TreeMap<String, List<Byte>>();
        try (Stream<Path> files = Files.walk(journal())) {
            files.filter(Files::isRegularFile)
                    .filter(file -> !file.getFileName().toString().equals(".lock"))
                    .forEach(file -> bytes.put(journal().relativize(file).toString(), read(file)));
        }
        return bytes;
    }

    static Said run(Settings settings, String... words) {
        var out = new StringWriter();
        var err = new StringWriter();
        int code = new CommandLineProgram(settings, clock(), new PrintWriter(out), new PrintWriter(err)).run(words);
        return new Said(code, out.toString(), err.toString());
    }

    static Clock clock() {
        return Clock.fixed(NOW.toInstant(ZoneOffset.UTC), ZoneOffset.UTC);
    }

    private static List<Byte> read(Path file) {
        try {
            var bytes = Files.readAllBytes(file);
            return IntStream.range(0, bytes.length).mapToObj(i -> bytes[i]).toList();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private static BuildRecord heron() {
        return Bench.build("Grey heron").withParts(List.of(part("motor", 62, 40), part("pack", 186, -20)));
    }

    private static PartRecord part(String name, double grams, double x) {
        return new PartRecord(
                "k3f9q2",
                name,
                "",
                Optional.of(Measured.of(grams, Units.GRAM)),
                Optional.of(Measured.of(x, Units.MILLIMETRE)),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }
}
