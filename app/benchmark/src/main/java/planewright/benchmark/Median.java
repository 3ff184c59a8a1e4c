package planewright.benchmark;

import java.util.Arrays;
import java.util.Collection;

/** The middle of some numbers. */
final class Median {
    private Median() {}

    static double of(Collection<Double> values) {
        if (values.isEmpty()) {
            throw new IllegalArgumentException("the median of no numbers; accepted: 1 or more");
        }
        var sorted = values.stream().mapToDouble(Double::doubleValue).toArray();
        Arrays.sort(sorted);
        int middle = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }
}
