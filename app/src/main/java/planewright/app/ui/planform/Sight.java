package planewright.app.ui.planform;

import planewright.api.journal.Planform.Panel;
import planewright.api.journal.Planform.Surface;
import planewright.shared.planform.Place;
import planewright.shared.planform.SurfaceGeometry;

/** From where a shape is seen. Its nose points up in either drawing, so that stations aft of the datum lie below. */
public enum Sight {
    /** The right wing to the right. */
    ABOVE {
        @Override
        public double across(Place place) {
            return place.y();
        }

        @Override
        double share(Panel panel) {
            return Math.cos(panel.dihedral());
        }
    },
    /** What is higher to the right. */
    SIDE {
        @Override
        public double across(Place place) {
            return place.z();
        }

        @Override
        double share(Panel panel) {
            return Math.sin(panel.dihedral());
        }
    };

    /** A panel seen shorter than this share of its span cannot be drawn at. */
    private static final double LEAST_SHARE = 0.05;

    /** Station of a place across the drawing, m. */
    public abstract double across(Place place);

    /** How long a metre of a panel's span is seen, m; below 0 to the left. */
    abstract double share(Panel panel);

    /** From where a surface is seen best. */
    static Sight of(Surface surface) {
        double above = 0;
        double side = 0;
        for (var panel : surface.panels()) {
            above += panel.span() * Math.abs(ABOVE.share(panel));
            side += panel.span() * Math.abs(SIDE.share(panel));
        }
        return side > above ? SIDE : ABOVE;
    }

    /** The place along a surface, from its root, that is seen nearest to a station across; never before its root. */
    double along(Surface surface, double across) {
        var edge = SurfaceGeometry.leadingEdge(surface);
        double begin = 0;
        double best = 0;
        double least = Double.MAX_VALUE;
        for (int i = 0; i < surface.panels().size(); i++) {
            var panel = surface.panels().get(i);
            double share = share(panel);
            if (Math.abs(share) >= LEAST_SHARE) {
                double within = Math.max(0, Math.min(panel.span(), (across - across(edge.get(i))) / share));
                double off = Math.abs(across(edge.get(i)) + within * share - across);
                if (off < least) {
                    least = off;
                    best = begin + within;
                }
            }
            begin += panel.span();
        }
        return best;
    }

    /** The same for the outer end of a panel, which may go beyond it. */
    double alongEnd(Surface surface, int panel, double across) {
        double begin = 0;
        for (int i = 0; i < panel; i++) {
            begin += surface.panels().get(i).span();
        }
        var piece = surface.panels().get(panel);
        double share = share(piece);
        return Math.abs(share) < LEAST_SHARE
                ? begin + piece.span()
                : begin + (across - across(SurfaceGeometry.leadingEdge(surface).get(panel))) / share;
    }
}
