package planewright.app.exchange;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import planewright.api.quantity.Units;
import planewright.app.files.SafeFile;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.MeasurementRecord;
import planewright.app.journal.OpenJournal;
import planewright.app.journal.Reading;
import planewright.app.journal.Slow;
import planewright.shared.quantity.NumberText;

/**
 * Every measurement of some builds as CSV (RFC 4180), in UTF-8: as it was written, and as a decimal number to compute with.
 * What is taken out so can be brought in again.
 */
public final class MeasurementTable {
    private static final String[] HEADER = {
        "build", "date", "name", "value", "unit", "plus or minus", "method", "decimal", "entry"
    };

    private MeasurementTable() {}

    /** Writes the measurements of these builds, oldest first in each. */
    public static Taken take(OpenJournal journal, List<BuildRecord> builds, Path file, boolean replace, Watch watch)
            throws IOException {
        Slow.work("taking measurements out");
        var rows = new int[1];
        SafeFile.write(Target.file(file, replace), out -> {
            var writer = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8));
            var printer = new CSVPrinter(writer, CSVFormat.RFC4180);
            printer.printRecord((Object[]) HEADER);
            for (var build : builds) {
                watch.reached(build.name());
                for (var entry : journal.log(build.id())) {
                    for (var measurement : entry.measurements()) {
                        printer.printRecord(row(build, entry, measurement));
                        rows[0]++;
                    }
                }
            }
            printer.flush();
        });
        return new Taken(rows[0], 0, List.of());
    }

    /** Some of a build's measurements as the same table. */
    public static String text(BuildRecord build, List<Reading> lines) {
        var text = new StringBuilder();
        try (var printer = new CSVPrinter(text, CSVFormat.RFC4180)) {
            printer.printRecord((Object[]) HEADER);
            for (var line : lines) {
                printer.printRecord(row(build, line.entry(), line.measurement()));
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text.toString();
    }

    private static List<String> row(BuildRecord build, EntryRecord entry, MeasurementRecord measurement) {
        var quantity = measurement.quantity();
        return List.of(
                SafeCell.written(build.name()),
                entry.at().toString(),
                SafeCell.written(measurement.name()),
                quantity.number(),
                Units.symbolOf(quantity.unit()),
                quantity.plusMinus().orElse(""),
                SafeCell.written(measurement.method()),
                decimal(quantity.number()),
                entry.id());
    }

    /** A number as it was written, such as {@code 3 1/2}, to compute with. */
    static String decimal(String number) {
        return new BigDecimal(Double.toString(NumberText.parse(number).orElseThrow()))
                .stripTrailingZeros()
                .toPlainString();
    }
}
