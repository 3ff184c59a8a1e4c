package planewright.throws_;

import static planewright.api.quantity.Units.DEGREE;
import static planewright.api.quantity.Units.METRE;
import static planewright.api.quantity.Units.MILLIMETRE;
import static planewright.api.quantity.Units.NUMBER;

import java.util.Optional;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import planewright.api.quantity.Measured;
import planewright.shared.uncertainty.Propagation;

/**
 * One throw.
 *
 * @param line as it was given
 * @param chord its measuring point, where one is known
 * @param ruler how its millimetres were measured
 * @param angle at a rate of 100 %; empty where millimetres are known and no measuring point
 */
record Travel(
        SurfaceTravel.ThrowLine line, Optional<Measured<Length>> chord, Ruler ruler, Optional<Measured<Angle>> angle) {
    static Travel of(SurfaceTravel.ThrowLine line, Optional<Measured<Length>> otherwise, Ruler ruler) {
        var chord = line.chord().or(() -> otherwise);
        var angle = line.angle()
                .map(given -> given.to(DEGREE))
                .or(() -> line.distance().flatMap(distance -> chord.map(radius -> ruler.degrees(distance, radius))));
        return new Travel(line, chord, ruler, angle);
    }

    String name() {
        return line.name().strip();
    }

    /** The angle at a rate; the angle follows the servo evenly, as it nearly does about neutral. */
    Optional<Measured<Angle>> angle(Measured<Dimensionless> rate) {
        return angle.map(full -> Propagation.through(
                        x -> x[0] * x[1],
                        new double[] {full.in(DEGREE), rate.in(NUMBER)},
                        new double[] {full.spreadIn(DEGREE), rate.spreadIn(NUMBER)})
                .in(DEGREE));
    }

    /** The distance at a rate. */
    Optional<Measured<Length>> distance(Measured<Dimensionless> rate, Ruler shown) {
        return chord.filter(radius -> angle.isPresent())
                .map(radius -> line.distance().isPresent()
                        ? distance(line.distance().get(), radius, rate, shown)
                        : shown.millimetres(angle(rate).orElseThrow(), radius));
    }

    /** A distance became an angle with the help of the measuring point, whose own ± so tells twice, and partly cancels. */
    private Measured<Length> distance(
            Measured<Length> given, Measured<Length> radius, Measured<Dimensionless> rate, Ruler shown) {
        var propagated = Propagation.through(
                x -> x[1] > 0 ? x[1] * shown.factor(x[2] * ruler.angle(x[0] / x[1])) : Double.NaN,
                new double[] {given.in(METRE), radius.in(METRE), rate.in(NUMBER)},
                new double[] {given.spreadIn(METRE), radius.spreadIn(METRE), rate.spreadIn(NUMBER)});
        return (Double.isFinite(propagated.spread()) ? propagated.in(METRE) : Measured.of(propagated.value(), METRE))
                .to(MILLIMETRE);
    }
}
