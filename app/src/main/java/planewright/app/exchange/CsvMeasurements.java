package planewright.app.exchange;

import java.io.IOException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import planewright.api.quantity.Units;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.DayEntry;
import planewright.app.journal.Edit;
import planewright.app.journal.MeasurementRecord;
import planewright.app.journal.OpenJournal;
import planewright.app.journal.Slow;
import planewright.shared.quantity.NumberText;
import planewright.shared.quantity.QuantityProblem;
import planewright.shared.quantity.QuantityText;
import planewright.shared.quantity.Written;

/** Brings the rows of a CSV file into logs as measurements, each into the entry of its day. */
public final class CsvMeasurements {
    private static final String WHAT = "bring in measurements";

    private final OpenJournal journal;
    private final CsvForm form;
    private final Function<String, Optional<BuildRecord>> builds;
    private final List<LeftOut> known = new ArrayList<>();
    private final List<LeftOut> bad = new ArrayList<>();

    private CsvMeasurements(OpenJournal journal, CsvForm form, Function<String, Optional<BuildRecord>> builds) {
        this.journal = journal;
        this.form = form;
        this.builds = builds;
    }

    /** A row that was understood. */
    private record Read(BuildRecord build, LocalDateTime at, MeasurementRecord measurement) {}

    /** The log and the day that a row belongs to. */
    private record Place(BuildRecord build, LocalDate day) {}

    /** A row that was not understood. */
    private static final class BadRow extends Exception {
        private static final long serialVersionUID = 1L;

        BadRow(String message) {
            super(message);
        }
    }

    /** The names in the first row of a table, as they are written. */
    public static List<String> headers(Path file, char separator) throws IOException {
        Slow.work("looking at measurements");
        return CsvTable.headers(file, new CsvForm(Map.of(), separator, Optional.empty()));
    }

    /**
     * Looks at a table. A measurement that its day has already, to the letter, is not brought in again.
     *
     * @param builds the build that a row of the table names; of an empty name the one that is meant where none is named
     * @throws ExchangeRefused if the file as a whole cannot be understood
     */
    public static Intake look(
            OpenJournal journal, Path file, CsvForm form, Function<String, Optional<BuildRecord>> builds, Watch watch)
            throws IOException {
        Slow.work("looking at measurements");
        return new CsvMeasurements(journal, form, builds).look(file, watch);
    }

    /**
     * Brings in what {@link #look} has seen.
     *
     * @param skipBad whether good rows are written although others cannot be understood; else nothing is
     */
    public static Brought bring(
            OpenJournal journal,
            Path file,
            CsvForm form,
            Function<String, Optional<BuildRecord>> builds,
            boolean skipBad,
            Watch watch)
            throws IOException {
        var intake = look(journal, file, form, builds, watch);
        return intake.leftOut().isEmpty() || skipBad ? intake.write(watch) : intake.refused();
    }

    private Intake look(Path file, Watch watch) throws IOException {
        var table = CsvTable.read(file, form, watch);
        bad.addAll(table.bad());
        var places = new LinkedHashMap<Place, List<Read>>();
        var fresh = new HashSet<String>();
        for (var row : table.rows()) {
            understand(row).ifPresent(read -> {
                fresh.add(read.measurement().id());
                places.computeIfAbsent(new Place(read.build(), read.at().toLocalDate()), each -> new ArrayList<>())
                        .add(read);
            });
        }
        bad.sort(Comparator.comparingLong(each -> Long.parseLong(each.what().replaceAll("\\D", ""))));
        var rows = places.isEmpty()
                ? List.<Intake.Row>of()
                : Intake.rows(
                        edit(places.values()),
                        entry -> entry.measurements().stream()
                                .filter(each -> fresh.contains(each.id()))
                                .map(each -> each.name() + " " + each.quantity().text())
                                .toList());
        return new Intake(rows, known, bad, watching -> journal.apply(edit(places.values())));
    }

    private Edit edit(Collection<List<Read>> days) {
        return new Edit(
                WHAT, days.stream().flatMap(day -> edit(day).changes().stream()).toList());
    }

    private Edit edit(List<Read> day) {
        var first = day.stream().min(Comparator.comparing(Read::at)).orElseThrow();
        var measurements = day.stream().map(Read::measurement);
        return DayEntry.writing(
                journal,
                first.build().id(),
                first.at(),
                WHAT,
                entry -> entry.withMeasurements(Stream.concat(entry.measurements().stream(), measurements)
                        .toList()));
    }

