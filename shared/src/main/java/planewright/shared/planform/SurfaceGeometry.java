package planewright.shared.planform;

import java.util.ArrayList;
import java.util.List;
import planewright.api.journal.Planform;
import planewright.api.journal.Planform.Panel;
import planewright.api.journal.Planform.Surface;

/**
 * Exact measures of one or several surfaces made of straight-edged panels. Mean aerodynamic chord c̄ = ∫c²ds / S, its leading
 * edge at x = ∫c·x_LE ds / S and y = ∫c·y ds / S; for a single trapezoid these are the formulas of D. P. Raymer, Aircraft
 * Design: A Conceptual Approach, 6th edition, figure 4.17. What s is the {@link View} says. With several panels the chord at
 * that y is not c̄.
 *
 * @param area of both sides where mirrored, m²
 * @param span from tip to tip as the view has it, m; of one side where a mirrored surface starts beside the centre line and
 *     is not seen from above
 * @param meanChord mean aerodynamic chord, m
 * @param leadingEdge of the mean aerodynamic chord; on the right side where mirrored
 * @param centroid of the area; on the right side where mirrored
 */
public record SurfaceGeometry(double area, double span, double meanChord, Place leadingEdge, Place centroid) {
    /** How a panel's own span counts. */
    public enum View {
        /** In full, as the panel is built. */
        ALONG,
        /** As seen from above: a wing's usual reference area, lift of a tail in V. */
        ABOVE,
        /** As seen from the side: the height of a fin. */
        SIDE;

        double of(Panel panel) {
            return panel.span()
                    * switch (this) {
                        case ALONG -> 1;
                        case ABOVE -> Math.abs(Math.cos(panel.dihedral()));
                        case SIDE -> Math.abs(Math.sin(panel.dihedral()));
                    };
        }
    }

    /** Measures of one surface. */
    public static SurfaceGeometry of(Surface surface, View view) {
        return of(List.of(surface), view);
    }

    /**
     * Measures of surfaces taken together, such as both wings of a biplane; the span is the widest one's.
     *
     * @throws IllegalArgumentException where their area is not above 0
     */
    public static SurfaceGeometry of(List<Surface> surfaces, View view) {
        var sums = new Sums();
        surfaces.forEach(surface -> sums.add(surface, view));
        if (!(sums.area > 0)) {
            throw new IllegalArgumentException("area is " + sums.area + " m²; accepted: above 0 m²");
        }
        return new SurfaceGeometry(
                sums.area,
                surfaces.stream()
                        .mapToDouble(surface -> span(surface, view))
                        .max()
                        .orElse(0),
                sums.square / sums.area,
                new Place(sums.x / sums.area, sums.y / sums.area, sums.z / sums.area),
                new Place(sums.x / sums.area + sums.square / sums.area / 2, sums.y / sums.area, sums.z / sums.area));
    }

    /** Span² / area. */
    public double aspectRatio() {
        return span * span / area;
    }

    /** Station of the quarter point of the mean aerodynamic chord, m. */
    public double quarterChord() {
        return leadingEdge.x() + meanChord / 4;
    }

    /** Tip chord over root chord; 0 where the root has no chord. */
    public static double taper(Surface surface) {
        var panels = surface.panels();
        double root = panels.get(0).rootChord();
        return root > 0 ? panels.get(panels.size() - 1).tipChord() / root : 0;
    }

    /** The leading edge of each panel's inner end, and of the tip last, on the right side. */
    public static List<Place> leadingEdge(Surface surface) {
        var places = new ArrayList<Place>();
        var at = new Place(surface.x(), surface.y(), surface.z());
        places.add(at);
        for (var panel : surface.panels()) {
            at = new Place(
                    at.x() + panel.span() * Math.tan(panel.sweep()),
                    at.y() + panel.span() * Math.cos(panel.dihedral()),
                    at.z() + panel.span() * Math.sin(panel.dihedral()));
            places.add(at);
        }
        return List.copyOf(places);
    }

    /** Surfaces that carry the aircraft: the largest as seen from above, and those with at least half its area. */
    public static List<Surface> wings(Planform planform) {
        double largest = planform.surfaces().stream()
                .mapToDouble(Outlines::projectedArea)
                .max()
                .orElse(0);
        return planform.surfaces().stream()
                .filter(surface -> Outlines.projectedArea(surface) >= largest / 2)
                .toList();
    }

    private static double span(Surface surface, View view) {
        var edge = leadingEdge(surface);
        if (view == View.ABOVE && surface.mirrored()) {
            return 2
                    * edge.stream()
                            .mapToDouble(place -> Math.abs(place.y()))
                            .max()
                            .orElse(0);
        }
        double side = surface.panels().stream().mapToDouble(view::of).sum();
        return view == View.ALONG && surface.mirrored() && surface.y() == 0 ? 2 * side : side;
    }

    /** Integrals over the panels: of c, c², c·x_LE, c·y and c·z. */
    private static final class Sums {
        private double area;
        private double square;
        private double x;
        private double y;
        private double z;

        void add(Surface surface, View view) {
            var edge = leadingEdge(surface);
            for (int i = 0; i < surface.panels().size(); i++) {
                var panel = surface.panels().get(i);
                add(panel, edge.get(i), edge.get(i + 1), view.of(panel) * (surface.mirrored() ? 2 : 1));
            }
        }

        private void add(Panel panel, Place inner, Place outer, double width) {
            double root = panel.rootChord();
            double tip = panel.tipChord();
            area += width * (root + tip) / 2;
            square += width * (root * root + root * tip + tip * tip) / 3;
            x += width * weighted(root, tip, inner.x(), outer.x());
            y += width * weighted(root, tip, inner.y(), outer.y());
            z += width * weighted(root, tip, inner.z(), outer.z());
        }

        /** ∫ of the chord times a coordinate, both linear, over a unit width. */
        private static double weighted(double root, double tip, double inner, double outer) {
            return (2 * root * inner + root * outer + tip * inner + 2 * tip * outer) / 6;
        }
    }
}
