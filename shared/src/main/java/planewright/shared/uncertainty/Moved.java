package planewright.shared.uncertainty;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import javax.measure.Quantity;
import planewright.api.quantity.Measured;
import tech.units.indriya.quantity.Quantities;

/**
 * A record of inputs twice over, with one of its quantities moved up and down by its ±: what a first-order propagation asks a
 * whole computation for (JCGM 100:2008, 5.1.3, note 2).
 *
 * @param up with the quantity a standard uncertainty greater
 * @param down with it as much less
 * @param <I> the record
 */
public record Moved<I extends Record>(I up, I down) {
    /**
     * A pair for every quantity that has a ±, in rows too.
     *
     * @param inputs a record of public records
     * @param which names of the components that count
     * @param <I> the record
     */
    public static <I extends Record> List<Moved<I>> each(I inputs, Predicate<String> which) {
        var moved = new ArrayList<Moved<I>>();
        for (int i = 0; ; i++) {
            var up = new Walk(which, i, 1);
            var greater = up.record(inputs);
            if (up.left >= 0) {
                return moved;
            }
            moved.add(new Moved<>(greater, new Walk(which, i, -1).record(inputs)));
        }
    }

    private static final class Walk {
        private final Predicate<String> which;
        private final double by;
        private int left;

        Walk(Predicate<String> which, int number, double by) {
            this.which = which;
            this.left = number;
            this.by = by;
        }

        @SuppressWarnings("unchecked") // made by the same record's own constructor
        <I extends Record> I record(I record) {
            var components = record.getClass().getRecordComponents();
            var values = Arrays.stream(components)
                    .map(component -> value(component, read(component, record)))
                    .toArray();
            var types = Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
            try {
                return (I) record.getClass().getConstructor(types).newInstance(values);
            } catch (ReflectiveOperationException noRecord) {
                throw new IllegalArgumentException(record.getClass() + " is no public record", noRecord);
            }
        }

        private Object value(RecordComponent component, Object value) {
            if (value instanceof Optional<?> optional) {
                return optional.map(present -> value(component, present));
            }
            if (value instanceof Measured<?> measured) {
                return which.test(component.getName()) ? quantity(measured) : measured;
            }
            if (value instanceof List<?> rows) {
                return rows.stream()
                        .map(row -> row instanceof Record each ? record(each) : row)
                        .toList();
            }
            return value;
        }

        private <Q extends Quantity<Q>> Measured<Q> quantity(Measured<Q> measured) {
            var unit = measured.value().getUnit();
            double spread = measured.spreadIn(unit);
            return spread > 0 && left-- == 0
                    ? new Measured<>(
                            Quantities.getQuantity(measured.in(unit) + by * spread, unit), measured.plusMinus())
                    : measured;
        }

        private static Object read(RecordComponent component, Record record) {
            try {
                return component.getAccessor().invoke(record);
            } catch (IllegalAccessException | InvocationTargetException noRecord) {
                throw new IllegalArgumentException(record.getClass() + " is no public record", noRecord);
            }
        }
    }
}
