package planewright.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import planewright.app.store.JsonFiles;
import planewright.app.synthetic.SyntheticJournal;
import planewright.benchmark.kernel.Folders;

/** Measures the program on a synthetic journal and prints one JSON object: goals with their ratios, and figures without. */
@Command(name = "benchmark", sortOptions = false)
public final class Benchmark implements Callable<Integer> {
    private static final Map<String, Section> SECTIONS = sections();

    @Option(names = "--builds", defaultValue = "200", description = "Builds of the journal.")
    private int builds;

    @Option(names = "--entries", defaultValue = "500", description = "Entries in each build.")
    private int entries;

    @Option(names = "--pictures", defaultValue = "5000", description = "Pictures in all.")
    private int pictures;

    @Option(names = "--rounds", defaultValue = "5", description = "How often each process is measured.")
    private int rounds;

    @Option(names = "--only", split = ",", description = "Sections; all where none is named.")
    private List<String> only = List.of();

    @Option(
            names = "--folder",
            description = "An existing folder to work in, on the disk to be measured; else a temporary one.")
    private Path folder;

    @Option(names = "--help", usageHelp = true, description = "Tell this.")
    private boolean help;

    public static void main(String[] words) {
        System.exit(new CommandLine(new Benchmark()).execute(words));
    }

    @Override
    public Integer call() throws IOException, InterruptedException {
        var unknown = only.stream().filter(name -> !SECTIONS.containsKey(name)).toList();
        if (!unknown.isEmpty() || rounds < 1) {
            System.err.println("sections " + unknown + ", " + rounds + " rounds; accepted: "
                    + String.join(", ", SECTIONS.keySet()) + "; 1 round or more");
            return 2;
        }
        var work = folder == null
                ? Files.createTempDirectory("planewright-benchmark")
                : Files.createTempDirectory(folder, "planewright-benchmark");
        try {
            var report = new Report();
            measure(
                    new Run(
                            Path.of("").toAbsolutePath(),
                            SyntheticJournal.of(builds, entries, pictures),
                            work.resolve("journal"),
                            work.resolve("user"),
                            rounds,
                            report),
                    only);
            System.out.print(JsonFiles.text(report.json()));
        } finally {
            Folders.delete(work);
        }
        return 0;
    }

    /**
     * Measures, with the journal where a section needs it.
     *
     * @param only names of sections; all where none is named
     */
    static void measure(Run run, List<String> only) throws IOException, InterruptedException {
        tell(run);
        var names = only.isEmpty() ? SECTIONS.keySet() : only;
        if (names.stream().anyMatch(name -> SECTIONS.get(name).needsJournal())) {
            write(run);
        }
        for (var name : names) {
            say(name);
            SECTIONS.get(name).measure(run);
        }
    }

    private static void write(Run run) throws IOException {
        var journal = run.synthetic();
        say("a journal of " + journal.builds() + " builds with " + journal.entries() + " entries each");
        journal.write(run.journal());
    }

    private static void tell(Run run) {
        var journal = run.synthetic();
        run.report().journal("builds", journal.builds());
        run.report().journal("entries", (double) journal.builds() * journal.entries());
        run.report().journal("pictures", journal.pictures());
    }

    private static void say(String what) {
        System.err.println("benchmark: " + what + " ...");
    }

    private static Map<String, Section> sections() {
        var sections = new LinkedHashMap<String, Section>();
        sections.put("start-up", new StartUp());
        sections.put("opening", new Opening());
        sections.put("search", new Searching());
        sections.put("memory", new Memory());
        sections.put("saving", new Saving());
        sections.put("plugins", new PluginLoad());
        sections.put("lattice", new LatticeSpeed());
        sections.put("kernels", new Kernels());
        sections.put("thumbnails", new ThumbnailSpeed());
        sections.put("pictures", new PictureScrolling());
        sections.put("hour", new Responsiveness());
        return sections;
    }
}
