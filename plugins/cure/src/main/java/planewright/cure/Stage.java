package planewright.cure;

import javax.measure.quantity.Time;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;

/**
 * How long until something may be done; hours after the start.
 *
 * @param quick at the quick end of the range
 * @param likely the usual
 * @param spread one standard uncertainty of {@code likely}
 * @param slow at the slow end of the range
 */
record Stage(double quick, double likely, double spread, double slow) {
    /** A smaller share of the time is what rounding leaves where nothing is uncertain. */
    private static final double ROUNDED = 1e-6;

    /** Not before another stage. */
    Stage notBefore(Stage other) {
        return new Stage(
                Math.max(quick, other.quick),
                Math.max(likely, other.likely),
                likely >= other.likely ? spread : other.spread,
                Math.max(slow, other.slow));
    }

    Measured<Time> measured() {
        return spread > ROUNDED * likely ? Measured.of(likely, spread, Units.HOUR) : Measured.of(likely, Units.HOUR);
    }

    double countedOn(CureTime.Pace pace) {
        return pace == CureTime.Pace.SLOW_END ? slow : likely;
    }
}
