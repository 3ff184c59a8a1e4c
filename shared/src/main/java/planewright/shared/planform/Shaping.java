package planewright.shared.planform;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import planewright.api.journal.Planform;
import planewright.api.journal.Planform.Control;
import planewright.api.journal.Planform.Panel;
import planewright.api.journal.Planform.Surface;

/**
 * Changes of a shape, each giving a new one. A surface is seen as sections from root to tip, where panels meet; changing one
 * leaves all others where they are, except that the root carries the whole surface with it.
 */
public final class Shaping {
    /** The shortest panel that a change leaves, m. */
    public static final double SHORTEST = 1e-3;

    private Shaping() {}

    /**
     * Where panels meet, or a surface begins or ends.
     *
     * @param along from the root along the panels, m
     * @param edge its leading edge
     * @param chord of the panel that ends here; of the first one at the root, m
     * @param dihedral of the panel that ends here; of the first one at the root, rad
     * @param twist against the root, leading edge up positive, rad
     */
    public record Station(double along, Place edge, double chord, double dihedral, double twist) {}

    /** From root to tip. */
    public static List<Station> stations(Surface surface) {
        var edge = SurfaceGeometry.leadingEdge(surface);
        var first = surface.panels().get(0);
        var stations = new ArrayList<Station>();
        stations.add(new Station(0, edge.get(0), first.rootChord(), first.dihedral(), 0));
        double along = 0;
        double twist = 0;
        for (int i = 0; i < surface.panels().size(); i++) {
            var panel = surface.panels().get(i);
            along += panel.span();
            twist += panel.twist();
            stations.add(new Station(along, edge.get(i + 1), panel.tipChord(), panel.dihedral(), twist));
        }
        return List.copyOf(stations);
    }

    /**
     * A place on a surface.
     *
     * @param along share of the way along its panels, 0 at the root, 1 at the tip
     * @param chord share of the chord there, 0 at the leading edge
     */
    public static Place place(Surface surface, double along, double chord) {
        var stations = stations(surface);
        double wanted = along * stations.get(stations.size() - 1).along();
        int i = 0;
        while (i + 2 < stations.size() && stations.get(i + 1).along() < wanted) {
            i++;
        }
        var inner = stations.get(i);
        var outer = stations.get(i + 1);
        double share = (wanted - inner.along()) / (outer.along() - inner.along());
        var panel = surface.panels().get(i);
        double length = between(panel.rootChord(), panel.tipChord(), share);
        return new Place(
                between(inner.edge().x(), outer.edge().x(), share) + chord * length,
                between(inner.edge().y(), outer.edge().y(), share),
                between(inner.edge().z(), outer.edge().z(), share));
    }

    private static double between(double inner, double outer, double share) {
        return inner + share * (outer - inner);
    }

    /** A section moved along the panels; no nearer to its neighbours than {@link #SHORTEST}. The root stays. */
    public static Surface along(Surface surface, int section, double along) {
        var stations = stations(surface);
        if (section == 0) {
            return surface;
        }
        double least = stations.get(section - 1).along() + SHORTEST;
        double most = section + 1 < stations.size() ? stations.get(section + 1).along() - SHORTEST : Double.MAX_VALUE;
        double place = Math.max(least, Math.min(most, along));
        double[] alongs = stations.stream().mapToDouble(Station::along).toArray();
        alongs[section] = place;
        return laid(
                surface,
                stations.stream().mapToDouble(station -> station.edge().x()).toArray(),
                alongs);
    }

    /** The leading edge of a section at another station; that of the root moves the whole surface. */
    public static Surface edge(Surface surface, int section, double x) {
        if (section == 0) {
            return at(surface, x, surface.y(), surface.z());
        }
        var stations = stations(surface);
        double[] edges =
                stations.stream().mapToDouble(station -> station.edge().x()).toArray();
        edges[section] = x;
        return laid(
                surface, edges, stations.stream().mapToDouble(Station::along).toArray());
    }

    /** Another chord; where a chord jumps, the jump stays as far as it leaves a chord. */
    public static Surface chord(Surface surface, int section, double chord) {
        var panels = new ArrayList<>(surface.panels());
        double change = chord - stations(surface).get(section).chord();
        if (section > 0) {
            panels.set(section - 1, chords(panels.get(section - 1), inner -> inner, outer -> chord));
        }
        if (section < panels.size()) {
            panels.set(section, chords(panels.get(section), inner -> Math.max(0, inner + change), outer -> outer));
        }
        return with(surface, panels);
    }

    /** Another dihedral of the panel that ends at a section, of the first one for the root; what is further out comes along. */
    public static Surface dihedral(Surface surface, int section, double dihedral) {
        int which = Math.max(0, section - 1);
        var panel = surface.panels().get(which);
        return with(
                surface,
                replaced(
                        surface.panels(),
                        which,
                        new Panel(
                                panel.rootChord(),
                                panel.tipChord(),
                                panel.span(),
                                panel.sweep(),
                                dihedral,
                                panel.twist())));
    }

    /** Another twist against the root, which itself has none. */
    public static Surface twist(Surface surface, int section, double twist) {
        if (section == 0) {
            return surface;
        }
        double change = twist - stations(surface).get(section).twist();
        var panels = new ArrayList<>(surface.panels());
        panels.set(section - 1, twisted(panels.get(section - 1), change));
        if (section < panels.size()) {
            panels.set(section, twisted(panels.get(section), -change));
        }
        return with(surface, panels);
    }

