package planewright.ducts;

import static planewright.api.quantity.Units.METRE;

import java.util.ArrayList;
import java.util.List;
import planewright.api.calculator.Finding;

/** What a builder should know of an inlet before cutting it. */
final class InletFindings {
    /** NACA RM A7I30, summary: the ramps and the proportions that work best. */
    private static final double SHALLOWEST = Math.toRadians(5);

    private static final double STEEPEST = Math.toRadians(7);
    private static final double NARROWEST = 3;
    private static final double WIDEST = 5;

    /** Angles and ratios this little outside are within: they were typed in another unit. */
    private static final double ROUNDING = 1e-9;

    /** How far a skin may fall away across before it shows, as a share of the entrance's depth: chosen, no source. */
    private static final double ROUND = 0.05;

    /** What a floor may be off by, m: about what a knife holds; common practice, no source. */
    private static final double BY_HAND = 0.0005;

    /** Lower entrances fill with the slow air along the skin and with dirt, m: common practice, no source. */
    private static final double LOWEST = 0.004;

    private final Words words;
    private final InletAnswer answer;
    private final InletShape shape;
    private final List<Finding> findings = new ArrayList<>();

    InletFindings(InletAnswer answer) {
        this.words = answer.words();
        this.answer = answer;
        this.shape = answer.shape();
    }

    List<Finding> all() {
        foam();
        ramp();
        proportions();
        small();
        across();
        along();
        return List.copyOf(findings);
    }

    private void foam() {
        if (answer.foam().isEmpty()) {
            return;
        }
        double foam = answer.foam().get();
        double keep = answer.inputs().keep().in(METRE);
        double left = foam - shape.floorDepth();
        if (left < 0) {
            findings.add(Finding.stop(words.say(
                    "The foam is too thin: the floor goes {0} below the skin and comes out {1} ahead "
                            + "of the lip. {2} Or let it come out into the bay on purpose: then line the floor "
                            + "with thin sheet before you cut.",
                    words.mm(shape.floorDepth()), words.mm(shape.length() - emerges(foam)), wayOut(foam - keep))));
        } else if (left < keep) {
            findings.add(Finding.lookAgain(words.say(
                    "Only {0} of foam stay under the floor, and you want to keep {1}. {2}",
                    words.mm(left), words.mm(keep), wayOut(foam - keep))));
        } else {
            findings.add(Finding.fine(words.say("{0} of foam stay under the floor.", words.mm(left))));
        }
    }

    /** Where a floor of that depth is reached; the lip where it is reached only behind it. */
    private double emerges(double foam) {
        return Math.min(shape.length(), foam / Math.tan(shape.ramp()));
    }

    private String wayOut(double within) {
        double entrance = entranceWithin(within);
        if (entrance < LOWEST) {
            return words.say("No inlet worth cutting fits into it.");
        }
        double count = Math.ceil(Math.pow(shape.depth() / entrance, 2) - ROUNDING);
        double width = shape.area() / entrance;
        return width > WIDEST * entrance
                ? words.say(
                        "Up to {0} of entrance depth fits: for the same area cut {1} inlets of {2} each.",
                        words.mm(entrance), (int) count, words.squareMillimetres(shape.area() / count))
                : words.say(
                        "Up to {0} of entrance depth fits: for the same area make it {1} wide, or cut {2} inlets of {3} each.",
                        words.mm(entrance),
                        words.mm(width),
                        (int) count,
                        words.squareMillimetres(shape.area() / count));
    }

    /** The entrance whose floor lies that deep, with the same lip and about the same fall of the skin. */
    private double entranceWithin(double floor) {
        double below = floor - shape.meanDrop();
        return shape.lip() instanceof ShapedLip lip
                ? below / (1 + lip.throatBelow() / shape.depth())
                : below - shape.lip().throatBelow();
    }

    private void ramp() {
        if (shape.ramp() > STEEPEST + ROUNDING) {
            findings.add(Finding.lookAgain(words.say(
                    "A ramp of {0} is steep: air that does not follow the floor brings little "
                            + "pressure. 5° to 7° works best; at 7° it gets {1} long.",
                    words.degrees(shape.ramp()), words.mm(lengthAt(STEEPEST)))));
        } else if (shape.ramp() < SHALLOWEST - ROUNDING) {
            findings.add(Finding.lookAgain(words.say(
                    "A ramp of {0} makes it longer than it need be: at 5° it gets {1} long, and a "
                            + "long floor collects slow air.",
                    words.degrees(shape.ramp()), words.mm(lengthAt(SHALLOWEST)))));
        } else {
            findings.add(Finding.fine(words.say("The ramp is within the 5° to 7° that work best.")));
        }
    }

    private double lengthAt(double ramp) {
        return new InletShape(shape.width(), shape.depth(), ramp, shape.lip(), shape.curvatureAcross()).length();
    }

    private void proportions() {
        if (shape.ratio() < NARROWEST - ROUNDING || shape.ratio() > WIDEST + ROUNDING) {
            double nearest = shape.ratio() < NARROWEST ? NARROWEST : WIDEST;
            double width = Math.sqrt(shape.area() * nearest);
            findings.add(Finding.lookAgain(words.say(
                    "It is {0} times as wide as deep; 3 to 5 works best. For the same area make it "
                            + "{1} wide and {2} deep.",
                    words.number(shape.ratio()), words.mm(width), words.mm(width / nearest))));
        } else {
            findings.add(
                    Finding.fine(words.say("Width and depth go together: 3 to 5 times as wide as deep works best.")));
        }
    }

    private void small() {
        if (shape.depth() < LOWEST) {
            findings.add(Finding.lookAgain(words.say(
                    "An entrance only {0} deep lies mostly in the slow air along the skin, and dirt "
                            + "closes it. Put it well forward, or make one larger inlet of several small ones.",
                    words.mm(shape.depth()))));
        }
    }

    private void across() {
        double drop = shape.drop(shape.width() / 2);
        if (drop > ROUND * shape.depth()) {
            findings.add(Finding.lookAgain(words.say(
                    "The skin falls away {0} from the middle of the entrance to its walls. With a "
                            + "floor that is flat across it is cut {1} deeper in the middle, so that the "
                            + "entrance keeps its area; the paper is as wide as the skin is round. Cut to the "
                            + "depths at the wall as well.",
                    words.mm(drop), words.mm(shape.meanDrop()))));
        }
    }

    private void along() {
        double curvature = answer.curvatureAlong();
        if (curvature == 0) {
            return;
        }
        double bulge = shape.length() * shape.length() * curvature / 8;
        double steeper = shape.length() * curvature / 2;
        if (bulge > BY_HAND) {
            findings.add(Finding.lookAgain(words.say(
                    "The skin bulges {0} over the length of the ramp. Bend the floor with it, by the "
                            + "depths below the skin: a straight floor would be that much too deep half way and "
                            + "begin {1} steeper. Over a bulge the air is fast and its pressure low: a flatter "
                            + "place feeds better (NACA ACR 5I20).",
                    words.mm(bulge), words.degrees(steeper))));
        }
        if (shape.curvatureAcross() > 0) {
            findings.add(Finding.lookAgain(
                    words.say("The skin is round both ways, so no paper lies flat on it: cut the paper in along "
                            + "the station lines, and go by the measures.")));
        }
    }
}
