package planewright.api.journal;

import java.util.List;
import java.util.Locale;
import org.apiguardian.api.API;

/**
 * The shape of an aircraft: lifting surfaces and bodies. Lengths are metres and angles radians; x is aft of the datum, y
 * to the right wing, z up.
 *
 * @param surfaces wings, tails, canards, fins
 * @param bodies fuselages, pods, booms
 */
@API(status = API.Status.MAINTAINED, since = "0.1.0")
public record Planform(List<Surface> surfaces, List<Body> bodies) {
    public Planform {
        surfaces = List.copyOf(surfaces);
        bodies = List.copyOf(bodies);
    }

    /**
     * A lifting surface, built outwards from its root.
     *
     * @param name what the builder calls it: {@code wing}, {@code fin}
     * @param x station of its root's leading edge, m
     * @param y station of its root's leading edge, m
     * @param z station of its root's leading edge, m
     * @param mirrored whether the other side carries the same
     * @param panels from the root outwards, at least one
     * @param controls what turns about a hinge on it
     */
    public record Surface(
            String name, double x, double y, double z, boolean mirrored, List<Panel> panels, List<Control> controls) {
        public Surface {
            panels = List.copyOf(panels);
            controls = List.copyOf(controls);
            if (panels.isEmpty()) {
                throw new IllegalArgumentException("surface '" + name + "' has no panels; accepted: 1 or more");
            }
        }

        /**
         * A surface on which nothing turns, or of which that is not known.
         *
         * @param name what the builder calls it
         * @param x station of its root's leading edge, m
         * @param y station of its root's leading edge, m
         * @param z station of its root's leading edge, m
         * @param mirrored whether the other side carries the same
         * @param panels from the root outwards, at least one
         */
        public Surface(String name, double x, double y, double z, boolean mirrored, List<Panel> panels) {
            this(name, x, y, z, mirrored, panels, List.of());
        }
    }

    /**
     * A control surface: a part of a surface that turns about a hinge.
     *
     * @param name what the builder calls it: {@code elevon}, {@code rudder}
     * @param role what it does
     * @param from where it begins, as a share of the way along the surface's panels from root to tip, 0 to 1
     * @param to where it ends
     * @param hinge where its hinge lies at the begin, as a share of the chord from the leading edge; 0 where all of it turns
     * @param hingeTo where it lies at the end
     */
    public record Control(String name, Role role, double from, double to, double hinge, double hingeTo) {
        public Control {
            if (!(from >= 0 && from < to && to <= 1) || !(hinge >= 0 && hinge < 1 && hingeTo >= 0 && hingeTo < 1)) {
                throw new IllegalArgumentException("control surface '" + name + "' runs from " + from + " to " + to
                        + " with its hinge at " + hinge + " and " + hingeTo
                        + "; accepted: from before to, both 0 to 1, and hinges of 0 or more and less than 1");
            }
        }
    }

    /** What a control surface does. */
    public enum Role {
        /** Both sides alike: pitches. */
        ELEVATOR,
        /** Opposite ways: rolls. */
        AILERON,
        /** Elevator and aileron in one. */
        ELEVON,
        /** Of a fin: yaws. */
        RUDDER,
        /** Elevator and rudder in one, of a tail in V. */
        RUDDERVATOR,
        /** Both sides alike, for lift. */
        FLAP;

        /** {@return as people write it: {@code elevon}} */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * A straight-edged piece of a surface.
     *
     * @param rootChord chord at its inner end, m
     * @param tipChord chord at its outer end, m
     * @param span along the panel, m
     * @param sweep of the leading edge, aft positive, rad
     * @param dihedral up positive, rad; a fin has π/2
     * @param twist of the outer end against the inner, leading edge up positive, rad
     */
    public record Panel(double rootChord, double tipChord, double span, double sweep, double dihedral, double twist) {
        public Panel {
            if (!(span > 0) || !(rootChord >= 0) || !(tipChord >= 0)) {
                throw new IllegalArgumentException("a panel has span " + span + " m and chords " + rootChord + " m and "
                        + tipChord + " m; accepted: a span above 0 m and chords of 0 m or more");
            }
        }
    }

    /**
     * A fuselage, pod or boom as sections from nose to tail.
     *
     * @param name what the builder calls it
     * @param y station of its middle, m
     * @param sections from nose to tail, at least two
     */
    public record Body(String name, double y, List<Section> sections) {
        public Body {
            sections = List.copyOf(sections);
            if (sections.size() < 2) {
                throw new IllegalArgumentException(
                        "body '" + name + "' has " + sections.size() + " sections; accepted: 2 or more");
            }
        }
    }

    /**
     * A section of a body.
     *
     * @param x station, m
     * @param width across, m
     * @param top station z of its upper edge, m
     * @param bottom station z of its lower edge, m
     */
    public record Section(double x, double width, double top, double bottom) {}
}
