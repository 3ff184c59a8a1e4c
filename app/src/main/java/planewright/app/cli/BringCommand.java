package planewright.app.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import planewright.app.exchange.ArchiveIntake;
import planewright.app.exchange.CsvForm;
import planewright.app.exchange.CsvMeasurements;
import planewright.app.exchange.DatedNotes;
import planewright.app.exchange.PictureFolder;

@Command(
        name = "bring",
        description = "Bring pictures, measurements or notes into a log, or a whole journal into a folder.")
final class BringCommand extends Group {
    static picocli.CommandLine line(Desk desk) {
        return new picocli.CommandLine(new BringCommand())
                .addSubcommand(new Pictures(desk))
                .addSubcommand(new Measurements(desk))
                .addSubcommand(new Notes(desk))
                .addSubcommand(new Journal(desk));
    }

    @Command(
            name = "pictures",
            description = "Bring a folder of pictures into a build's log, each to the day on which it was taken."
                    + " Pictures that the log has already are not brought in again.")
    private static final class Pictures implements Callable<Integer> {
        private final Desk desk;

        @Mixin
        private JournalOption common;

        @Parameters(paramLabel = "FOLDER", description = "With JPEG and PNG pictures, also in folders below.")
        private Path folder;

        @Option(names = "--build", required = true, paramLabel = "NAME", description = "Whose log.")
        private String build;

        @Option(
                names = "--day",
                paramLabel = "DATE",
                description = "For pictures that do not say when they were taken.")
        private Optional<String> day = Optional.empty();

        Pictures(Desk desk) {
            this.desk = desk;
        }

        @Override
        public Integer call() throws IOException {
            try (var watch = Interruption.watching();
                    var program = desk.open(common.journal())) {
                var brought = PictureFolder.bring(
                        program.folder(), Desk.build(program, build), folder, day(), desk.now(), watch);
                return new ExchangeReport(desk, common.json()).brought(brought, "picture", "pictures");
            }
        }

        private Optional<LocalDate> day() {
            try {
                return day.map(LocalDate::parse);
            } catch (DateTimeException wrong) {
                throw CommandFailed.words("--day is '" + day.orElse("") + "'; accepted: a date such as 2025-03-14");
            }
        }
    }

    @Command(
            name = "measurements",
            description = "Bring the rows of a CSV file into logs. Columns are known by their names in the first row:"
                    + " date, name, value, unit, ±, method, and build where the rows are of several builds.")
    private static final class Measurements implements Callable<Integer> {
        private final Desk desk;

        @Mixin
        private JournalOption common;

        @Parameters(paramLabel = "FILE.csv")
        private Path file;

        @Option(names = "--build", paramLabel = "NAME", description = "Whose log, where a row does not say.")
        private Optional<String> build = Optional.empty();

        @Option(
                names = "--column",
                paramLabel = "COLUMN=HEADER",
                description = "A column that has another name, such as value=Weight; may be repeated.")
        private Map<String, String> columns = new LinkedHashMap<>();

        @Option(names = "--separator", paramLabel = "SIGN", description = "Between cells: , or ; or tab.")
        private String separator = ",";

        @Option(
                names = "--dates",
                paramLabel = "PATTERN",
                description = "How dates are written, such as dd.MM.yyyy; else 2025-03-14.")
        private Optional<String> dates = Optional.empty();

        @Option(names = "--skip-bad", description = "Bring in the good rows although others are bad.")
        private boolean skipBad;

        Measurements(Desk desk) {
            this.desk = desk;
        }

        @Override
        public Integer call() throws IOException {
            var form = new CsvForm(CsvMeasurements.columns(columns), separator(), dates());
            try (var watch = Interruption.watching();
                    var program = desk.open(common.journal())) {
                var builds = CsvMeasurements.buildsOf(program.journal(), build.map(name -> Desk.build(program, name)));
                var brought = CsvMeasurements.bring(program.journal(), file, form, builds, skipBad, watch);
                int code = new ExchangeReport(desk, common.json()).brought(brought, "measurement", "measurements");
                if (!brought.leftOut().isEmpty() && !skipBad) {
                    throw CommandFailed.work("nothing was brought in, for "
                            + Desk.count(brought.leftOut().size(), "row is bad; mend it", "rows are bad; mend them")
                            + ", or use --skip-bad");
                }
                return code;
            }
        }

        private char separator() {
            var sign = separator.equals("tab") ? "\t" : separator;
            if (sign.length() != 1) {
                throw CommandFailed.words("--separator is '" + separator + "'; accepted: , or ; or tab");
            }
            return sign.charAt(0);
        }

        private Optional<DateTimeFormatter> dates() {
            try {
                return dates.map(CsvForm::days);
            } catch (IllegalArgumentException wrong) {
                throw CommandFailed.words("--dates is '" + dates.orElse("") + "'; accepted: such as dd.MM.yyyy");
            }
        }
    }

    @Command(
            name = "notes",
            description = "Bring notes in text or Markdown into a build's log, an entry each. The date stands at the"
                    + " beginning of the first line, or in the file's name: 2025-03-14.")
    private static final class Notes implements Callable<Integer> {
        private final Desk desk;

        @Mixin
        private JournalOption common;

        @Parameters(paramLabel = "PLACE", description = "A file, or a folder of .txt, .md and .markdown files.")
        private Path place;

        @Option(names = "--build", required = true, paramLabel = "NAME", description = "Whose log.")
        private String build;

        Notes(Desk desk) {
            this.desk = desk;
        }

        @Override
        public Integer call() throws IOException {
            try (var watch = Interruption.watching();
                    var program = desk.open(common.journal())) {
                var brought = DatedNotes.bring(program.journal(), Desk.build(program, build), place, watch);
                return new ExchangeReport(desk, common.json()).brought(brought, "note", "notes");
            }
        }
    }

    @Command(
            name = "journal",
            description = "Bring a journal, or a build, that was taken out as a ZIP file into a new folder.")
    private static final class Journal implements Callable<Integer> {
        private final Desk desk;

        @Mixin
        private JournalOption common;

        @Parameters(paramLabel = "FILE.zip")
        private Path archive;

        @Option(names = "--in", required = true, paramLabel = "FOLDER", description = "Empty, or not there yet.")
        private Path folder;

        Journal(Desk desk) {
            this.desk = desk;
        }

        @Override
        public Integer call() throws IOException {
            try (var watch = Interruption.watching()) {
                var unpacked =
                        ArchiveIntake.bring(archive, folder, desk.settings().user(), watch);
                new ExchangeReport(desk, common.json()).unpacked(unpacked, folder);
            }
            return 0;
        }
    }
}
