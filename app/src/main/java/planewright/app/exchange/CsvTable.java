package planewright.app.exchange;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import planewright.app.files.ByteOrderMark;

/** Reads the rows of a CSV file (RFC 4180) by the names in its first row. */
final class CsvTable {
    private static final long MOST_BYTES = 16L << 20;
    private static final int LONGEST_CELL = 10_000;

    private final Path file;
    private final CsvForm form;
    private final Watch watch;
    private final List<Row> rows = new ArrayList<>();
    private final List<LeftOut> bad = new ArrayList<>();
    private int width;
    private Map<Column, Integer> places = Map.of();

    private CsvTable(Path file, CsvForm form, Watch watch) {
        this.file = file;
        this.form = form;
        this.watch = watch;
    }

    /** A row: the line it begins in, counted from 1, and its cells, empty where there is no such column. */
    record Row(long line, Map<Column, String> cells) {
        String cell(Column column) {
            return cells.getOrDefault(column, "");
        }
    }

    /** The rows that have as many cells as the first one, and those that do not. */
    record Rows(List<Row> rows, List<LeftOut> bad) {}

    /**
     * @throws ExchangeRefused if it is no CSV file of that form, or a needed column is missing
     */
    static Rows read(Path file, CsvForm form, Watch watch) throws IOException {
        requireReadable(file);
        return new CsvTable(file, form, watch).read();
    }

    /** The names in the first row. */
    static List<String> headers(Path file, CsvForm form) throws IOException {
        requireReadable(file);
        var table = new CsvTable(file, form, Watch.NONE);
        var first = new ArrayList<String>();
        table.each((line, cells) -> {
            if (first.isEmpty()) {
                cells.forEach(first::add);
            }
        });
        return first;
    }

    private static void requireReadable(Path file) throws IOException {
        if (!Files.isRegularFile(file)) {
            throw new ExchangeRefused(ExchangeWords.say("table {0} is not there; accepted: a CSV file", file));
        }
        if (Files.size(file) > MOST_BYTES) {
            throw new ExchangeRefused(ExchangeWords.say(
                    "table {0} has {1} MB; accepted: up to {2} MB; divide it",
                    file, (Files.size(file) >> 20), (MOST_BYTES >> 20)));
        }
    }

    /** Takes a row and the line that it begins in. */
    private interface RowTaker {
        void take(long line, CSVRecord cells) throws ExchangeRefused;
    }

    private Rows read() throws IOException {
        each((line, cells) -> {
            if (width == 0) {
                header(cells);
            } else if (cells.size() > 1 || !cells.get(0).isBlank()) {
                watch.reached(ExchangeWords.say("line {0}", line));
                row(line, cells);
            }
        });
        return new Rows(rows, bad);
    }

    private void each(RowTaker taker) throws IOException {
        boolean empty = true;
        try (var reader = new BufferedReader(
                        new InputStreamReader(Files.newInputStream(file), StandardCharsets.UTF_8.newDecoder()));
                var parser = parser(ByteOrderMark.passed(reader))) {
            var records = parser.iterator();
            for (long line = 1; records.hasNext(); line = parser.getCurrentLineNumber() + 1) {
                taker.take(line, records.next());
                empty = false;
            }
        } catch (CharacterCodingException broken) {
            throw notText();
        } catch (UncheckedIOException broken) {
            throw broken.getCause() instanceof CharacterCodingException
                    ? notText()
                    : new ExchangeRefused("table " + file + " is not CSV as RFC 4180 describes it: "
                            + broken.getCause().getMessage().replaceFirst("^.*Exception reading next record: ", ""));
        }
        if (empty) {
            throw new ExchangeRefused(
                    ExchangeWords.say("table {0} is empty; accepted: a first row with names of columns", file));
        }
    }

    private CSVParser parser(BufferedReader reader) throws IOException {
        return CSVFormat.RFC4180
                .builder()
                .setDelimiter(form.separator())
                .setIgnoreEmptyLines(false)
                .get()
                .parse(reader);
    }

    private void header(CSVRecord names) throws ExchangeRefused {
        width = names.size();
        places = new EnumMap<>(Column.class);
        for (var column : Column.values()) {
            place(column, names).ifPresent(place -> places.put(column, place));
        }
        var missing = List.of(Column.values()).stream()
                .filter(column -> column.isNeeded() && !places.containsKey(column))
                .toList();
        if (!missing.isEmpty()) {
            throw new ExchangeRefused(ExchangeWords.say(
                    "table {0} has no column for {1}; its columns: {2}; accepted: {3}, or say which "
                            + "column it is{4}",
                    file,
                    missing.stream().map(Column::word).collect(Collectors.joining(", ")),
                    names.stream().collect(Collectors.joining(" | ")),
                    missing.stream()
                            .map(column -> String.join(" or ", column.headers()))
                            .collect(Collectors.joining(", ")),
                    separatorHint(names)));
        }
    }

    private String separatorHint(CSVRecord names) {
        return names.size() == 1 && names.get(0).matches("(?s).*[;\\t,].*")
                ? ExchangeWords.say("; cells seem to be divided by another sign than '{0}'", form.separator())
                : "";
    }

    private Optional<Integer> place(Column column, CSVRecord names) throws ExchangeRefused {
        var said = Optional.ofNullable(form.columns().get(column));
        var found = IntStream.range(0, names.size())
                .filter(i -> said.map(name -> names.get(i).strip().equalsIgnoreCase(name.strip()))
                        .orElseGet(() -> column.isCalled(names.get(i))
                                && form.columns().values().stream()
                                        .noneMatch(name -> name.strip()
                                                .equalsIgnoreCase(names.get(i).strip()))))
                .toArray();
        if (said.isPresent() && found.length == 0) {
            throw new ExchangeRefused(ExchangeWords.say(
                    "table {0} has no column '{1}' for {2}; its columns: {3}",
                    file, said.get(), column.word(), names.stream().collect(Collectors.joining(" | "))));
        }
        if (found.length > 1) {
            throw new ExchangeRefused(ExchangeWords.say(
                    "table {0} has more than one column for {1}: {2}; say which one it is",
                    file,
                    column.word(),
                    IntStream.of(found).mapToObj(names::get).collect(Collectors.joining(", "))));
        }
        return found.length == 0 ? Optional.empty() : Optional.of(found[0]);
    }

    private void row(long line, CSVRecord cells) {
        if (cells.size() != width) {
            bad.add(new LeftOut(
                    ExchangeWords.say("line {0}", line),
                    ExchangeWords.say("has {0} cells; accepted: {1}", cells.size(), width)));
        } else if (cells.stream().anyMatch(cell -> cell.length() > LONGEST_CELL)) {
            bad.add(new LeftOut(
                    ExchangeWords.say("line {0}", line),
                    ExchangeWords.say("has a cell of more than {0} characters", LONGEST_CELL)));
        } else {
            var row = new EnumMap<Column, String>(Column.class);
            places.forEach((column, place) -> row.put(column, cells.get(place).strip()));
            rows.add(new Row(line, row));
        }
    }

    private ExchangeRefused notText() {
        return new ExchangeRefused(ExchangeWords.say("table {0} is not UTF-8 text; save it as CSV in UTF-8", file));
    }
}