    /** One more section, in the middle of the panel that begins at a section; behind the tip for the last one. */
    public static Surface split(Surface surface, int section) {
        var panels = new ArrayList<>(surface.panels());
        if (section >= panels.size()) {
            var last = panels.get(panels.size() - 1);
            panels.add(new Panel(last.tipChord(), last.tipChord(), last.span() / 4, last.sweep(), last.dihedral(), 0));
            return with(surface, panels);
        }
        var whole = panels.get(section);
        double middle = (whole.rootChord() + whole.tipChord()) / 2;
        panels.set(section, half(whole, whole.rootChord(), middle));
        panels.add(section + 1, half(whole, middle, whole.tipChord()));
        return with(surface, panels);
    }

    /** Without a section: its neighbours are joined; the tip goes with its panel. The root, and the last panel, stay. */
    public static Surface without(Surface surface, int section) {
        var panels = new ArrayList<>(surface.panels());
        if (section == 0 || panels.size() == 1) {
            return surface;
        }
        var inner = panels.remove(section - 1);
        if (section - 1 < panels.size()) {
            var outer = panels.get(section - 1);
            double span = inner.span() + outer.span();
            double back = inner.span() * Math.tan(inner.sweep()) + outer.span() * Math.tan(outer.sweep());
            panels.set(
                    section - 1,
                    new Panel(
                            inner.rootChord(),
                            outer.tipChord(),
                            span,
                            Math.atan(back / span),
                            outer.dihedral(),
                            inner.twist() + outer.twist()));
        }
        return with(surface, panels);
    }

    /** Its root's leading edge elsewhere, m. */
    public static Surface at(Surface surface, double x, double y, double z) {
        return new Surface(surface.name(), x, y, z, surface.mirrored(), surface.panels(), surface.controls());
    }

    public static Surface named(Surface surface, String name) {
        return new Surface(
                name, surface.x(), surface.y(), surface.z(), surface.mirrored(), surface.panels(), surface.controls());
    }

    public static Surface mirrored(Surface surface, boolean mirrored) {
        return new Surface(
                surface.name(), surface.x(), surface.y(), surface.z(), mirrored, surface.panels(), surface.controls());
    }

    public static Surface controls(Surface surface, List<Control> controls) {
        return new Surface(
                surface.name(), surface.x(), surface.y(), surface.z(), surface.mirrored(), surface.panels(), controls);
    }

    /** A shape with one of its surfaces changed. */
    public static Planform surface(Planform planform, int number, Surface changed) {
        return new Planform(replaced(planform.surfaces(), number, changed), planform.bodies());
    }

    /** A surface to begin from: half as large as the first one, a chord behind all of them. */
    public static Surface beside(Planform planform, String name) {
        var first = planform.surfaces().get(0).panels().get(0);
        double chord = Math.max(SHORTEST, first.rootChord() / 2);
        double behind = planform.surfaces().stream()
                .flatMap(surface -> stations(surface).stream())
                .mapToDouble(station -> station.edge().x() + station.chord())
                .max()
                .orElse(0);
        return new Surface(
                name, behind + chord, 0, 0, true, List.of(new Panel(chord, 0.8 * chord, first.span() / 2, 0, 0, 0)));
    }

    /** A list with one of its elements replaced. */
    public static <T> List<T> replaced(List<T> list, int number, T instead) {
        return IntStream.range(0, list.size())
                .mapToObj(i -> i == number ? instead : list.get(i))
                .toList();
    }

    private static Surface with(Surface surface, List<Panel> panels) {
        return new Surface(
                surface.name(), surface.x(), surface.y(), surface.z(), surface.mirrored(), panels, surface.controls());
    }

    /** Spans and sweeps so that the sections lie where they are wanted. */
    private static Surface laid(Surface surface, double[] edges, double[] alongs) {
        return with(
                surface,
                IntStream.range(0, surface.panels().size())
                        .mapToObj(i -> {
                            var panel = surface.panels().get(i);
                            double span = alongs[i + 1] - alongs[i];
                            return new Panel(
                                    panel.rootChord(),
                                    panel.tipChord(),
                                    span,
                                    Math.atan2(edges[i + 1] - edges[i], span),
                                    panel.dihedral(),
                                    panel.twist());
                        })
                        .toList());
    }

    private static Panel chords(Panel panel, DoubleUnaryOperator root, DoubleUnaryOperator tip) {
        return new Panel(
                root.applyAsDouble(panel.rootChord()),
                tip.applyAsDouble(panel.tipChord()),
                panel.span(),
                panel.sweep(),
                panel.dihedral(),
                panel.twist());
    }

    private static Panel twisted(Panel panel, double change) {
        return new Panel(
                panel.rootChord(),
                panel.tipChord(),
                panel.span(),
                panel.sweep(),
                panel.dihedral(),
                panel.twist() + change);
    }

    private static Panel half(Panel whole, double root, double tip) {
        return new Panel(root, tip, whole.span() / 2, whole.sweep(), whole.dihedral(), whole.twist() / 2);
    }
}
