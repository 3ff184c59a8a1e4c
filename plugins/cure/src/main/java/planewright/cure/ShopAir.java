package planewright.cure;

import java.util.ArrayList;
import java.util.List;

/**
 * The shop's temperature over the hours since a joint was closed, straight from one reading to the next. Before the first
 * reading and after the last it stays as it is there, or the same day comes again and again.
 */
final class ShopAir {
    static final double DAY = 24;

    /** Looks a little ahead, so that an instant that rounding has put just before a reading counts as at it. */
    private static final double NUDGE = 1e-7;

    private final List<Reading> readings;
    private final boolean daily;
    private final double clock;

    private ShopAir(List<Reading> readings, boolean daily, double clock) {
        this.readings = readings;
        this.daily = daily;
        this.clock = clock;
    }

    /** What a thermometer showed: hours, and kelvins. */
    record Reading(double hours, double kelvin) {}

    /**
     * A stretch in which the temperature runs straight.
     *
     * @param from hours after the start
     * @param to hours after the start; may be infinite where both temperatures are the same
     */
    record Piece(double from, double to, double kelvinFrom, double kelvinTo) {
        double at(double hours) {
            if (kelvinFrom == kelvinTo) {
                return kelvinFrom;
            }
            double along = Math.max(0, Math.min(1, (hours - from) / (to - from)));
            return kelvinFrom + (kelvinTo - kelvinFrom) * along;
        }
    }

    static ShopAir constant(double kelvin) {
        return new ShopAir(List.of(new Reading(0, kelvin)), false, 0);
    }

    /** @param readings hours since the start, in order of time, at least one; two at one instant are a step */
    static ShopAir history(List<Reading> readings) {
        return new ShopAir(List.copyOf(readings), false, 0);
    }

    /**
     * @param readings hours of the clock, 0 to under 24, in order, at least one
     * @param clock the clock at the start, 0 to under 24 h
     */
    static ShopAir daily(List<Reading> readings, double clock) {
        return new ShopAir(List.copyOf(readings), true, clock);
    }

    /** The same, warmer by that much throughout. */
    ShopAir warmer(double kelvins) {
        return new ShopAir(
                readings.stream()
                        .map(reading -> new Reading(reading.hours(), reading.kelvin() + kelvins))
                        .toList(),
                daily,
                clock);
    }

    double at(double hours) {
        return piece(hours).at(hours);
    }

    /** The piece that holds from an instant on. */
    Piece piece(double hours) {
        if (!daily) {
            return piece(hours, 0, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
        }
        double midnight = Math.floor((hours + clock + NUDGE) / DAY) * DAY - clock;
        double before = readings.get(readings.size() - 1).hours() - DAY + midnight;
        double after = readings.get(0).hours() + DAY + midnight;
        return piece(hours, midnight, before, after);
    }

    private Piece piece(double hours, double midnight, double before, double after) {
        int next = 0;
        while (next < readings.size() && midnight + readings.get(next).hours() <= hours + NUDGE) {
            next++;
        }
        var last = readings.get(readings.size() - 1);
        var earlier = next == 0 ? (daily ? last : readings.get(0)) : readings.get(next - 1);
        var later = next == readings.size() ? (daily ? readings.get(0) : last) : readings.get(next);
        double from = next == 0 ? before : midnight + readings.get(next - 1).hours();
        double to =
                next == readings.size() ? after : midnight + readings.get(next).hours();
        return new Piece(from, to, earlier.kelvin(), later.kelvin());
    }

    /** The coldest and the warmest it gets until an instant, K. */
    double[] extremes(double until) {
        double least = at(0);
        double most = least;
        double hours = 0;
        while (hours < until) {
            var piece = piece(hours);
            double end = Math.min(until, piece.to());
            for (double kelvin : new double[] {piece.at(hours), piece.at(end)}) {
                least = Math.min(least, kelvin);
                most = Math.max(most, kelvin);
            }
            hours = end;
        }
        return new double[] {least, most};
    }

    /** Instants until an end at which to draw it: every reading, and both sides of a step. */
    List<double[]> course(double until, int most) {
        var course = new ArrayList<double[]>();
        double hours = 0;
        while (hours < until && course.size() < most) {
            var piece = piece(hours);
            double end = Math.min(until, piece.to());
            course.add(new double[] {hours, piece.at(hours)});
            course.add(new double[] {end, piece.at(end)});
            hours = end;
        }
        return course;
    }
}
