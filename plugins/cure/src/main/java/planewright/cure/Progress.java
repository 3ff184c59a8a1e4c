package planewright.cure;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/**
 * Time earned while the temperature changes: an hour at the reference temperature counts as an hour, a cold one as less, and
 * what needs 24 h is done when 24 have been earned, ∫ k(T(t))/k(reference) dt. Each stretch is integrated by Simpson's rule.
 *
 * @param air the shop's temperature
 * @param rate the rate at a temperature in K, as a multiple of that at the reference
 */
record Progress(ShopAir air, DoubleUnaryOperator rate) {
    /** What takes longer than this, in hours, never gets there. */
    static final double LONGEST = 400 * ShopAir.DAY;

    private static final double STEP = 0.25;
    private static final int HALVINGS = 60;

    /** How long it takes to earn so many hours; empty where that is longer than {@link #LONGEST}. */
    OptionalDouble hoursToEarn(double wanted) {
        double earned = 0;
        double hours = 0;
        while (earned < wanted) {
            var piece = air.piece(hours);
            double end = Math.min(hours + STEP, piece.to());
            double more = earned(piece, hours, end);
            if (earned + more >= wanted) {
                return OptionalDouble.of(crossing(piece, hours, end, wanted - earned));
            }
            earned += more;
            hours = end;
            if (hours > LONGEST) {
                return OptionalDouble.empty();
            }
        }
        return OptionalDouble.of(hours);
    }

    /** Hours earned at each of so many evenly spaced instants, the first at 0 and the last at an end. */
    List<Double> earnedUntil(double end, int instants) {
        var course = new ArrayList<Double>();
        double earned = 0;
        double hours = 0;
        course.add(earned);
        for (int i = 1; i < instants; i++) {
            double mark = end * i / (instants - 1);
            while (hours < mark) {
                var piece = air.piece(hours);
                double next = Math.min(Math.min(mark, hours + STEP), piece.to());
                earned += earned(piece, hours, next);
                hours = next;
            }
            course.add(earned);
        }
        return course;
    }

    private double earned(ShopAir.Piece piece, double from, double to) {
        double middle = (from + to) / 2;
        return (to - from)
                / 6
                * (rate.applyAsDouble(piece.at(from))
                        + 4 * rate.applyAsDouble(piece.at(middle))
                        + rate.applyAsDouble(piece.at(to)));
    }

    private double crossing(ShopAir.Piece piece, double from, double to, double wanted) {
        double low = from;
        double high = to;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (earned(piece, from, middle) < wanted) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }
}