    private Optional<Read> understand(CsvTable.Row row) {
        var line = ExchangeWords.say("line {0}", row.line());
        try {
            var build = build(SafeCell.read(row.cell(Column.BUILD)));
            var at = date(row.cell(Column.DATE));
            var name = SafeCell.read(row.cell(Column.NAME)).replaceAll("\\s+", " ");
            if (name.isEmpty()) {
                throw new BadRow("name is empty; accepted: some words");
            }
            var read = new Read(
                    build, at, MeasurementRecord.of(name, quantity(row), SafeCell.read(row.cell(Column.METHOD))));
            if (isKnown(read)) {
                known.add(new LeftOut(
                        line, ExchangeWords.say("is in the log already, on {0}", ExchangeWords.day(at.toLocalDate()))));
                return Optional.empty();
            }
            return Optional.of(read);
        } catch (BadRow reason) {
            bad.add(new LeftOut(line, reason.getLocalizedMessage()));
        } catch (QuantityProblem | IllegalArgumentException reason) {
            bad.add(new LeftOut(line, ExchangeWords.say("value: {0}", reason.getLocalizedMessage())));
        }
        return Optional.empty();
    }

    private boolean isKnown(Read read) {
        return journal.log(read.build().id()).stream()
                .filter(entry -> entry.at().toLocalDate().equals(read.at().toLocalDate()))
                .flatMap(entry -> entry.measurements().stream())
                .anyMatch(each -> each.name().equals(read.measurement().name())
                        && each.quantity().equals(read.measurement().quantity())
                        && each.method().equals(read.measurement().method()));
    }

    private BuildRecord build(String named) throws BadRow {
        return builds.apply(named)
                .orElseThrow(() -> new BadRow(
                        named.isEmpty()
                                ? ExchangeWords.say(
                                        "no build is named; accepted: a column 'build', or one build for all rows")
                                : ExchangeWords.say("build '{0}' is not in the journal", named)));
    }

    private LocalDateTime date(String cell) throws BadRow {
        if (form.dates().isPresent()) {
            try {
                return LocalDate.parse(cell, form.dates().get()).atTime(DateText.NOON);
            } catch (DateTimeException wrong) {
                throw new BadRow("date is '" + cell + "'; accepted: such as "
                        + form.dates().get().format(LocalDate.of(2025, 3, 14)));
            }
        }
        return DateText.parse(cell)
                .orElseThrow(() -> new BadRow(
                        ExchangeWords.say("date is '{0}'; accepted: such as 2025-03-14 or 2025-03-14T20:15", cell)));
    }

    private static Written quantity(CsvTable.Row row) throws QuantityProblem, BadRow {
        var value = row.cell(Column.VALUE);
        var unit = row.cell(Column.UNIT);
        var spread = row.cell(Column.PLUS_MINUS).replaceFirst("^±\\s*", "");
        if (NumberText.parse(value).isPresent()) {
            return checked(new Written(
                    value,
                    unit.isEmpty() ? Units.NUMBER : QuantityText.unit(unit),
                    Optional.of(spread).filter(text -> !text.isEmpty())));
        }
        if (!unit.isEmpty()) {
            throw new BadRow("value is '" + value + "'; accepted: a number, for the unit '" + unit
                    + "' has a column of its own");
        }
        return checked(QuantityText.parse(spread.isEmpty() ? value : value + " ± " + spread, Units.NUMBER));
    }

    /** A ± below 0 is found only when the quantity is made. */
    private static Written checked(Written written) {
        written.measured();
        return written;
    }

    /** The builds of a journal by the names in a table: the whole name or id, letter case aside. */
    public static Function<String, Optional<BuildRecord>> buildsOf(
            OpenJournal journal, Optional<BuildRecord> otherwise) {
        return named -> named.isEmpty()
                ? otherwise
                : journal.builds().stream()
                        .filter(build -> build.name().equalsIgnoreCase(named)
                                || build.id().equalsIgnoreCase(named))
                        .findFirst();
    }

    /** Columns by their words, for what is typed as {@code name=Header}. */
    public static Map<Column, String> columns(Map<String, String> typed) {
        var columns = new LinkedHashMap<Column, String>();
        typed.forEach((word, header) -> columns.put(
                Stream.of(Column.values())
                        .filter(column -> column.word().equalsIgnoreCase(word) || column.isCalled(word))
                        .findFirst()
                        .orElseThrow(() -> new IllegalArgumentException(ExchangeWords.say(
                                "column '{0}' is not known; accepted: {1}",
                                word,
                                String.join(
                                        ", ",
                                        Stream.of(Column.values())
                                                .map(Column::word)
                                                .toList())))),
                header));
        return columns;
    }
}
