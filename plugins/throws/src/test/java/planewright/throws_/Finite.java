package planewright.throws_;

import java.lang.reflect.RecordComponent;
import java.util.Optional;
import planewright.api.quantity.Measured;

/** Looks at every number in a record of results. */
final class Finite {
    private Finite() {}

    /** How many numbers there are; an AssertionError where one is not finite. */
    static int count(Object value) {
        if (value instanceof Double number) {
            if (!Double.isFinite(number)) {
                throw new AssertionError("a result is " + number);
            }
            return 1;
        }
        if (value instanceof Measured<?> measured) {
            return count(measured.value().getValue().doubleValue())
                    + measured.plusMinus()
                            .map(spread -> count(spread.getValue().doubleValue()))
                            .orElse(0);
        }
        if (value instanceof Optional<?> optional) {
            return optional.map(Finite::count).orElse(0);
        }
        if (value instanceof Iterable<?> list) {
            int count = 0;
            for (var element : list) {
                count += count(element);
            }
            return count;
        }
        return value instanceof Record ? components(value) : 0;
    }

    private static int components(Object results) {
        int count = 0;
        for (RecordComponent component : results.getClass().getRecordComponents()) {
            try {
                component.getAccessor().setAccessible(true);
                count += count(component.getAccessor().invoke(results));
            } catch (ReflectiveOperationException unreadable) {
                throw new AssertionError(component + " cannot be read", unreadable);
            }
        }
        return count;
    }
}
