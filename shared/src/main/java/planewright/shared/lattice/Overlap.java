package planewright.shared.lattice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import planewright.api.journal.Planform;
import planewright.api.journal.Planform.Surface;

/**
 * Two surfaces that lie on each other: nearly in one plane, a part of one chord over a part of the other. There is no telling
 * which of them the air meets.
 *
 * @param one name of a surface
 * @param other name of the other
 */
public record Overlap(String one, String other) {
    /** Pieces that meet more steeply than this pass through each other, as fins do through wings: sine of 5°. */
    private static final double LEAST_TURN = 0.087;

    /** What is less than this share of the smaller chord or span is the width of a pencil line. */
    private static final double LINE = 0.01;

    /** The first there is. */
    public static Optional<Overlap> first(Planform planform) {
        var pieces = new ArrayList<List<Piece>>();
        for (int i = 0; i < planform.surfaces().size(); i++) {
            pieces.add(bothSides(planform.surfaces().get(i), i));
        }
        for (int i = 0; i < pieces.size(); i++) {
            for (int j = i + 1; j < pieces.size(); j++) {
                if (overlap(pieces.get(i), pieces.get(j))) {
                    return Optional.of(new Overlap(
                            planform.surfaces().get(i).name(),
                            planform.surfaces().get(j).name()));
                }
            }
        }
        return Optional.empty();
    }

    private static List<Piece> bothSides(Surface surface, int number) {
        var pieces = new ArrayList<>(Piece.of(surface, number));
        if (surface.mirrored()) {
            pieces.addAll(pieces.stream().map(Piece::mirrored).toList());
        }
        return pieces;
    }

    private static boolean overlap(List<Piece> some, List<Piece> others) {
        return some.stream().anyMatch(one -> others.stream().anyMatch(other -> overlap(one, other)));
    }

    /** Looked at midway along the part of the span that both share, as seen from behind. */
    private static boolean overlap(Piece one, Piece other) {
        double y = (one.outer().y() - one.inner().y()) / one.span();
        double z = (one.outer().z() - one.inner().z()) / one.span();
        double turn = y * (other.outer().z() - other.inner().z())
                - z * (other.outer().y() - other.inner().y());
        double inner = along(one, other.inner(), y, z);
        double outer = along(one, other.outer(), y, z);
        double from = Math.max(0, Math.min(inner, outer));
        double to = Math.min(one.span(), Math.max(inner, outer));
        if (Math.abs(turn) > LEAST_TURN * other.span() || to - from < LINE * Math.min(one.span(), other.span())) {
            return false;
        }
        double share = (from + to) / 2 / one.span();
        double otherShare = ((from + to) / 2 - inner) / (outer - inner);
        var edge = one.edge(share);
        var otherEdge = other.edge(otherShare);
        double line = LINE * Math.min(one.chord(share), other.chord(otherShare));
        double common = Math.min(edge.x() + one.chord(share), otherEdge.x() + other.chord(otherShare))
                - Math.max(edge.x(), otherEdge.x());
        return common > line && Math.hypot(edge.y() - otherEdge.y(), edge.z() - otherEdge.z()) < line;
    }

    /** How far along a piece a place lies, m. */
    private static double along(Piece piece, Vector place, double y, double z) {
        return (place.y() - piece.inner().y()) * y + (place.z() - piece.inner().z()) * z;
    }
}
