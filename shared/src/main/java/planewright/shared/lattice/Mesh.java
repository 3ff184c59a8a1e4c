package planewright.shared.lattice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.DoubleStream;
import planewright.api.journal.Planform;
import planewright.api.journal.Planform.Surface;

/**
 * Lays strips and horseshoes over a planform. Surfaces share the same cuts across the span, so that a vortex trailing from
 * one passes midway between the control points of those behind it, and are cut where they cross each other's wakes; steep ones
 * have cuts of their own, where others and their wakes cross them or end on them.
 */
final class Mesh {
    /** A panel that rises more steeply than this has cuts of its own: cosine of 60°. */
    private static final double STEEP = 0.5;

    /** Cuts nearer to each other than this share of the half span are one. */
    private static final double SAME = 1e-6;

    /** Pieces that lie along each other more nearly than this do not cross: sine of 0.06°. */
    private static final double LEAST_TURN = 1e-3;

    /** A piece whose end lies nearer to a steep one than this share of the half span ends on it. */
    private static final double NEAR = 0.02;

    final List<Strip> strips = new ArrayList<>();
    final List<Horseshoe> horseshoes = new ArrayList<>();
    final boolean bothSidesAlike;

    private final Resolution resolution;
    private final double halfSpan;
    private final TreeSet<Double> cuts = new TreeSet<>();

    Mesh(Planform planform, Resolution resolution) {
        this.resolution = resolution;
        var surfaces = new ArrayList<List<Piece>>();
        for (int i = 0; i < planform.surfaces().size(); i++) {
            surfaces.add(Piece.of(planform.surfaces().get(i), i));
        }
        this.bothSidesAlike = planform.surfaces().stream().allMatch(Mesh::alike);
        this.halfSpan = surfaces.stream()
                .flatMap(List::stream)
                .flatMapToDouble(piece -> DoubleStream.of(
                        Math.abs(piece.inner().y()), Math.abs(piece.outer().y()), piece.span()))
                .max()
                .orElse(0);
        var pieces = Weld.joined(surfaces, halfSpan);
        pieces.forEach(piece -> {
            cut(Math.abs(piece.inner().y()));
            cut(Math.abs(piece.outer().y()));
        });
        var laid = new ArrayList<Piece>();
        for (var piece : pieces) {
            pieces.forEach(other -> meeting(piece, other, 0).ifPresent(share -> cut(Math.abs(piece.y(share)))));
            laid.add(piece);
            if (!bothSidesAlike && planform.surfaces().get(piece.surface()).mirrored()) {
                laid.add(piece.mirrored());
            }
        }
        laid.forEach(piece -> lay(piece, laid));
    }

    private static boolean alike(Surface surface) {
        return surface.mirrored()
                || surface.y() == 0
                        && surface.panels().stream().allMatch(panel -> Math.abs(Math.cos(panel.dihedral())) < 1e-9);
    }

    private void cut(double y) {
        for (double side : new double[] {y, -y}) {
            var nearest = cuts.ceiling(side - SAME * halfSpan);
            if (nearest == null || nearest > side + SAME * halfSpan) {
                cuts.add(side);
            }
        }
    }

    /**
     * Where one piece stands across another or its wake, as seen from behind, as a share of the way along it: there the flow
     * along the piece jumps.
     *
     * @param reach how far beyond the other's ends, m
     */
    private static Optional<Double> meeting(Piece one, Piece other, double reach) {
        double y = one.outer().y() - one.inner().y();
        double z = one.outer().z() - one.inner().z();
        double otherY = other.outer().y() - other.inner().y();
        double otherZ = other.outer().z() - other.inner().z();
        double turn = y * otherZ - z * otherY;
        if (one.surface() == other.surface() || Math.abs(turn) < LEAST_TURN * one.span() * other.span()) {
            return Optional.empty();
        }
        double apartY = other.inner().y() - one.inner().y();
        double apartZ = other.inner().z() - one.inner().z();
        double share = (apartY * otherZ - apartZ * otherY) / turn;
        double otherShare = (apartY * z - apartZ * y) / turn;
        double beyond = reach / other.span();
        return share > 0 && share < 1 && otherShare > -beyond && otherShare < 1 + beyond
                ? Optional.of(share)
                : Optional.empty();
    }

    private void lay(Piece piece, List<Piece> all) {
        double across = piece.outer().y() - piece.inner().y();
        var shares = new TreeSet<>(List.of(0.0, 1.0));
        if (Math.abs(across) < STEEP * piece.span()) {
            all.forEach(
                    other -> meeting(piece, other, NEAR * halfSpan).ifPresent(share -> addApart(shares, share, piece)));
        } else {
            double low = Math.min(piece.inner().y(), piece.outer().y());
            double high = Math.max(piece.inner().y(), piece.outer().y());
            cuts.subSet(low + 2 * SAME * halfSpan, high - 2 * SAME * halfSpan)
                    .forEach(y -> shares.add((y - piece.inner().y()) / across));
        }
        double last = 0;
        for (double share : shares.tailSet(0.0, false)) {
            lay(piece, last, share);
            last = share;
        }
    }

    private void addApart(TreeSet<Double> shares, double share, Piece piece) {
        double same = 2 * SAME * halfSpan / piece.span();
        if (shares.subSet(share - same, share + same).isEmpty()) {
            shares.add(share);
        }
    }

    private void lay(Piece piece, double begin, double end) {
        int count = resolution.strips((end - begin) * piece.span() / halfSpan);
        for (int i = 0; i < count; i++) {
            lay(piece, new double[] {
                begin + (end - begin) * resolution.spacing().across(i, count),
                begin + (end - begin) * resolution.spacing().across(i + 0.5, count),
                begin + (end - begin) * resolution.spacing().across(i + 1.0, count)
            });
        }
    }

    private void lay(Piece piece, double[] shares) {
        double chord = piece.chord(shares[1]);
        double incidence = piece.incidence(shares[1]);
        boolean inPlane = bothSidesAlike
                && Math.abs(piece.inner().y()) + Math.abs(piece.outer().y()) < SAME * halfSpan;
        strips.add(new Strip(
                piece.surface(),
                piece.edge(shares[0]),
                piece.edge(shares[2]),
                piece.edge(shares[1]),
                chord,
                incidence,
                horseshoes.size(),
                inPlane,
                piece.chord(shares[0]),
                piece.chord(shares[2]),
                piece.along(shares[0]),
                piece.along(shares[2])));
        var normal = piece.normal(incidence);
        for (int i = 0; i < resolution.chordwise(); i++) {
            double vortex = resolution.spacing().vortex(i, resolution.chordwise());
            double control = resolution.spacing().control(i, resolution.chordwise());
            horseshoes.add(new Horseshoe(
                    piece.at(shares[0], vortex),
                    piece.at(shares[2], vortex),
                    piece.at(shares[1], control),
                    normal,
                    strips.size() - 1,
                    i == 0 ? 0 : resolution.spacing().end(i - 1, resolution.chordwise()),
                    resolution.spacing().end(i, resolution.chordwise())));
        }
    }
}
