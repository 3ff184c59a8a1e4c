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

    private final InletAnswer answer;
    private final InletShape shape;
    private final List<Finding> findings = new ArrayList<>();

    InletFindings(InletAnswer answer) {
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
            findings.add(Finding.stop("The foam is too thin: the floor goes " + Words.mm(shape.floorDepth())
                    + " below the skin and comes out " + Words.mm(shape.length() - emerges(foam))
                    + " ahead of the lip. "
                    + wayOut(foam - keep) + " Or let it come out into the bay on purpose: then line the floor with thin"
                    + " sheet before you cut."));
        } else if (left < keep) {
            findings.add(
                    Finding.lookAgain("Only " + Words.mm(left) + " of foam stay under the floor, and you want to keep "
                            + Words.mm(keep) + ". " + wayOut(foam - keep)));
        } else {
            findings.add(Finding.fine(Words.mm(left) + " of foam stay under the floor."));
        }
    }

    /** Where a floor of that depth is reached; the lip where it is reached only behind it. */
    private double emerges(double foam) {
        return Math.min(shape.length(), foam / Math.tan(shape.ramp()));
    }

    private String wayOut(double within) {
        double entrance = entranceWithin(within);
        if (entrance < LOWEST) {
            return "No inlet worth cutting fits into it.";
        }
        double count = Math.ceil(Math.pow(shape.depth() / entrance, 2) - ROUNDING);
        double width = shape.area() / entrance;
        return "Up to " + Words.mm(entrance) + " of entrance depth fits: for the same area "
                + (width > WIDEST * entrance ? "" : "make it " + Words.mm(width) + " wide, or ") + "cut " + (int) count
                + " inlets of " + Words.squareMillimetres(shape.area() / count) + " each.";
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
            findings.add(Finding.lookAgain("A ramp of " + Words.degrees(shape.ramp())
                    + " is steep: air that does not follow the floor brings little pressure. 5° to 7° works best; at 7° it"
                    + " gets " + Words.mm(lengthAt(STEEPEST)) + " long."));
        } else if (shape.ramp() < SHALLOWEST - ROUNDING) {
            findings.add(Finding.lookAgain("A ramp of " + Words.degrees(shape.ramp())
                    + " makes it longer than it need be: at 5° it gets " + Words.mm(lengthAt(SHALLOWEST))
                    + " long, and a long floor collects slow air."));
        } else {
            findings.add(Finding.fine("The ramp is within the 5° to 7° that work best."));
        }
    }

    private double lengthAt(double ramp) {
        return new InletShape(shape.width(), shape.depth(), ramp, shape.lip(), shape.curvatureAcross()).length();
    }

    private void proportions() {
        if (shape.ratio() < NARROWEST - ROUNDING || shape.ratio() > WIDEST + ROUNDING) {
            double nearest = shape.ratio() < NARROWEST ? NARROWEST : WIDEST;
            double width = Math.sqrt(shape.area() * nearest);
            findings.add(Finding.lookAgain("It is " + Words.number(shape.ratio())
                    + " times as wide as deep; 3 to 5 works best. For the same area make it " + Words.mm(width)
                    + " wide and "
                    + Words.mm(width / nearest) + " deep."));
        } else {
            findings.add(Finding.fine("Width and depth go together: 3 to 5 times as wide as deep works best."));
        }
    }

    private void small() {
        if (shape.depth() < LOWEST) {
            findings.add(Finding.lookAgain("An entrance only " + Words.mm(shape.depth())
                    + " deep lies mostly in the slow air along the skin, and dirt closes it. Put it well forward, or make one"
                    + " larger inlet of several small ones."));
        }
    }

    private void across() {
        double drop = shape.drop(shape.width() / 2);
        if (drop > ROUND * shape.depth()) {
            findings.add(Finding.lookAgain("The skin falls away " + Words.mm(drop)
                    + " from the middle of the entrance to its walls. With a floor that is flat across it is cut "
                    + Words.mm(shape.meanDrop())
                    + " deeper in the middle, so that the entrance keeps its area; the paper is"
                    + " as wide as the skin is round. Cut to the depths at the wall as well."));
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
            findings.add(Finding.lookAgain(
                    "The skin bulges " + Words.mm(bulge) + " over the length of the ramp. Bend the floor"
                            + " with it, by the depths below the skin: a straight floor would be that much too deep half way and begin "
                            + Words.degrees(steeper)
                            + " steeper. Over a bulge the air is fast and its pressure low: a flatter place"
                            + " feeds better (NACA ACR 5I20)."));
        }
        if (shape.curvatureAcross() > 0) {
            findings.add(
                    Finding.lookAgain("The skin is round both ways, so no paper lies flat on it: cut the paper in along"
                            + " the station lines, and go by the measures."));
        }
    }
}
