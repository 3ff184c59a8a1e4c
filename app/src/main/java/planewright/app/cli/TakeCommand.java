package planewright.app.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import planewright.app.Program;
import planewright.app.exchange.JournalArchive;
import planewright.app.exchange.JournalPages;
import planewright.app.exchange.MeasurementTable;
import planewright.app.exchange.OutlineFile;
import planewright.app.exchange.PictureForm;
import planewright.app.journal.BuildRecord;

@Command(name = "take", description = "Take a journal, a build, measurements, an outline, or pages for a browser out.")
final class TakeCommand extends Group {
    static picocli.CommandLine line(Desk desk) {
        return new picocli.CommandLine(new TakeCommand())
                .addSubcommand(new Journal(desk))
                .addSubcommand(new Measurements(desk))
                .addSubcommand(new Outline(desk))
                .addSubcommand(new Pages(desk));
    }

    /** What all of them ask for. */
    private static final class Common {
        @Option(names = "--build", paramLabel = "NAME", description = "This build alone.")
        private Optional<String> build = Optional.empty();

        @Option(names = "--replace", description = "Replace what was taken out before.")
        private boolean replace;

        Optional<BuildRecord> build(Program program) {
            return build.map(name -> Desk.build(program, name));
        }

        List<BuildRecord> builds(Program program) {
            return build(program).map(List::of).orElseGet(program.journal()::builds);
        }
    }

    @Command(name = "journal", description = "Write the journal, or one build with its pictures, as a ZIP file.")
    private static final class Journal implements Callable<Integer> {
        private final Desk desk;

        @Mixin
        private JournalOption journal;

        @Mixin
        private Common common;

        @Option(names = "--to", required = true, paramLabel = "FILE.zip")
        private Path to;

        @Option(
                names = "--with-location",
                description = "Pictures byte for byte, with the place and all else that the camera noted: for a backup."
                        + " Without it they are the same to look at and keep their dates.")
        private boolean withLocation;

        Journal(Desk desk) {
            this.desk = desk;
        }

        @Override
        public Integer call() throws IOException {
            try (var watch = Interruption.watching();
                    var program = desk.open(journal.journal())) {
                var build = common.build(program);
                var form = withLocation ? PictureForm.AS_TAKEN : PictureForm.PLAIN;
                var taken = build.isPresent()
                        ? JournalArchive.take(program.folder(), build.get(), form, to, common.replace, watch)
                        : JournalArchive.take(program.folder(), form, to, common.replace, watch);
                new ExchangeReport(desk, journal.json())
                        .taken(
                                taken,
                                Desk.count(taken.things(), "file", "files"),
                                to,
                                withLocation
                                        ? "where it was taken, and so does the archive"
                                        : "where it was taken; the archive does not. For a backup use --with-location");
            }
            return 0;
        }
    }

    @Command(name = "measurements", description = "Write the measurements of all builds, or of one, as CSV.")
    private static final class Measurements implements Callable<Integer> {
        private final Desk desk;

        @Mixin
        private JournalOption journal;

        @Mixin
        private Common common;

        @Option(names = "--to", required = true, paramLabel = "FILE.csv")
        private Path to;

        Measurements(Desk desk) {
            this.desk = desk;
        }

        @Override
        public Integer call() throws IOException {
            try (var watch = Interruption.watching();
                    var program = desk.open(journal.journal())) {
                var taken = MeasurementTable.take(program.journal(), common.builds(program), to, common.replace, watch);
                new ExchangeReport(desk, journal.json())
                        .taken(taken, Desk.count(taken.things(), "measurement", "measurements"), to, "");
            }
            return 0;
        }
    }

    @Command(
            name = "outline",
            description = "Write a template's outline as SVG, which any browser prints at true size.")
    private static final class Outline implements Callable<Integer> {
        private final Desk desk;

        @Mixin
        private JournalOption journal;

        @Parameters(paramLabel = "NAME", description = "The template.")
        private String name;

        @Option(names = "--to", required = true, paramLabel = "FILE.svg")
        private Path to;

        @Option(names = "--replace", description = "Replace what was taken out before.")
        private boolean replace;

        Outline(Desk desk) {
            this.desk = desk;
        }

        @Override
        public Integer call() throws IOException {
            try (var program = desk.open(journal.journal())) {
                var taken = OutlineFile.take(program.folder(), Desk.template(program, name), to, replace);
                new ExchangeReport(desk, journal.json()).taken(taken, "the outline", to, "");
            }
            return 0;
        }
    }

    @Command(
            name = "pages",
            description =
                    "Write pages to read in a browser, with a search that needs no network. Pictures are made smaller"
                            + " and do not tell where they were taken.")
    private static final class Pages implements Callable<Integer> {
        private final Desk desk;

        @Mixin
        private JournalOption journal;

        @Mixin
        private Common common;

        @Option(names = "--to", required = true, paramLabel = "FOLDER")
        private Path to;

        Pages(Desk desk) {
            this.desk = desk;
        }

        @Override
        public Integer call() throws IOException {
            try (var watch = Interruption.watching();
                    var program = desk.open(journal.journal())) {
                var taken = JournalPages.take(program.folder(), common.builds(program), to, common.replace, watch);
                new ExchangeReport(desk, journal.json())
                        .taken(
                                taken,
                                Desk.count(taken.things(), "page", "pages"),
                                to,
                                "where it was taken; the pages do not");
            }
            return 0;
        }
    }
}
