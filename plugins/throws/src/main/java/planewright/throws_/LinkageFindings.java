package planewright.throws_;

import static planewright.api.quantity.Units.DEGREE;
import static planewright.api.quantity.Units.METRE;
import static planewright.api.quantity.Units.PERCENT;

import java.util.ArrayList;
import java.util.List;
import planewright.api.calculator.Finding;

/** What a builder should know of a linkage. */
final class LinkageFindings {
    /** R. L. Norton, Design of Machinery, chapter 4 (from memory): a transmission angle below 40° moves poorly. */
    private static final double POOR = Math.toRadians(40);

    /** Less keeps it near locking: common practice, no source. */
    private static final double LOCKING = Math.toRadians(20);

    /** A surface this near to neutral looks neutral: common practice, no source. */
    private static final double NEUTRAL = Math.toRadians(0.5);

    /** Ups and downs that differ by less are even: common practice, no source. */
    private static final double EVEN = 5;

    /** A step at neutral that a pilot feels: common practice, no source. In degrees. */
    private static final double COARSE = 0.5;

    /** Less of the servo's travel wastes its leverage and steps: common practice, no source. In percent. */
    private static final double WASTEFUL = 60;

    private final Words words;
    private final LinkageAnswer answer;
    private final Setting setting;
    private final List<Finding> findings = new ArrayList<>();

    LinkageFindings(LinkageAnswer answer) {
        this.words = answer.words();
        this.answer = answer;
        this.setting = answer.setting();
    }

    List<Finding> all() {
        boolean sound = locks() & overCentre();
        neutral();
        if (sound) {
            angles();
            differential();
        }
        leverage();
        uncertainty();
        holes();
        return List.copyOf(findings);
    }

    private boolean locks() {
        for (int side : new int[] {-1, 1}) {
            if (setting.locks(side)) {
                double turn = setting.turn(side);
                findings.add(Finding.stop(words.say(
                        side > 0
                                ? "Turned {0} towards the surface, pushrod and horn come in line and the linkage locks: the servo"
                                        + " would stall there. End point towards the surface below {1}, or a shorter arm, or a"
                                        + " longer horn."
                                : "Turned {0} away from it, pushrod and horn come in line and the linkage locks: the servo"
                                        + " would stall there. End point away from it below {1}, or a shorter arm, or a longer"
                                        + " horn.",
                        words.degrees(turn),
                        words.endPoint(answer.endPointFor(turn)))));
            }
        }
        return !setting.locks(1) && !setting.locks(-1);
    }

    private boolean overCentre() {
        for (double turn : setting.turnsBack()) {
            findings.add(Finding.stop(words.say(
                    turn > 0
                            ? "Turned {0} towards the surface, arm and pushrod come in line: beyond it the surface goes back while"
                                    + " the stick goes on. End point towards the surface below {1}, or the arm nearer to square."
                            : "Turned {0} away from it, arm and pushrod come in line: beyond it the surface goes back while"
                                    + " the stick goes on. End point away from it below {1}, or the arm nearer to square.",
                    words.degrees(turn),
                    words.endPoint(answer.endPointFor(turn)))));
        }
        return setting.turnsBack().isEmpty();
    }

    private void neutral() {
        if (answer.inputs().pushrodLength().isEmpty()) {
            return;
        }
        double stands = setting.deflection(0);
        double off = setting.linkage().pushrod() - setting.linkage().geometry().neutralPushrod();
        if (Math.abs(stands) < NEUTRAL) {
            findings.add(Finding.fine(words.say("With the servo centred the surface is neutral.")));
        } else {
            findings.add(Finding.lookAgain(words.say(
                    stands > 0
                            ? "With the servo centred the surface stands {0} up: make the pushrod {1}."
                            : "With the servo centred the surface stands {0} down: make the pushrod {1}.",
                    words.degrees(stands),
                    words.say(off > 0 ? "{0} shorter" : "{0} longer", words.mm(Math.abs(off))))));
        }
    }

    private void angles() {
        double worst = Math.min(worst(-1), worst(1));
        if (worst < LOCKING) {
            findings.add(Finding.stop(words.say(
                    "Pushrod and horn come within {0} of one line: a little play or bend and it "
                            + "locks. Use a shorter arm, a longer horn, or less travel.",
                    words.degrees(worst))));
        } else if (worst < POOR) {
            findings.add(Finding.lookAgain(words.say(
                    "Pushrod and horn come within {0} of one line; below 40° it moves poorly, with "
                            + "friction and play. A longer horn or less travel helps.",
                    words.degrees(worst))));
        } else {
            findings.add(Finding.fine(words.say(
                    "It moves freely: pushrod and horn never come nearer to one line than {0}.",
                    words.degrees(worst))));
        }
    }

