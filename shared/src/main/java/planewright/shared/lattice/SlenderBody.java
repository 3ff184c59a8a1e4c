package planewright.shared.lattice;

import java.util.ArrayList;
import java.util.List;
import planewright.api.journal.Planform;
import planewright.api.journal.Planform.Body;
import planewright.api.journal.Planform.Section;

/**
 * What a fuselage or pod adds to the pitching moment: dM/dα = ½ρU² · (π/2) ∫ w² (dβ/dα) dx over the body's width w, with the
 * local incidence β of the stream along its axis. Sources: M. M. Munk, NACA Report 184 (1924), slender bodies; H. Multhopp,
 * NACA TM 1036 (1942): the wing's upwash ahead of it and downwash behind it, no moment where a wing passes through (both
 * cited from memory). Here the upwash and downwash come from the lattice itself. An estimate: bodies with corners or open
 * tails differ.
 */
public final class SlenderBody {
    private static final int SLICES = 400;

    private SlenderBody() {}

    /**
     * Moment slope of all bodies; nose up, so above 0 where they turn the nose away.
     *
     * @return dM/dα per ½ρU², m³
     */
    public static double momentSlope(Planform planform, Lattice lattice) {
        return planform.bodies().stream()
                .mapToDouble(body -> momentSlope(body, planform, lattice))
                .sum();
    }

    private static double momentSlope(Body body, Planform planform, Lattice lattice) {
        var through = through(body, planform);
        double nose = body.sections().get(0).x();
        double length = body.sections().get(body.sections().size() - 1).x() - nose;
        double sum = 0;
        for (int i = 0; i < SLICES; i++) {
            double x = nose + (i + 0.5) / SLICES * length;
            double width = at(body, x, true);
            if (width > 0 && through.stream().noneMatch(chord -> chord[0] <= x && x <= chord[1])) {
                var wash = lattice.wash(Motion.INCIDENCE, new Vector(x, body.y(), at(body, x, false)));
                sum += width * width * (1 + wash.z());
            }
        }
        return Math.PI / 2 * sum * length / SLICES;
    }

    /** From leading to trailing edge, of each surface where it meets the body. */
    private static List<double[]> through(Body body, Planform planform) {
        var chords = new ArrayList<double[]>();
        for (int i = 0; i < planform.surfaces().size(); i++) {
            for (var piece : Piece.of(planform.surfaces().get(i), i)) {
                double from = piece.inner().y() - body.y();
                double to = piece.outer().y() - body.y();
                if (Math.abs(to - from) > piece.span() / 2
                        && Math.min(Math.abs(from), Math.abs(to)) <= widest(body) / 2) {
                    double share = Math.abs(from) <= Math.abs(to) ? 0 : 1;
                    double edge = piece.edge(share).x();
                    chords.add(new double[] {edge, edge + piece.chord(share)});
                }
            }
        }
        return chords;
    }

    private static double widest(Body body) {
        return body.sections().stream().mapToDouble(Section::width).max().orElse(0);
    }

    /** Width, or height of the middle, between the sections before and after a station. */
    private static double at(Body body, double x, boolean width) {
        var sections = body.sections();
        for (int i = 1; i < sections.size(); i++) {
            var one = sections.get(i - 1);
            var other = sections.get(i);
            if (one.x() <= x && x <= other.x() && other.x() > one.x()) {
                double share = (x - one.x()) / (other.x() - one.x());
                return (1 - share) * value(one, width) + share * value(other, width);
            }
        }
        return 0;
    }

    private static double value(Section section, boolean width) {
        return width ? section.width() : (section.top() + section.bottom()) / 2;
    }
}
