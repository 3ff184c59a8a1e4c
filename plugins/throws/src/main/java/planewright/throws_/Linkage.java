package planewright.throws_;

import java.util.List;
import java.util.Optional;
import planewright.api.figure.Point;
import planewright.throws_.FourBar.Branch;

/**
 * Servo arm, pushrod, horn and hinge as a four-bar linkage, on the branch on which it was built. A turn of the servo counts
 * from its centre, the arm's hole towards the surface where the arm stands upright; a deflection counts from neutral, the
 * horn's hole aft. Radians and metres.
 */
final class Linkage {
    /** Coupler and rocker nearer in line than this, at the centre, do not say which way the surface goes. */
    static final double LEAST_ANGLE = Math.toRadians(1);

    private final Geometry geometry;
    private final FourBar bars;
    private final Branch branch;
    private final double slope;
    private final double centre;
    private final double hornNeutral;
    private final double wraps;

    private Linkage(Geometry geometry) {
        this.geometry = geometry;
        this.bars = new FourBar(
                geometry.ground(),
                geometry.arm(),
                geometry.pushrod().orElse(geometry.neutralPushrod()),
                geometry.hornRadius());
        this.slope = Math.atan2(geometry.hingeRise(), geometry.hingeDistance());
        this.centre = Math.PI / 2 - geometry.lean() - slope;
        this.hornNeutral = Math.atan2(geometry.hornLength(), geometry.hornOffset());
        this.branch = bars.branch(centre, hornNeutral - slope);
        double raw = hornNeutral - slope - bars.rockerAngle(centre, branch);
        this.wraps = raw - Math.IEEEremainder(raw, 2 * Math.PI);
    }

    /**
     * Builds it.
     *
     * @return empty where arm and hinge line meet, where the pushrod does not reach with the servo centred, or where it is in
     *     line with the horn there
     */
    static Optional<Linkage> of(Geometry geometry) {
        if (!(geometry.arm() > 0) || !(geometry.ground() > geometry.arm()) || !(geometry.hornRadius() > 0)) {
            return Optional.empty();
        }
        var linkage = new Linkage(geometry);
        boolean built = linkage.bars.coupler() > 0
                && linkage.bars.closes(linkage.centre)
                && linkage.bars.couplerToRocker(linkage.centre, linkage.branch) >= LEAST_ANGLE;
        return built ? Optional.of(linkage) : Optional.empty();
    }

    Geometry geometry() {
        return geometry;
    }

    double pushrod() {
        return bars.coupler();
    }

    /** Turns of the servo between which pushrod and horn are not yet in line, first the one away from the surface. */
    double[] limits() {
        var range = bars.range(centre);
        return new double[] {centre - range.to(), centre - range.from()};
    }

    /** Turns, within half a revolution of the centre, at which arm and pushrod are in line, in order. */
    List<Double> overCentre() {
        return bars.turningPoints(branch).stream()
                .map(angle -> Math.IEEEremainder(centre - angle, 2 * Math.PI))
                .filter(turn -> limits()[0] < turn && turn < limits()[1])
                .sorted()
                .toList();
    }

    /** Where the surface stands; beyond a limit as at the limit. */
    double deflection(double turn) {
        return hornNeutral - slope - bars.rockerAngle(angle(turn), branch) - wraps;
    }

    /** How much the surface turns for a small turn of the servo; infinite at a limit. */
    double ratio(double turn) {
        return bars.ratio(angle(turn), branch);
    }

    double pushrodToHorn(double turn) {
        return bars.couplerToRocker(angle(turn), branch);
    }

    double pushrodToArm(double turn) {
        return bars.couplerToCrank(angle(turn), branch);
    }

    /** The hole in the arm. */
    Point armHole(double turn) {
        double lean = geometry.lean() + turn;
        return new Point(geometry.arm() * Math.sin(lean), geometry.arm() * Math.cos(lean));
    }

    /** The hole in the horn. */
    Point hornHole(double turn) {
        return onSurface(geometry.hornOffset(), geometry.hornLength(), turn);
    }

    /** A point that moves with the surface, given by its place aft of and above the hinge line while that is neutral. */
    Point onSurface(double aft, double above, double turn) {
        double deflection = deflection(turn);
        return new Point(
                geometry.hingeDistance() + aft * Math.cos(deflection) + above * Math.sin(deflection),
                geometry.hingeRise() - aft * Math.sin(deflection) + above * Math.cos(deflection));
    }

    /**
     * The turn at which the surface stands at a deflection, by halving the interval.
     *
     * @param deflection between those at centre and at {@code last}
     * @param last a turn up to which the surface only ever goes one way from the centre
     */
    double turnFor(double deflection, double last) {
        double near = 0;
        double far = last;
        boolean rising = deflection(last) > deflection(0);
        for (int i = 0; i < 80; i++) {
            double middle = (near + far) / 2;
            if (deflection(middle) < deflection == rising) {
                near = middle;
            } else {
                far = middle;
            }
        }
        return (near + far) / 2;
    }

    private double angle(double turn) {
        return centre - turn;
    }
}
