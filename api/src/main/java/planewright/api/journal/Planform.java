package planewright.api.journal;

import java.util.List;
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
     */
    public record Surface(String name, double x, double y, double z, boolean mirrored, List<Panel> panels) {
        public Surface {
            panels = List.copyOf(panels);
            if (panels.isEmpty()) {
                throw new IllegalArgumentException("surface '" + name + "' has no panels; accepted: 1 or more");
            }
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
