package planewright.shared.planform;

import planewright.api.journal.Planform;
import planewright.api.journal.Planform.Role;

/** What a surface is in its shape, told from where it lies and how it stands. */
public enum SurfaceKind {
    /** Carries the aircraft. */
    WING(Role.AILERON),
    /** Behind the wing. */
    TAIL(Role.ELEVATOR),
    /** Ahead of the wing. */
    CANARD(Role.ELEVATOR),
    /** Neither flat nor upright, behind the wing. */
    V_TAIL(Role.RUDDERVATOR),
    /** Upright. */
    FIN(Role.RUDDER);

    /** A surface of which less than this share is seen from above is a fin. */
    private static final double UPRIGHT = 0.35;

    /** One of which more than this share is seen is flat. */
    private static final double FLAT = 0.94;

    private final Role usual;

    SurfaceKind(Role usual) {
        this.usual = usual;
    }

    /** What mostly turns on such a surface. */
    public Role usual() {
        return usual;
    }

    public static SurfaceKind of(Planform planform, int number) {
        var surface = planform.surfaces().get(number);
        double along = surface.panels().stream()
                .mapToDouble(panel -> panel.span() * (panel.rootChord() + panel.tipChord()) / 2)
                .sum();
        double seen = Outlines.projectedArea(surface) / (surface.mirrored() ? 2 : 1);
        if (!(seen >= UPRIGHT * along)) {
            return FIN;
        }
        var wings = SurfaceGeometry.wings(planform);
        if (wings.contains(surface)) {
            return WING;
        }
        boolean ahead = surface.x() < wings.get(0).x();
        if (ahead) {
            return CANARD;
        }
        return seen < FLAT * along ? V_TAIL : TAIL;
    }
}
