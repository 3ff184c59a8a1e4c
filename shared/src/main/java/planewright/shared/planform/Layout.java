package planewright.shared.planform;

import java.util.List;
import planewright.api.journal.Planform;
import planewright.api.journal.Planform.Control;
import planewright.api.journal.Planform.Panel;
import planewright.api.journal.Planform.Role;
import planewright.api.journal.Planform.Surface;

/**
 * Layouts that a shape can begin from: wing, tail and fin in usual proportions to its span and root chord. The proportions are
 * common practice, no source: a tail of about a fifth of the wing's area two and a half chords behind it, control surfaces of
 * a quarter of the chord.
 */
public enum Layout {
    /** A straight wing with tail and fin. */
    CONVENTIONAL("conventional") {
        @Override
        List<Surface> surfaces(double half, double chord) {
            return List.of(
                    wing(0, 0, half, chord, 0.8, 0, 3, 0, aileron(0.55)),
                    tail(3.4 * chord, 0.32 * half, 0.62 * chord),
                    fin(3.3 * chord, 0, 0.85 * chord));
        }
    },
    /** Without a tail, its wing swept back and washed out. */
    SWEPT_FLYING_WING("tailless with elevons") {
        @Override
        List<Surface> surfaces(double half, double chord) {
            return List.of(
                    wing(0, 0, half, chord, 0.6, 26, 1, -2.5, elevon(0.3)),
                    fin(0.75 * chord, 0.2 * chord, 0.45 * chord));
        }
    },
    /** Without a tail, its wing straight. */
    STRAIGHT_FLYING_WING("tailless with elevons") {
        @Override
        List<Surface> surfaces(double half, double chord) {
            return List.of(
                    wing(0, 0, half, chord, 0.85, 3, 2, 0, elevon(0.15)), fin(0.7 * chord, 0.1 * chord, 0.6 * chord));
        }
    },
    DELTA("delta") {
        @Override
        List<Surface> surfaces(double half, double chord) {
            double sweep = Math.toDegrees(Math.atan2(0.85 * chord, half));
            return List.of(
                    wing(0, 0, half, chord, 0.15, sweep, 0, 0, elevon(0.1)),
                    fin(0.68 * chord, 0.02 * chord, 0.32 * chord));
        }
    },
    /** The smaller surface ahead. */
    CANARD("canard") {
        @Override
        List<Surface> surfaces(double half, double chord) {
            var canard = new Surface(
                    "canard",
                    -1.9 * chord,
                    0,
                    0.1 * chord,
                    true,
                    List.of(panel(0.55 * chord, 0.45 * chord, 0.4 * half, 4, 0, 0)),
                    List.of(control("elevator", Role.ELEVATOR, 0.05, 1, 0.7)));
            return List.of(
                    wing(0, 0, half, chord, 0.65, 18, 2, -1, aileron(0.55)),
                    canard,
                    fin(0.8 * chord, 0.1 * chord, 0.6 * chord));
        }
    },
    V_TAIL("V-tail") {
        @Override
        List<Surface> surfaces(double half, double chord) {
            var tail = new Surface(
                    "V-tail",
                    3.6 * chord,
                    0,
                    0.1 * chord,
                    true,
                    List.of(panel(0.66 * chord, 0.45 * chord, 0.4 * half, 9, 38, 0)),
                    List.of(control("ruddervators", Role.RUDDERVATOR, 0, 1, 0.6)));
            return List.of(wing(0, 0, half, chord, 0.65, 2, 4, -1, aileron(0.5)), tail);
        }
    },
    BIPLANE("biplane") {
        @Override
        List<Surface> surfaces(double half, double chord) {
            var upper = wing(0, 0.5 * chord, half, chord, 0.95, 0, 0, 0, List.of());
            var lower = wing(0.3 * chord, -0.5 * chord, 0.92 * half, 0.92 * chord, 0.95, 0, 2, 0, aileron(0.45));
            return List.of(
                    Shaping.named(upper, "upper wing"),
                    Shaping.named(lower, "lower wing"),
                    tail(3.3 * chord, 0.42 * half, 0.8 * chord),
                    fin(3.3 * chord, 0.1 * chord, 0.85 * chord));
        }
    };

    private final String word;

    Layout(String word) {
        this.word = word;
    }

    /** What a build of it is called: {@code tailless with elevons}. */
    public String word() {
        return word;
    }

    /**
     * A shape of this layout, the leading edge of its wing's root at the datum.
     *
     * @param span from tip to tip, above 0 m
     * @param rootChord of the wing, above 0 m
     * @throws IllegalArgumentException for a span or chord that is not above 0
     */
    public Planform shape(double span, double rootChord) {
        if (!(span > 0 && rootChord > 0)) {
            throw new IllegalArgumentException(
                    "span is " + span + " m and root chord " + rootChord + " m; accepted: above 0 m each");
        }
        return new Planform(surfaces(span / 2, rootChord), List.of());
    }

    abstract List<Surface> surfaces(double half, double chord);

    private static Surface wing(
            double x,
            double z,
            double half,
            double chord,
            double taper,
            double sweep,
            double dihedral,
            double twist,
            List<Control> controls) {
        double along = half / Math.cos(Math.toRadians(dihedral));
        return new Surface(
                "wing", x, 0, z, true, List.of(panel(chord, taper * chord, along, sweep, dihedral, twist)), controls);
    }

    private static Surface tail(double x, double half, double chord) {
        return new Surface(
                "tail",
                x,
                0,
                0,
                true,
                List.of(panel(chord, 0.75 * chord, half, 8, 0, 0)),
                List.of(control("elevator", Role.ELEVATOR, 0, 1, 0.62)));
    }

    private static Surface fin(double x, double z, double chord) {
        return new Surface(
                "fin",
                x,
                0,
                z,
                false,
                List.of(panel(chord, 0.6 * chord, chord, 25, 90, 0)),
                List.of(control("rudder", Role.RUDDER, 0, 1, 0.6)));
    }

    private static List<Control> aileron(double from) {
        return List.of(control("ailerons", Role.AILERON, from, 0.96, 0.75));
    }

    private static List<Control> elevon(double from) {
        return List.of(control("elevons", Role.ELEVON, from, 0.96, 0.75));
    }

    private static Control control(String name, Role role, double from, double to, double hinge) {
        return new Control(name, role, from, to, hinge, hinge);
    }

    private static Panel panel(double root, double tip, double span, double sweep, double dihedral, double twist) {
        return new Panel(root, tip, span, Math.toRadians(sweep), Math.toRadians(dihedral), Math.toRadians(twist));
    }
}
