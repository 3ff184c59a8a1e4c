package planewright.throws_;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import planewright.api.calculator.Language;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;

/** Questions of a test about a linkage: an ordinary one, but for what is said. Millimetres and degrees. */
final class Shops {
    private Measured<Length> arm = mm(12);
    private double lean;
    private double travel = 45;
    private double towards = 100;
    private double away = 100;
    private ServoLinkage.Side side = ServoLinkage.Side.ABOVE;
    private Measured<Length> horn = mm(16);
    private double offset;
    private Optional<Measured<Length>> chord = Optional.empty();
    private double distance = 85;
    private double rise = -4;
    private Optional<Measured<Length>> pushrod = Optional.empty();
    private Optional<Measured<Angle>> wantedUp = Optional.empty();
    private Optional<Measured<Angle>> wantedDown = Optional.empty();
    private List<ServoLinkage.HoleLine> armHoles = List.of();
    private List<ServoLinkage.HoleLine> hornHoles = List.of();

    static Shops linkage() {
        return new Shops();
    }

    Shops arm(double millimetres) {
        return arm(mm(millimetres));
    }

    Shops arm(Measured<Length> length) {
        arm = length;
        return this;
    }

    Shops lean(double degrees) {
        lean = degrees;
        return this;
    }

    Shops travel(double degrees) {
        travel = degrees;
        return this;
    }

    Shops ends(double percentTowards, double percentAway) {
        towards = percentTowards;
        away = percentAway;
        return this;
    }

    Shops below() {
        side = ServoLinkage.Side.BELOW;
        return this;
    }

    Shops horn(double millimetres) {
        return horn(mm(millimetres));
    }

    Shops horn(Measured<Length> length) {
        horn = length;
        return this;
    }

    Shops offset(double millimetres) {
        offset = millimetres;
        return this;
    }

    Shops chord(double millimetres) {
        chord = Optional.of(mm(millimetres));
        return this;
    }

    Shops hinge(double millimetresAft, double millimetresUp) {
        distance = millimetresAft;
        rise = millimetresUp;
        return this;
    }

    Shops pushrod(double millimetres) {
        pushrod = Optional.of(mm(millimetres));
        return this;
    }

    Shops wanted(double degreesUp, double degreesDown) {
        wantedUp = Optional.of(Measured.of(degreesUp, Units.DEGREE));
        wantedDown = Optional.of(Measured.of(degreesDown, Units.DEGREE));
        return this;
    }

    Shops holes(List<Double> inArm, List<Double> inHorn) {
        armHoles =
                inArm.stream().map(hole -> new ServoLinkage.HoleLine(mm(hole))).toList();
        hornHoles =
                inHorn.stream().map(hole -> new ServoLinkage.HoleLine(mm(hole))).toList();
        return this;
    }

    ServoLinkage.Results answer() throws UnsuitableInput {
        return LinkageAnswer.of(new Words(Language.ENGLISH), inputs()).results();
    }

    ServoLinkage.Inputs inputs() {
        return new ServoLinkage.Inputs(
                "aileron",
                arm,
                Measured.of(lean, Units.DEGREE),
                Measured.of(travel, Units.DEGREE),
                Measured.of(towards, Units.PERCENT),
                Measured.of(away, Units.PERCENT),
                Measured.of(0.5, Units.DEGREE),
                side,
                horn,
                mm(offset),
                chord,
                mm(distance),
                mm(rise),
                pushrod,
                wantedUp,
                wantedDown,
                armHoles,
                hornHoles);
    }

    /** Any linkage that can be built, ordinary or odd; empty where the dice give none. */
    static Optional<Linkage> any(Random random) {
        double arm = 4 + 30 * random.nextDouble();
        var geometry = new Geometry(
                arm,
                2 * Math.PI * (random.nextDouble() - 0.5),
                4 + 40 * random.nextDouble(),
                30 * (random.nextDouble() - 0.5),
                10 + 120 * random.nextDouble(),
                60 * (random.nextDouble() - 0.5),
                OptionalDouble.empty());
        return random.nextInt(4) > 0
                ? Linkage.of(geometry)
                : Linkage.of(new Geometry(
                        geometry.arm(),
                        geometry.lean(),
                        geometry.hornLength(),
                        geometry.hornOffset(),
                        geometry.hingeDistance(),
                        geometry.hingeRise(),
                        OptionalDouble.of(geometry.neutralPushrod() + 6 * (random.nextDouble() - 0.5))));
    }

    private static Measured<Length> mm(double millimetres) {
        return Measured.of(millimetres, Units.MILLIMETRE);
    }
}
