package planewright.shared.lattice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import planewright.api.journal.Planform;
import planewright.api.journal.Planform.Panel;
import planewright.api.journal.Planform.Surface;
import planewright.shared.planform.SurfaceGeometry;
import planewright.shared.planform.SurfaceGeometry.View;

/** Planforms that tests need again and again; lengths in metres. */
final class Shapes {
    private Shapes() {}

    static Planform wing(Panel... panels) {
        return of(surface("wing", 0, 0, panels));
    }

    static Planform of(Surface... surfaces) {
        return new Planform(List.of(surfaces), List.of());
    }

    static Surface surface(String name, double x, double z, Panel... panels) {
        return new Surface(name, x, 0, z, true, List.of(panels));
    }

    static Panel panel(double root, double tip, double span, double sweepDegrees) {
        return new Panel(root, tip, span, Math.toRadians(sweepDegrees), 0, 0);
    }

    /** A flat rectangle of unit chord. */
    static Planform rectangle(double aspectRatio) {
        return wing(panel(1, 1, aspectRatio / 2, 0));
    }

    /** A triangle of unit half span with a straight trailing edge. */
    static Planform delta(double aspectRatio) {
        double root = 4 / aspectRatio;
        return wing(new Panel(root, 0, 1, Math.atan(root), 0, 0));
    }

    /** An ellipse of unit half span about a straight quarter-chord line, in straight panels of even angle. */
    static Planform ellipse(double aspectRatio, int panels) {
        double root = 8 / (Math.PI * aspectRatio);
        var list = new ArrayList<Panel>();
        for (int i = 0; i < panels; i++) {
            double from = Math.PI / 2 * i / panels;
            double to = Math.PI / 2 * (i + 1) / panels;
            double span = Math.sin(to) - Math.sin(from);
            double back = root * (Math.cos(from) - Math.cos(to)) / 4;
            double tip = i + 1 == panels ? 0 : root * Math.cos(to);
            list.add(new Panel(root * Math.cos(from), tip, span, Math.atan2(back, span), 0, 0));
        }
        return wing(list.toArray(Panel[]::new));
    }

    /**
     * Those of the convergence study: plain, swept, delta, with a tail, with a canard and tip fins, with a V-tail, with a tail
     * between fins.
     */
    static Map<String, Planform> study() {
        var shapes = new LinkedHashMap<String, Planform>();
        shapes.put("rectangle of aspect ratio 6", rectangle(6));
        shapes.put("swept 45°, untapered, aspect ratio 5", wing(panel(1, 1, 2.5, 45)));
        shapes.put("delta of aspect ratio 2", delta(2));
        shapes.put(
                "tapered wing with tail",
                of(
                        surface("wing", 0, 0.05, panel(0.23, 0.23, 0.42, 0), panel(0.23, 0.19, 0.29, 2)),
                        surface("tail", 0.7, 0.012, panel(0.17, 0.12, 0.24, 8))));
        shapes.put(
                "swept wing with canard and tip fins",
                of(
                        surface("canard", 0.11, 0.022, panel(0.145, 0.12, 0.27, 4)),
                        surface("wing", 0.56, 0, new Panel(0.255, 0.17, 0.6, Math.toRadians(18), Math.toRadians(2), 0)),
                        new Surface(
                                "tip fins",
                                0.755,
                                0.6,
                                0.021,
                                true,
                                List.of(new Panel(0.17, 0.095, 0.15, Math.toRadians(30), Math.toRadians(82), 0)))));
        shapes.put(
                "long wing with V-tail that crosses its wake",
                of(
                        surface(
                                "wing",
                                0,
                                0.028,
                                panel(0.2, 0.195, 0.5, 0),
                                new Panel(0.195, 0.165, 0.42, Math.toRadians(1.5), Math.toRadians(5), 0),
                                new Panel(0.165, 0.11, 0.29, Math.toRadians(6), Math.toRadians(9), 0)),
                        surface(
                                "V-tail",
                                0.905,
                                0.018,
                                new Panel(0.132, 0.086, 0.3, Math.toRadians(9), Math.toRadians(38), 0))));
        shapes.put(
                "twin booms, the tail ending on the middle of their fins",
                of(
                        surface("wing", 0, 0, new Panel(0.25, 0.18, 0.7, Math.toRadians(5), Math.toRadians(2), 0)),
                        fin("fins", 0.6, 0.22, 0, panel(0.15, 0.1, 0.15, 17)),
                        surface("tail", 0.63, 0.08, panel(0.12, 0.12, 0.22, 0))));
        return shapes;
    }

