package planewright.throws_;

import static planewright.api.quantity.Units.DEGREE;
import static planewright.api.quantity.Units.METRE;
import static planewright.api.quantity.Units.MILLIMETRE;
import static planewright.api.quantity.Units.RADIAN;

import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import planewright.api.quantity.Measured;
import planewright.shared.uncertainty.Propagation;

/**
 * How a throw is measured at a point of the surface, a radius r aft of the hinge line: r times a factor of the angle. Plain
 * trigonometry of the circle; the straight line is the chord that Ptolemy tabled (Almagest I.11).
 */
enum Ruler {
    /** Straight from where the point is at neutral to where it is deflected: 2 r sin(δ/2). */
    STRAIGHT {
        @Override
        double factor(double angle) {
            return 2 * Math.sin(angle / 2);
        }

        @Override
        double angle(double factor) {
            return 2 * Math.asin(factor / 2);
        }
    },
    /** Square to the neutral surface: r sin δ. */
    SQUARE {
        @Override
        double factor(double angle) {
            return Math.sin(angle);
        }

        @Override
        double angle(double factor) {
            return Math.asin(factor);
        }
    },
    /** Along the arc that the point runs through: r δ. */
    ARC {
        @Override
        double factor(double angle) {
            return angle;
        }

        @Override
        double angle(double factor) {
            return factor;
        }
    };

    /** Distance over radius at an angle from −90° to 90°, in radians. */
    abstract double factor(double angle);

    /** The angle of a distance over radius; the inverse of {@link #factor}. */
    abstract double angle(double factor);

    /** The greatest distance over radius there is: at 90°. */
    double greatest() {
        return factor(Math.PI / 2);
    }

    /** The distance at a radius. */
    Measured<Length> millimetres(Measured<Angle> angle, Measured<Length> radius) {
        return Propagation.through(
                        x -> x[1] * factor(x[0]),
                        new double[] {angle.in(RADIAN), radius.in(METRE)},
                        new double[] {angle.spreadIn(RADIAN), radius.spreadIn(METRE)})
                .in(METRE)
                .to(MILLIMETRE);
    }

    /**
     * The angle of a distance at a radius.
     *
     * @return without a ± where the ± reaches beyond 90°
     */
    Measured<Angle> degrees(Measured<Length> distance, Measured<Length> radius) {
        var propagated = Propagation.through(
                x -> x[1] > 0 ? angle(x[0] / x[1]) : Double.NaN,
                new double[] {distance.in(METRE), radius.in(METRE)},
                new double[] {distance.spreadIn(METRE), radius.spreadIn(METRE)});
        return Double.isFinite(propagated.spread())
                ? propagated.in(RADIAN).to(DEGREE)
                : Measured.of(Math.toDegrees(propagated.value()), DEGREE);
    }
}
