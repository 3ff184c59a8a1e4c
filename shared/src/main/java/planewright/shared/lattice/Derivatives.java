package planewright.shared.lattice;

import java.util.EnumMap;
import java.util.Map;

/**
 * Coefficients and their derivatives, angles in radians, rates as qc̄/2U for pitch and pb/2U, rb/2U for roll and yaw. Axes of
 * the aircraft; lift up, side force to the right, roll right wing down, pitch nose up, yaw nose right. What a lattice gives
 * for small incidence: no body, no drag of sections, and yaw due to roll without what the
 * vortices do to each other, so that it is a rough figure.
 *
 * @param incidence about which they are taken, rad
 * @param lift coefficient there
 * @param pitch moment coefficient there
 * @param by derivatives with respect to each motion; {@link Motion#AHEAD} has none
 */
public record Derivatives(double incidence, double lift, double pitch, Map<Motion, Slopes> by) {
    public Derivatives {
        by = Map.copyOf(by);
    }

    /** How the coefficients change with one motion. */
    public record Slopes(double lift, double side, double roll, double pitch, double yaw) {}

    /** Of a lattice whose aircraft turns about the reference's centre. */
    public static Derivatives of(Lattice lattice, Reference reference, double incidence) {
        var straight = lattice.load(Motion.AHEAD, Motion.AHEAD)
                .plus(lattice.load(Motion.INCIDENCE, Motion.AHEAD).times(incidence));
        var state = slopes(straight, reference, 1);
        var by = new EnumMap<Motion, Slopes>(Motion.class);
        for (var motion : Motion.values()) {
            if (motion != Motion.AHEAD) {
                by.put(motion, slopes(change(lattice, motion, incidence), reference, unit(motion, reference)));
            }
        }
        return new Derivatives(incidence, state.lift(), state.pitch(), by);
    }

    /** Derivatives with respect to one motion. */
    public Slopes by(Motion motion) {
        return by.get(motion);
    }

    /** The products of circulation and air that are of first order in the motion. */
    private static Load change(Lattice lattice, Motion motion, double incidence) {
        return lattice.load(motion, Motion.AHEAD)
                .plus(lattice.load(Motion.AHEAD, motion))
                .plus(lattice.load(motion, Motion.INCIDENCE)
                        .plus(lattice.load(Motion.INCIDENCE, motion))
                        .times(incidence));
    }

    private static double unit(Motion motion, Reference reference) {
        return switch (motion) {
            case PITCH -> 2 / reference.chord();
            case ROLL, YAW -> 2 / reference.span();
            default -> 1;
        };
    }

    private static Slopes slopes(Load load, Reference reference, double unit) {
        double force = 2 * unit / reference.area();
        var moment = load.momentAbout(reference.centre());
        return new Slopes(
                force * load.force().z(),
                force * load.force().y(),
                -force * moment.x() / reference.span(),
                force * moment.y() / reference.chord(),
                -force * moment.z() / reference.span());
    }
}
