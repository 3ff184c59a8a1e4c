package planewright.app.exchange;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import planewright.api.quantity.Units;
import planewright.app.across.BuildValue;
import planewright.app.across.View;
import planewright.app.journal.EntryRecord;

/** Values of all builds as CSV (RFC 4180): as they were written, and as a decimal number to compute with. */
public final class AcrossTable {
    private AcrossTable() {}

    public static String text(View view) {
        var against = view.pairs().against();
        var text = new StringBuilder();
        try (var printer = new CSVPrinter(text, CSVFormat.RFC4180)) {
            var headings = new ArrayList<>(List.of("build"));
            headings.addAll(headings(view.pairs().value().name()));
            against.ifPresent(other -> headings.addAll(headings(other.name())));
            against.ifPresent(other -> headings.add("counts"));
            printer.printRecord(headings);
            for (var pair : view.pairs().pairs()) {
                var cells = new ArrayList<>(
                        List.of(SafeCell.written(pair.value().build().name())));
                cells.addAll(cells(Optional.of(pair.value())));
                if (against.isPresent()) {
                    cells.addAll(cells(pair.against()));
                    cells.add(pair.against().isPresent() && view.counts(pair) ? "yes" : "no");
                }
                printer.printRecord(cells);
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text.toString();
    }

    private static List<String> headings(String name) {
        var words = SafeCell.written(name);
        return List.of(words, "unit", "plus or minus", "decimal", "date", "from", "entry");
    }

    private static List<String> cells(Optional<BuildValue> value) {
        return value.map(each -> List.of(
                        each.quantity().number(),
                        Units.symbolOf(each.quantity().unit()),
                        each.quantity().plusMinus().orElse(""),
                        MeasurementTable.decimal(each.quantity().number()),
                        each.at().map(Object::toString).orElse(""),
                        each.source().word(),
                        each.entry().map(EntryRecord::id).orElse("")))
                .orElseGet(() -> Stream.generate(() -> "").limit(7).toList());
    }
}
