package planewright.throws_;

import static planewright.api.quantity.Units.METRE;
import static planewright.api.quantity.Units.NUMBER;
import static planewright.api.quantity.Units.RADIAN;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.Unit;
import planewright.api.quantity.Measured;
import planewright.shared.uncertainty.Propagation;

/** The measures that a builder gave as the numbers of a linkage, and their ± through it. */
final class Measures {
    private Measures() {}

    static Geometry geometry(ServoLinkage.Inputs inputs) {
        return geometry(values(inputs));
    }

    static Setting setting(ServoLinkage.Inputs inputs, Linkage linkage) {
        return setting(inputs, linkage, inputs.travel().in(RADIAN));
    }

    /**
     * A number of the linkage with its ±; without one where none of the measures has one, or where the linkage would lock or
     * come apart within them, so that it is not smooth.
     */
    static <Q extends Quantity<Q>> Measured<Q> spread(
            ServoLinkage.Inputs inputs, Setting setting, ToDoubleFunction<Setting> function, Unit<Q> unit) {
        var propagated = Propagation.through(
                values -> Linkage.of(geometry(values))
                        .map(linkage -> setting(inputs, linkage, values[values.length - 1]))
                        .map(function::applyAsDouble)
                        .orElse(Double.NaN),
                values(inputs),
                spreads(inputs));
        return Double.isFinite(propagated.spread())
                ? propagated.in(unit)
                : Measured.of(function.applyAsDouble(setting), unit);
    }

    /** Whether the linkage still closes at either end of the ± of each measure. */
    static boolean closesWithin(ServoLinkage.Inputs inputs) {
        return Double.isFinite(Propagation.through(
                        values -> Linkage.of(geometry(values)).isPresent() ? 0 : Double.NaN,
                        values(inputs),
                        spreads(inputs))
                .spread());
    }

    private static Setting setting(ServoLinkage.Inputs inputs, Linkage linkage, double travel) {
        return new Setting(
                linkage,
                travel * inputs.endTowards().in(NUMBER),
                travel * inputs.endAway().in(NUMBER),
                inputs.hornSide() == ServoLinkage.Side.BELOW ? 1 : -1);
    }

    private static Geometry geometry(double... values) {
        return new Geometry(
                values[0],
                values[1],
                values[2],
                values[3],
                values[4],
                values[5],
                values.length > 7 ? OptionalDouble.of(values[6]) : OptionalDouble.empty());
    }

    /** In the order of {@link Geometry}, the travel last. */
    private static double[] values(ServoLinkage.Inputs inputs) {
        return Stream.of(
                        List.of(
                                inputs.armLength().in(METRE),
                                inputs.clocking().in(RADIAN),
                                inputs.hornLength().in(METRE),
                                inputs.hornOffset().in(METRE),
                                inputs.hingeDistance().in(METRE),
                                inputs.hingeRise().in(METRE)),
                        inputs.pushrodLength().stream()
                                .map(length -> length.in(METRE))
                                .toList(),
                        List.of(inputs.travel().in(RADIAN)))
                .flatMap(List::stream)
                .mapToDouble(Double::doubleValue)
                .toArray();
    }

    private static double[] spreads(ServoLinkage.Inputs inputs) {
        return Stream.of(
                        List.of(
                                inputs.armLength().spreadIn(METRE),
                                inputs.clocking().spreadIn(RADIAN),
                                inputs.hornLength().spreadIn(METRE),
                                inputs.hornOffset().spreadIn(METRE),
                                inputs.hingeDistance().spreadIn(METRE),
                                inputs.hingeRise().spreadIn(METRE)),
                        inputs.pushrodLength().stream()
                                .map(length -> length.spreadIn(METRE))
                                .toList(),
                        List.of(inputs.travel().spreadIn(RADIAN)))
                .flatMap(List::stream)
                .mapToDouble(spread -> spread < LinkageChecks.LEAST_SPREAD ? 0 : spread)
                .toArray();
    }
}
