package planewright.api.contract;

import java.lang.reflect.RecordComponent;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.Unit;
import planewright.api.calculator.Input;
import planewright.api.figure.Outline;
import planewright.api.journal.BenchCalendar;
import planewright.api.journal.Picture;
import planewright.api.journal.Planform;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import tech.units.indriya.quantity.Quantities;

/**
 * Usual inputs changed to what nobody hopes for. What the annotations' bounds refuse is left out, for the program refuses it
 * and a calculator never sees it.
 */
final class HostileInputs {
    private static final double[] NUMBERS = {0, -0.0, 1, -1, 1e-9, -1e-9, 1e9, -1e9, 1e300, -1e300, Double.MAX_VALUE};
    private static final double[] SPREADS = {0, Double.MIN_VALUE, 1e-9, 1, 1e9, Double.MAX_VALUE};
    private static final int MANY_ROWS = 100;
    private static final int LONG_TEXT = 10_000;
    private static final int TOGETHER = 150;

    /** As many of a slow calculator. */
    private static final int SLOW = 40;

    /**
     * Inputs and what was done to them.
     *
     * @param what which component became what
     * @param inputs the record
     */
    record Variant(String what, Record inputs) {}

    private record Change(String what, UnaryOperator<Record> change) {}

    private HostileInputs() {}

    /** Each change alone, then several at a time, thrown by dice that always fall alike; fewer of what is not quick. */
    static List<Variant> of(Record usual, boolean quick) {
        var changes = changes(usual, "");
        var variants = new ArrayList<Variant>();
        changes.forEach(change -> apply(usual, List.of(change)).ifPresent(variants::add));
        var random = new Random(4711);
        for (int i = 0; i < TOGETHER && !changes.isEmpty(); i++) {
            var some = random.ints(2 + random.nextInt(3), 0, changes.size())
                    .mapToObj(changes::get)
                    .toList();
            apply(usual, some).ifPresent(variants::add);
        }
        if (!quick) {
            Collections.shuffle(variants, random);
            return variants.subList(0, Math.min(SLOW, variants.size()));
        }
        return variants;
    }

    /** Empty where the record itself refuses, which the program passes on. */
    private static Optional<Variant> apply(Record usual, List<Change> changes) {
        var record = usual;
        try {
            for (var change : changes) {
                record = change.change().apply(record);
            }
            return Optional.of(new Variant(
                    String.join(", ", changes.stream().map(Change::what).toList()), record));
        } catch (IllegalArgumentException refused) {
            return Optional.empty();
        }
    }

    private static List<Change> changes(Record record, String path) {
        var changes = new ArrayList<Change>();
        for (var component : record.getClass().getRecordComponents()) {
            values(component)
                    .forEach(value -> changes.add(new Change(
                            path + component.getName() + " is " + shown(value),
                            before -> Records.with(before, component, value))));
            if (component.getType() == List.class) {
                rows(record, component, path, changes);
            }
        }
        return changes;
    }

    private static void rows(Record record, RecordComponent component, String path, List<Change> changes) {
        var name = path + component.getName();
        var rows = (List<?>) Records.value(record, component);
        changes.add(new Change(name + " is empty", before -> Records.with(before, component, List.of())));
        if (rows.isEmpty()) {
            return;
        }
        for (int copies : new int[] {2, MANY_ROWS}) {
            changes.add(new Change(
                    name + " holds one row " + copies + " times",
                    before -> Records.with(before, component, Collections.nCopies(copies, rows.get(0)))));
        }
        if (rows.get(0) instanceof Record first) {
            for (var change : changes(first, name + "[0].")) {
                changes.add(new Change(change.what(), before -> withFirst(before, component, change)));
            }
        }
    }

    /** Another change may have emptied the list. */
    private static Record withFirst(Record record, RecordComponent component, Change change) {
        var rows = new ArrayList<Object>((List<?>) Records.value(record, component));
        if (!rows.isEmpty()) {
            rows.set(0, change.change().apply((Record) rows.get(0)));
        }
        return Records.with(record, component, List.copyOf(rows));
    }

    private static Stream<?> values(RecordComponent component) {
        var content = Records.content(component);
        boolean optional = component.getType() == Optional.class;
        Stream<?> values = Stream.empty();
        if (content == Measured.class) {
            values = quantities(component);
        } else if (content == int.class || content == Integer.class) {
            values = wholes(component);
        } else if (content == String.class) {
            values = Stream.of("", " ", "x".repeat(LONG_TEXT), "\u0000\n\u202e{{%s}}\"'<&");
        } else if (content == boolean.class || content == Boolean.class) {
            values = Stream.of(true, false);
        } else if (content.isEnum()) {
            values = Arrays.stream(content.getEnumConstants());
        } else if (content == LocalDateTime.class) {
            values = Stream.of(
                    LocalDateTime.of(1900, 1, 1, 0, 0), LocalDateTime.of(2199, 12, 31, 23, 59, 59, 999_999_999));
        } else if (content == Planform.class) {
            values = Stream.of(new Planform(List.of(), List.of()));
        } else if (content == Outline.class) {
            values = StrangeValues.outlines();
        } else if (content == BenchCalendar.class) {
            values = StrangeValues.calendars();
        } else if (content == Picture.class) {
            values = StrangeValues.pictures();
        }
        return optional ? Stream.concat(Stream.of(Optional.empty()), values.map(Optional::of)) : values;
    }

    private static Stream<Measured<?>> quantities(RecordComponent component) {
        var input = component.getAnnotation(Input.class);
        var unit = Units.ofCode(input.unit()).orElseThrow();
        var numbers = accepted(component, input, unit).toArray();
        double middle = numbers.length == 0 ? 1 : numbers[numbers.length / 2];
        return Stream.concat(
                Arrays.stream(numbers).mapToObj(number -> measured(number, Optional.empty(), unit)),
                Arrays.stream(SPREADS).mapToObj(spread -> measured(middle, Optional.of(spread), unit)));
    }

    private static Stream<Integer> wholes(RecordComponent component) {
        var bounds = Bounds.of(component.getName(), component.getAnnotation(Input.class), Units.NUMBER);
        var edges = bounds.edges().stream().map(Double::intValue);
        return Stream.concat(Stream.of(0, 1, -1, Integer.MAX_VALUE, Integer.MIN_VALUE), edges)
                .filter(number -> bounds.accept(number));
    }

    /** Numbers in the unit that the bounds let pass, those at and beside the bounds among them. */
    private static DoubleStream accepted(RecordComponent component, Input input, Unit<?> unit) {
        var bounds = Bounds.of(component.getName(), input, unit);
        var edges = bounds.edges().stream()
                .mapToDouble(edge -> Bounds.in(edge, unit))
                .flatMap(edge -> DoubleStream.of(edge, Math.nextUp(edge), Math.nextDown(edge)));
        return DoubleStream.concat(Arrays.stream(NUMBERS), edges)
                .filter(number -> Double.isFinite(Bounds.si(number, unit)) && bounds.accept(Bounds.si(number, unit)));
    }

    @SuppressWarnings({"unchecked", "rawtypes"}) // value and spread are of one unit
    private static Measured<?> measured(double value, Optional<Double> spread, Unit<?> unit) {
        return new Measured(quantity(value, unit), spread.map(number -> quantity(number, unit)));
    }

    private static Quantity<?> quantity(double value, Unit<?> unit) {
        return Quantities.getQuantity(value, unit);
    }

    private static String shown(Object value) {
        var text = String.valueOf(value);
        return text.length() > 60 ? text.substring(0, 60) + "… (" + text.length() + " long)" : text;
    }
}