    /** A pair of upright surfaces. */
    static Surface fin(String name, double x, double y, double z, Panel... lying) {
        return new Surface(
                name,
                x,
                y,
                z,
                true,
                Arrays.stream(lying)
                        .map(panel -> new Panel(
                                panel.rootChord(), panel.tipChord(), panel.span(), panel.sweep(), Math.PI / 2, 0))
                        .toList());
    }

    /** Several panels of the given widths, their leading edges so far aft of each other; chords at all ends. */
    static Planform cranked(double[] widths, double[] aft, double... chords) {
        var panels = new Panel[widths.length];
        for (int i = 0; i < widths.length; i++) {
            panels[i] = new Panel(chords[i], chords[i + 1], widths[i], Math.atan2(aft[i], widths[i]), 0, 0);
        }
        return wing(panels);
    }

    /** The same with the stream from behind. */
    static Planform reversed(Planform planform) {
        return of(planform.surfaces().stream()
                .map(surface -> {
                    double x = -surface.x() - surface.panels().get(0).rootChord();
                    var panels = surface.panels().stream()
                            .map(panel -> new Panel(
                                    panel.rootChord(),
                                    panel.tipChord(),
                                    panel.span(),
                                    Math.atan((panel.rootChord() - panel.tipChord()) / panel.span()
                                            - Math.tan(panel.sweep())),
                                    panel.dihedral(),
                                    panel.twist()))
                            .toList();
                    return new Surface(surface.name(), x, surface.y(), surface.z(), surface.mirrored(), panels);
                })
                .toArray(Surface[]::new));
    }

    /** A true ellipse about its mid-chord line, of unit half span, in straight panels of even angle. */
    static Planform trueEllipse(double aspectRatio, int panels, double twistDegrees) {
        double root = 8 / (Math.PI * aspectRatio);
        var list = new ArrayList<Panel>();
        for (int i = 0; i < panels; i++) {
            double from = Math.PI / 2 * i / panels;
            double to = Math.PI / 2 * (i + 1) / panels;
            double span = Math.sin(to) - Math.sin(from);
            double tip = i + 1 == panels ? 0 : root * Math.cos(to);
            double back = (root * Math.cos(from) - tip) / 2;
            list.add(new Panel(
                    root * Math.cos(from), tip, span, Math.atan2(back, span), 0, Math.toRadians(twistDegrees) * span));
        }
        return wing(list.toArray(Panel[]::new));
    }

    /** A tube of unit radius along the stream, of straight panels. */
    static Planform ring(double chord, int panelsOfAHalf) {
        double turn = Math.PI / panelsOfAHalf;
        var panels = IntStream.range(0, panelsOfAHalf)
                .mapToObj(i -> new Panel(chord, chord, 2 * Math.sin(turn / 2), 0, (i + 0.5) * turn, 0))
                .toList();
        return of(new Surface("ring", 0, 0, -1, true, panels));
    }

    /** Area of all surfaces as seen from above. */
    static double area(Planform planform) {
        return SurfaceGeometry.of(planform.surfaces(), View.ABOVE).area();
    }

    /** Mean chord of the wings. */
    static double chord(Planform planform) {
        return SurfaceGeometry.of(SurfaceGeometry.wings(planform), View.ABOVE).meanChord();
    }

    static double slope(Planform planform, Resolution resolution) {
        return slope(Lattice.of(planform, resolution), area(planform));
    }

    static double slope(Lattice lattice, double area) {
        return 2 * lattice.load(Motion.INCIDENCE, Motion.AHEAD).force().z() / area;
    }

    static double neutralPoint(Lattice lattice) {
        var load = lattice.load(Motion.INCIDENCE, Motion.AHEAD);
        return -load.moment().y() / load.force().z();
    }
}
