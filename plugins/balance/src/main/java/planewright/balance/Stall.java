package planewright.balance;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import planewright.shared.lattice.Strip;

/**
 * Which section along the span reaches its greatest lift first when an aircraft is slowed down in trim: the local lift
 * coefficient of every strip is a straight line in that of the whole. Critical-section method, as in D. P. Raymer, Aircraft
 * Design: A Conceptual Approach, chapter 12, and NACA Report 585 (both cited from memory). Vortices that lift a slender
 * delta beyond it, and what a deflected flap does to its section's limit, are not counted; nor are upright surfaces, unless all
 * are.
 *
 * @param lift coefficient of the whole at which it happens
 * @param spread its standard uncertainty, from the sections' limits
 * @param surface on which, from 0
 * @param along where from its root to its tip, as a share
 * @param tipReserve how much more lift than the rest of that surface its outer quarter bears, as a share; below 0 where it
 *     stalls first
 */
record Stall(double lift, double spread, int surface, double along, double tipReserve) {
    /** Where the tip begins. */
    static final double TIP = 0.75;

    /** Nearer to the tip's end, or narrower than this share of the mean chord, thin-wing theory says nothing of a stall. */
    private static final double OUTERMOST = 0.97;

    private static final double NARROWEST = 0.1;

    /** A smaller lift coefficient than this holds nothing up. */
    static final double NO_LIFT = 0.01;

    /** Less lift than this for each of the whole's never stalls. */
    private static final double IDLE = 1e-6;

    /** Of an aircraft in trim. */
    static Stall of(Trimmed trimmed, Rigging rigging) {
        var search = new Search(trimmed, rigging);
        var first = search.first(strip -> true, 0).orElseThrow(() -> new ArithmeticException("no section ever stalls"));
        int surface = first.strip().surface();
        var tip = search.first(strip -> strip.surface() == surface && along(strip) > TIP, 0);
        var rest = search.first(strip -> strip.surface() == surface && along(strip) <= TIP, 0);
        double better = search.first(strip -> true, 1).map(Reached::lift).orElse(first.lift());
        return new Stall(
                first.lift(),
                Math.abs(better - first.lift()),
                surface,
                along(first.strip()),
                tip.flatMap(outer -> rest.map(inner -> reserve(outer.lift(), inner.lift())))
                        .orElse(0.0));
    }

    private static double reserve(double tip, double rest) {
        return rest > NO_LIFT ? tip / rest - 1 : 0;
    }

    /** Whether a strip lies more level than upright. */
    static boolean level(Strip strip) {
        return Math.abs(strip.to().y() - strip.from().y()) > strip.width() / 2;
    }

    private static double along(Strip strip) {
        return (strip.alongFrom() + strip.alongTo()) / 2;
    }

    /** A strip, and the lift coefficient of the whole at which it stalls. */
    private record Reached(Strip strip, double lift) {}

    private static final class Search {
        private final List<Strip> strips;
        private final List<Integer> looked;
        private final double[] atNone;
        private final double[] atOne;
        private final Rigging rigging;

        Search(Trimmed trimmed, Rigging rigging) {
            this.strips = trimmed.derivatives().lattice().strips();
            this.atNone = trimmed.localLift(0);
            this.atOne = trimmed.localLift(1);
            this.rigging = rigging;
            double chord = trimmed.derivatives().reference().chord();
            var usual = IntStream.range(0, strips.size())
                    .filter(i -> level(strips.get(i))
                            && strips.get(i).chord() > NARROWEST * chord
                            && along(strips.get(i)) < OUTERMOST)
                    .boxed()
                    .toList();
            this.looked =
                    usual.isEmpty() ? IntStream.range(0, strips.size()).boxed().toList() : usual;
        }

        Optional<Reached> first(Predicate<Strip> which, double spreads) {
            return looked.stream()
                    .filter(i -> which.test(strips.get(i)) && atOne[i] - atNone[i] > IDLE)
                    .map(i -> new Reached(strips.get(i), lift(i, spreads)))
                    .min(Comparator.comparingDouble(Reached::lift));
        }

        private double lift(int i, double spreads) {
            var section = rigging.section(strips.get(i).surface());
            double limit = section.mostLift() + spreads * section.mostLiftSpread();
            return Math.max(0, (limit - atNone[i]) / (atOne[i] - atNone[i]));
        }
    }
}
