package planewright.shared.lattice;

import java.util.EnumMap;
import java.util.Map;

/**
 * Coefficients and their derivatives, angles in radians, rates as qc̄/2U for pitch and pb/2U, rb/2U for roll and yaw. Axes
 * of stability: x along the stream, so that roll and yaw turn about it and square to it; lift up, side force to the right,
 * roll right wing down, pitch nose up, yaw nose right. What a lattice gives for small incidence: no body, no drag of
 * sections; the drag that the vortices cause each other acts on each strip as the wake far behind tells.
 *
 * @param lattice whose aircraft turns about the reference's centre
 * @param reference what coefficients are made with
 * @param straight the vortices straight ahead at no incidence: twist, settings, camber
 * @param incidence about which they are taken, rad
 * @param lift coefficient there
 * @param pitch moment coefficient there
 * @param by derivatives with respect to each motion; {@link Motion#AHEAD} has none
 */
public record Derivatives(
        Lattice lattice,
        Reference reference,
        Flow straight,
        double incidence,
        double lift,
        double pitch,
        Map<Motion, Slopes> by) {
    public Derivatives {
        by = Map.copyOf(by);
    }

    /** How the coefficients change with one motion, or with a part that turns. */
    public record Slopes(double lift, double side, double roll, double pitch, double yaw) {
        private static final Slopes NONE = new Slopes(0, 0, 0, 0, 0);

        /** With so many times another's added. */
        public Slopes plus(Slopes other, double times) {
            return new Slopes(
                    lift + times * other.lift,
                    side + times * other.side,
                    roll + times * other.roll,
                    pitch + times * other.pitch,
                    yaw + times * other.yaw);
        }

        /** Moments about axes turned nose down by an angle. */
        private Slopes inAxesOfStability(double incidence) {
            return new Slopes(lift, side, roll + incidence * yaw, pitch, yaw - incidence * roll);
        }
    }

    /** Of a lattice whose twist alone makes lift without incidence. */
    public static Derivatives of(Lattice lattice, Reference reference, double incidence) {
        return of(lattice, reference, lattice.flow(Motion.AHEAD), incidence);
    }

    /** Of a lattice with given vortices straight ahead. */
    public static Derivatives of(Lattice lattice, Reference reference, Flow straight, double incidence) {
        var state = slopes(
                lattice.load(straight, Motion.AHEAD)
                        .plus(lattice.load(Motion.INCIDENCE, Motion.AHEAD).times(incidence)),
                reference);
        var body = new EnumMap<Motion, Slopes>(Motion.class);
        var bare = new Derivatives(lattice, reference, straight, incidence, state.lift(), state.pitch(), Map.of());
        for (var motion : Motion.values()) {
            if (motion != Motion.AHEAD) {
                body.put(motion, Slopes.NONE.plus(bare.change(motion), unit(motion, reference)));
            }
        }
        var by = new EnumMap<Motion, Slopes>(Motion.class);
        body.forEach((motion, slopes) -> by.put(
                motion,
                (switch (motion) {
                            case ROLL -> slopes.plus(body.get(Motion.YAW), incidence);
                            case YAW -> slopes.plus(body.get(Motion.ROLL), -incidence);
                            default -> slopes;
                        })
                        .inAxesOfStability(incidence)));
        return new Derivatives(lattice, reference, straight, incidence, state.lift(), state.pitch(), by);
    }

    /** Derivatives with respect to one motion. */
    public Slopes by(Motion motion) {
        return by.get(motion);
    }

    /** Derivatives with respect to a part that turns, per radian. */
    public Slopes by(Turn turn) {
        var flow = lattice.flow(turn);
        var load = lattice.load(flow, Motion.AHEAD)
                .plus(lattice.load(flow, Motion.INCIDENCE).times(incidence));
        return slopes(load, reference).plus(induced(flow), 1).inAxesOfStability(incidence);
    }

    /** The products of circulation and air that are of first order in the motion, per its own unit. */
    private Slopes change(Motion motion) {
        var flow = lattice.flow(motion);
        var load = lattice.load(flow, Motion.AHEAD)
                .plus(lattice.load(straight, motion))
                .plus(lattice.load(flow, Motion.INCIDENCE)
                        .plus(lattice.load(Motion.INCIDENCE, motion))
                        .times(incidence));
        return slopes(load, reference).plus(induced(flow), 1);
    }

    /** What the drag of the vortices on each other adds to yaw. */
    private Slopes induced(Flow flow) {
        double yaw = Trefftz.yaw(lattice, straight, flow)
                + incidence * Trefftz.yaw(lattice, lattice.flow(Motion.INCIDENCE), flow);
        return new Slopes(0, 0, 0, 0, 2 * yaw / (reference.area() * reference.span()));
    }

    private static double unit(Motion motion, Reference reference) {
        return switch (motion) {
            case PITCH -> 2 / reference.chord();
            case ROLL, YAW -> 2 / reference.span();
            default -> 1;
        };
    }

    private static Slopes slopes(Load load, Reference reference) {
        double force = 2 / reference.area();
        var moment = load.momentAbout(reference.centre());
        return new Slopes(
                force * load.force().z(),
                force * load.force().y(),
                -force * moment.x() / reference.span(),
                force * moment.y() / reference.chord(),
                -force * moment.z() / reference.span());
    }
}
