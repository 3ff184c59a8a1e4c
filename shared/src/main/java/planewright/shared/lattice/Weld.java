package planewright.shared.lattice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Joins a surface that begins almost on another to it, as a fin standing on a wing or a winglet at its tip: a slit of a
 * hair's breadth in a drawing is none in foam, yet would let air through in a lattice fine enough to see it.
 */
final class Weld {
    /** A surface that begins nearer than this share of the half span is joined. */
    private static final double NEAR = 0.02;

    private Weld() {}

    /** The pieces of all surfaces, those that begin almost on a larger surface moved sideways and up onto it. */
    static List<Piece> joined(List<List<Piece>> surfaces, double halfSpan) {
        var joined = new ArrayList<Piece>();
        for (var surface : surfaces) {
            var root = surface.get(0);
            var shift = surfaces.stream()
                    .filter(other -> area(other) > area(surface))
                    .flatMap(other -> other.stream().map(piece -> gap(root, piece)))
                    .flatMap(Optional::stream)
                    .min(Comparator.comparingDouble(Weld::length))
                    .filter(gap -> length(gap) < NEAR * halfSpan)
                    .orElse(Vector.ZERO);
            surface.forEach(piece -> joined.add(piece.moved(shift)));
        }
        return joined;
    }

    /** From where a surface begins to the nearest point of a piece beside it; empty where their chords do not overlap. */
    private static Optional<Vector> gap(Piece root, Piece other) {
        var along = other.outer().minus(other.inner());
        var away = root.inner().minus(other.inner());
        double square = along.y() * along.y() + along.z() * along.z();
        double share = Math.max(0, Math.min(1, (along.y() * away.y() + along.z() * away.z()) / square));
        var edge = other.edge(share);
        boolean overlap = root.inner().x() < edge.x() + other.chord(share)
                && edge.x() < root.inner().x() + root.innerChord();
        var gap = edge.minus(root.inner());
        return overlap ? Optional.of(new Vector(0, gap.y(), gap.z())) : Optional.empty();
    }

    private static double length(Vector gap) {
        return Math.hypot(gap.y(), gap.z());
    }

    private static double area(List<Piece> surface) {
        return surface.stream()
                .mapToDouble(piece -> piece.span() * (piece.innerChord() + piece.outerChord()))
                .sum();
    }
}
