package planewright.shared.lattice;

import java.util.ArrayList;
import java.util.List;
import planewright.api.journal.Planform.Panel;
import planewright.api.journal.Planform.Surface;
import planewright.shared.planform.Place;
import planewright.shared.planform.SurfaceGeometry;

/** A panel of a planform where it stands, from one end to the other; the normal points up, or to the left of a fin. */
record Piece(
        int surface,
        Vector inner,
        Vector outer,
        double innerChord,
        double outerChord,
        double turned,
        double twist,
        double alongInner,
        double alongOuter) {
    /** The panels of a surface, its right side where mirrored. */
    static List<Piece> of(Surface surface, int number) {
        var edge = SurfaceGeometry.leadingEdge(surface);
        var pieces = new ArrayList<Piece>();
        double whole = surface.panels().stream().mapToDouble(Panel::span).sum();
        double along = 0;
        double turned = 0;
        for (int i = 0; i < surface.panels().size(); i++) {
            var panel = surface.panels().get(i);
            pieces.add(new Piece(
                    number,
                    vector(edge.get(i)),
                    vector(edge.get(i + 1)),
                    panel.rootChord(),
                    panel.tipChord(),
                    turned,
                    panel.twist(),
                    along / whole,
                    (along + panel.span()) / whole));
            along += panel.span();
            turned += panel.twist();
        }
        return pieces;
    }

    /** The same on the other side, its ends exchanged so that its normal keeps pointing up. */
    Piece mirrored() {
        return new Piece(
                surface,
                outer.mirrored(),
                inner.mirrored(),
                outerChord,
                innerChord,
                turned + twist,
                -twist,
                alongOuter,
                alongInner);
    }

    Piece moved(Vector shift) {
        return new Piece(
                surface,
                inner.plus(shift),
                outer.plus(shift),
                innerChord,
                outerChord,
                turned,
                twist,
                alongInner,
                alongOuter);
    }

    double span() {
        return Math.hypot(outer.y() - inner.y(), outer.z() - inner.z());
    }

    double chord(double share) {
        return innerChord + share * (outerChord - innerChord);
    }

    /** Where along its surface a point lies, from root to tip. */
    double along(double share) {
        return alongInner + share * (alongOuter - alongInner);
    }

    double incidence(double share) {
        return turned + share * twist;
    }

    /** A point of the leading edge; both ends are met exactly. */
    Vector edge(double share) {
        return inner.towards(outer, share);
    }

    double y(double share) {
        return edge(share).y();
    }

    /** A point on the chord line. */
    Vector at(double share, double chordShare) {
        return edge(share).plus(new Vector(chordShare * chord(share), 0, 0));
    }

    Vector normal(double incidence) {
        double right = outer.y() - inner.y();
        double up = (right < -1e-9 * span() ? -1 : 1) * Math.cos(incidence) / span();
        return new Vector(Math.sin(incidence), -up * (outer.z() - inner.z()), up * right);
    }

    private static Vector vector(Place place) {
        return new Vector(place.x(), place.y(), place.z());
    }
}
