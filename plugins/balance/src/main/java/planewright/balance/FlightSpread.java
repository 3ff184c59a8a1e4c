package planewright.balance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import javax.measure.Quantity;
import javax.measure.Unit;
import planewright.api.quantity.Measured;
import planewright.shared.uncertainty.Moved;

/**
 * How far the ± of masses, speeds, angles and sections reach into level flight. Of first order: JCGM 100:2008, 5.1.2, equation
 * (10). The shape counts as exact, and so does what its lattices tell; the greatest lift of sections is {@link Stall}'s own
 * matter.
 *
 * @param answer at the inputs as they were given
 * @param moved the same at either end of the ± of each
 */
record FlightSpread(BalanceRangeAnswer answer, List<Pair> moved) {
    /** A smaller share of the value is what rounding leaves of 0. */
    private static final double ROUNDED = 1e-12;

    /** An answer at both ends of the ± of one input; empty where that reaches beyond what can be computed. */
    record Pair(Optional<BalanceRangeAnswer> up, Optional<BalanceRangeAnswer> down) {}

    static FlightSpread of(BalanceRangeAnswer answer) {
        var moved = new ArrayList<Pair>();
        for (var inputs : Moved.each(answer.inputs(), name -> !name.equals("mostLift"))) {
            moved.add(new Pair(at(answer, inputs.up()), at(answer, inputs.down())));
        }
        return new FlightSpread(answer, moved);
    }

    private static Optional<BalanceRangeAnswer> at(BalanceRangeAnswer answer, BalanceRange.Inputs inputs) {
        try {
            var there = answer.with(inputs);
            there.level();
            return Optional.of(there);
        } catch (ArithmeticException | IllegalArgumentException beyond) {
            return Optional.empty();
        }
    }

    /** A number of the answer with its ±; without one where none reaches it, or where the answer ends within them. */
    <Q extends Quantity<Q>> Measured<Q> of(ToDoubleFunction<BalanceRangeAnswer> number, Unit<Q> unit) {
        return of(number, 0, unit);
    }

    /** The same, with a ± that it has from elsewhere. */
    <Q extends Quantity<Q>> Measured<Q> of(ToDoubleFunction<BalanceRangeAnswer> number, double besides, Unit<Q> unit) {
        double value = number.applyAsDouble(answer);
        double variance = besides * besides;
        for (var pair : moved) {
            double half = (at(pair.up(), number) - at(pair.down(), number)) / 2;
            variance += half * half;
        }
        double spread = Math.sqrt(variance);
        boolean told = Double.isFinite(spread) && spread > ROUNDED * Math.abs(value);
        return told ? Measured.of(value, spread, unit) : Measured.of(value, unit);
    }

    private static double at(Optional<BalanceRangeAnswer> there, ToDoubleFunction<BalanceRangeAnswer> number) {
        return there.map(number::applyAsDouble).orElse(Double.NaN);
    }
}
