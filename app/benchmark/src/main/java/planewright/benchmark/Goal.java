package planewright.benchmark;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import java.util.OptionalDouble;
import planewright.app.store.JsonFiles;

/**
 * Something that was measured, against what was measured in the same run and against a ceiling. A busy machine slows both the
 * thing and its yardstick, so the ratio tells more; the ceiling is what a builder would feel.
 *
 * @param name what was measured
 * @param unit of the number, the ceiling and the yardstick
 * @param measured the number
 * @param ceiling the most that it may be, if any
 * @param yardstick what it is compared with, if anything
 */
record Goal(String name, String unit, double measured, OptionalDouble ceiling, Optional<Yardstick> yardstick) {
    /**
     * What the thing is compared with.
     *
     * @param name what was measured
     * @param measured in the unit of the goal
     * @param most how many times this the thing may be
     */
    record Yardstick(String name, double measured, double most) {}

    static Goal of(String name, String unit, double measured) {
        return new Goal(name, unit, measured, OptionalDouble.empty(), Optional.empty());
    }

    static Goal under(String name, String unit, double measured, double ceiling) {
        return new Goal(name, unit, measured, OptionalDouble.of(ceiling), Optional.empty());
    }

    Goal comparedWith(String other, double figure, double most) {
        return new Goal(name, unit, measured, ceiling, Optional.of(new Yardstick(other, figure, most)));
    }

    /** Whether it is under its ceiling and within its ratio. */
    boolean isMet() {
        return (ceiling.isEmpty() || measured <= ceiling.getAsDouble())
                && yardstick
                        .map(other -> measured <= other.most() * other.measured())
                        .orElse(true);
    }

    ObjectNode json() {
        var json = JsonFiles.object().put("goal", name).put("unit", unit).put("measured", Report.rounded(measured));
        ceiling.ifPresent(most -> json.put("ceiling", Report.rounded(most)));
        yardstick.ifPresent(other -> json.put("yardstick", other.name())
                .put("yardstickMeasured", Report.rounded(other.measured()))
                .put("ratio", Report.rounded(measured / other.measured()))
                .put("ratioAtMost", Report.rounded(other.most())));
        return json.put("met", isMet());
    }
}