    private double worst(double command) {
        return setting.linkage().pushrodToHorn(setting.turn(command));
    }

    private void differential() {
        var differential = answer.differential();
        double up = setting.deflection(setting.highest());
        double down = -setting.deflection(setting.lowest());
        if (differential.isEmpty() || down <= 0) {
            findings.add(
                    Finding.lookAgain(
                            down > 0
                                    ? words.say(
                                            "The surface only goes down from neutral: centre the servo and look at the pushrod.")
                                    : words.say(
                                            "The surface only goes up from neutral: centre the servo and look at the pushrod.")));
            return;
        }
        if (Math.abs(differential.get().in(PERCENT)) <= EVEN) {
            findings.add(Finding.fine(
                    words.say("Up and down are even: {0} and {1}.", words.degrees(up), words.degrees(down))));
            return;
        }
        double less = Math.min(up, down);
        setting.commandFor(up > down ? less : -less)
                .ifPresent(command -> findings.add(Finding.lookAgain(words.say(
                        command > 0
                                ? "It goes {0} up and {1} down. If that is not wanted: end point towards the surface at {2} makes"
                                        + " them even."
                                : "It goes {0} up and {1} down. If that is not wanted: end point away from it at {2} makes them"
                                        + " even.",
                        words.degrees(up),
                        words.degrees(down),
                        words.percent(Math.abs(command) * answer.endPoint(command) / 100)))));
    }

    private void leverage() {
        double ratio = Math.abs(setting.linkage().ratio(0));
        if (ratio > 1) {
            findings.add(Finding.lookAgain(
                    words.say("About centre the surface turns faster than the servo: little leverage, and play "
                            + "shows. A shorter arm or a longer horn is stronger and finer.")));
        }
        double step = ratio * answer.inputs().servoStep().in(DEGREE);
        if (step > COARSE) {
            findings.add(Finding.lookAgain(words.say(
                    "A step of the servo moves the surface by {0}: coarse for trimming.",
                    words.degrees(Math.toRadians(step)))));
        }
    }

    private void uncertainty() {
        if (!Measures.closesWithin(answer.inputs())) {
            findings.add(Finding.lookAgain(
                    words.say("Within its ± the linkage would not close, so no ± is told: measure again.")));
        }
    }

    private void holes() {
        if (answer.inputs().wantedUp().isEmpty() && answer.inputs().wantedDown().isEmpty()) {
            if (!answer.inputs().armHoles().isEmpty()
                    || !answer.inputs().hornHoles().isEmpty()) {
                findings.add(Finding.lookAgain(words.say("Say which throw is wanted, and the holes are compared.")));
            }
            return;
        }
        if (answer.pairs().isEmpty()) {
            findings.add(
                    Finding.stop(words.say("None of these holes can be joined by a pushrod that moves the surface.")));
            return;
        }
        var best = answer.pairs().get(0);
        var holes = words.say("hole {0} of the arm and {1} of the horn", words.mm(best.arm()), words.mm(best.horn()));
        if (!best.sound()) {
            findings.add(Finding.stop(
                    words.say("With every pair of holes it locks or passes over centre within the travel: lower "
                            + "the end points.")));
        } else if (!best.reaches()) {
            findings.add(Finding.lookAgain(words.say(
                    "No pair of these holes gives the throw that is wanted; nearest is {0}, {1} short.",
                    holes, words.percent(1 - best.least()))));
        } else {
            found(best, holes);
        }
    }

    private void found(Holes.Pair best, String holes) {
        boolean inUse = same(best.arm(), answer.inputs().armLength().in(METRE))
                && same(best.horn(), answer.inputs().hornLength().in(METRE));
        findings.add(Finding.fine(
                inUse
                        ? words.say("The throw that is wanted: {0}, as it is now.", holes)
                        : words.say("The throw that is wanted: {0}, the end points as listed.", holes)));
        if (100 / best.most() < WASTEFUL) {
            findings.add(Finding.lookAgain(
                    words.say("Even so the servo turns little of its travel; holes nearer to the arm's shaft or "
                            + "farther out on the horn would give more leverage and finer steps.")));
        }
    }

    private static boolean same(double one, double other) {
        return Math.abs(one - other) < 1e-6;
    }
}
