package planewright.throws_;

import static planewright.api.quantity.Units.DEGREE;
import static planewright.api.quantity.Units.METRE;
import static planewright.api.quantity.Units.MILLIMETRE;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import planewright.api.calculator.InputProblem;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.quantity.Measured;

/** Refuses what cannot be built, beyond the bounds that stand with the inputs themselves. */
final class LinkageChecks {
    /** A smaller ± is none: no rule resolves a picometre and no protractor a billionth of a degree. In m or rad. */
    static final double LEAST_SPREAD = 1e-12;

    private static final int MOST_HOLES = 20;

    /** The nearest that the arm's hole may come to the hinge line, m. */
    private static final double CLEARANCE = 0.5e-3;

    /** The shortest pushrod, m. */
    private static final double SHORTEST = 1e-3;

    private final Words words;
    private final ServoLinkage.Inputs inputs;
    private final Geometry geometry;
    private final List<InputProblem> problems = new ArrayList<>();

    private LinkageChecks(Words words, ServoLinkage.Inputs inputs, Geometry geometry) {
        this.words = words;
        this.inputs = inputs;
        this.geometry = geometry;
    }

    static void require(Words words, ServoLinkage.Inputs inputs, Geometry geometry) throws UnsuitableInput {
        var checks = new LinkageChecks(words, inputs, geometry);
        checks.spreads();
        checks.holes();
        checks.reach();
        checks.throwIfAny();
        checks.closure();
        checks.throwIfAny();
    }

    private void spreads() {
        spread("armLength", words.say("Servo arm"), inputs.armLength(), 10, MILLIMETRE);
        spread("clocking", words.say("Arm leans"), inputs.clocking(), 20, DEGREE);
        spread("travel", words.say("Travel"), inputs.travel(), 20, DEGREE);
        spread("hornLength", words.say("Horn"), inputs.hornLength(), 10, MILLIMETRE);
        spread("hornOffset", words.say("Horn hole aft of hinge"), inputs.hornOffset(), 10, MILLIMETRE);
        spread("hingeDistance", words.say("Shaft to hinge"), inputs.hingeDistance(), 20, MILLIMETRE);
        spread("hingeRise", words.say("Hinge over shaft"), inputs.hingeRise(), 10, MILLIMETRE);
        inputs.pushrodLength()
                .ifPresent(length -> spread("pushrodLength", words.say("Pushrod"), length, 20, MILLIMETRE));
        inputs.chord().ifPresent(chord -> spread("chord", words.say("Measuring point"), chord, 20, MILLIMETRE));
    }

    private <Q extends Quantity<Q>> void spread(
            String input, String name, Measured<Q> value, double limit, Unit<Q> unit) {
        if (value.spreadIn(unit) > limit) {
            add(
                    input,
                    words.say("± of {0}", name),
                    words.show(Measured.of(value.spreadIn(unit), unit)),
                    words.say("up to {0}", words.show(Measured.of(limit, unit))),
                    words.say("Measure it again"));
        }
    }

    private void holes() {
        holes("armHoles", words.say("Holes in the arm"), inputs.armHoles());
        holes("hornHoles", words.say("Holes in the horn"), inputs.hornHoles());
        for (int i = 0; i < inputs.armHoles().size(); i++) {
            arm(
                    "armHoles[" + i + "].distance",
                    words.say("Hole {0} in the arm", (i + 1)),
                    inputs.armHoles().get(i).distance());
        }
    }

    private void holes(String input, String name, List<ServoLinkage.HoleLine> holes) {
        if (holes.size() > MOST_HOLES) {
            add(
                    input,
                    name,
                    words.say("{0} rows", holes.size()),
                    words.say("up to {0}", MOST_HOLES),
                    words.say("Leave out holes that nobody would use"));
        }
    }

    private void reach() {
        arm("armLength", words.say("Servo arm"), inputs.armLength());
    }

    private void arm(String input, String name, Measured<javax.measure.quantity.Length> arm) {
        if (geometry.ground() < arm.in(METRE) + CLEARANCE) {
            add(
                    input,
                    name,
                    words.show(arm),
                    words.say("shorter than the {0} from shaft to hinge line", words.mm(geometry.ground())),
                    words.say("The arm would strike the surface: measure both again"));
        }
    }

    private void closure() {
        double neutral = geometry.neutralPushrod();
        double toHinge = geometry.armHoleToHinge();
        double shortest = Math.abs(toHinge - geometry.hornRadius());
        double longest = toHinge + geometry.hornRadius();
        if (neutral < SHORTEST) {
            add(
                    "hingeDistance",
                    words.say("Shaft to hinge"),
                    words.show(inputs.hingeDistance()),
                    words.say("a distance that leaves room for a pushrod"),
                    words.say("The holes of arm and horn lie on each other: measure again, or take another hole"));
        } else if (geometry.pushrod().isPresent()
                && !(geometry.pushrod().getAsDouble() > shortest
                        && geometry.pushrod().getAsDouble() < longest)) {
            add(
                    "pushrodLength",
                    words.say("Pushrod"),
                    words.show(inputs.pushrodLength().orElseThrow()),
                    words.say(
                            "between {0} and {1}, which reach with the servo centred",
                            words.mm(shortest), words.mm(longest)),
                    words.say("For a neutral surface it is {0}", words.mm(neutral)));
        } else if (Linkage.of(geometry).isEmpty()) {
            add(
                    geometry.pushrod().isPresent() ? "pushrodLength" : "hornOffset",
                    words.say("Pushrod and horn with the servo centred"),
                    words.say("in line"),
                    words.say(
                            "an angle of {0} or more between them, best near 90°", words.degrees(Linkage.LEAST_ANGLE)),
                    words.say("In line the pushrod cannot move the surface: take another horn hole, length or "
                            + "arm lean"));
        }
    }

    private void add(String input, String name, String value, String accepted, String wayOut) {
        problems.add(new InputProblem(input, name, value, accepted, wayOut));
    }

    private void throwIfAny() throws UnsuitableInput {
        if (!problems.isEmpty()) {
            throw new UnsuitableInput(problems);
        }
    }
}
