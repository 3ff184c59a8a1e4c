package planewright.balance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;

/**
 * Every handful of pieces whose mass lies between two limits, the lightest first and of equal ones the one with fewer pieces.
 *
 * <p>The kinds are dealt into two halves; all handfuls of each half are listed and sorted, and a heap merges the sums of
 * both. Source: Schroeppel and Shamir, SIAM Journal on Computing 10 (1981) 456, and before them Horowitz and Sahni, Journal of the
 * ACM 21 (1974) 277, on subset sums from two lists (cited from memory).
 */
final class Handfuls {
    /** More than so many in one half are not listed. */
    static final int MOST = 300_000;

    private static final Comparator<Part> LIGHTEST =
            Comparator.comparingLong(Part::mass).thenComparingInt(Part::pieces);

    private final List<PieceProblem.Kind> kinds;
    private final long to;
    private final List<Part> first;
    private final List<Part> second;
    private final PriorityQueue<Pair> heads = new PriorityQueue<>(
            Comparator.comparingLong(Pair::mass).thenComparingInt(Pair::pieces).thenComparingInt(Pair::first));

    /** Some of one half of the kinds; its counts are the digits of a number. */
    private record Part(long mass, int pieces, long digits) {}

    private record Pair(long mass, int pieces, int first, int second) {}

    /**
     * A handful.
     *
     * @param mass of all its pieces
     * @param pieces how many, without what is cut off a lump
     * @param counts of each kind
     */
    record Handful(long mass, int pieces, int[] counts) {}

    private Handfuls(List<PieceProblem.Kind> kinds, long to, List<Part> first, List<Part> second) {
        this.kinds = kinds;
        this.to = to;
        this.first = first;
        this.second = second;
    }

    /**
     * @param from the least mass
     * @param to masses from here on are left out
     * @return empty where there are too many to list
     */
    static Optional<Handfuls> between(List<PieceProblem.Kind> kinds, long from, long to) {
        var first = half(kinds, 0, to);
        var second = half(kinds, 1, to);
        if (first.isEmpty() || second.isEmpty()) {
            return Optional.empty();
        }
        var handfuls = new Handfuls(kinds, to, first, second);
        for (int i = 0; i < first.size(); i++) {
            handfuls.push(i, handfuls.atLeast(from - first.get(i).mass()));
        }
        return Optional.of(handfuls);
    }

    /** How many were listed in both halves. */
    int listed() {
        return first.size() + second.size();
    }

    /** The next one; empty after the last. */
    Optional<Handful> next() {
        var head = heads.poll();
        if (head == null) {
            return Optional.empty();
        }
        push(head.first(), head.second() + 1);
        var counts = new int[kinds.size()];
        digits(first.get(head.first()).digits(), 0, counts);
        digits(second.get(head.second()).digits(), 1, counts);
        return Optional.of(new Handful(head.mass(), head.pieces(), counts));
    }

    private void push(int i, int j) {
        if (j < second.size()) {
            var one = first.get(i);
            var other = second.get(j);
            if (one.mass() + other.mass() < to) {
                heads.add(new Pair(one.mass() + other.mass(), one.pieces() + other.pieces(), i, j));
            }
        }
    }

    private int atLeast(long mass) {
        int low = 0;
        int high = second.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (second.get(middle).mass() < mass) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** All handfuls of every second kind that are lighter than a limit, sorted; empty where there are too many. */
    private static List<Part> half(List<PieceProblem.Kind> kinds, int start, long to) {
        var parts = List.of(new Part(0, 0, 0));
        long place = 1;
        for (int k = start; k < kinds.size(); k += 2) {
            var kind = kinds.get(k);
            var more = new ArrayList<Part>();
            for (var part : parts) {
                for (int n = 0; n <= kind.count() && part.mass() + n * kind.mass() < to; n++) {
                    int pieces = part.pieces() + (kind.loose() ? 0 : n);
                    more.add(new Part(part.mass() + n * kind.mass(), pieces, part.digits() + n * place));
                    if (more.size() > MOST) {
                        return List.of();
                    }
                }
            }
            parts = more;
            place *= kind.count() + 1;
        }
        return parts.stream().sorted(LIGHTEST).toList();
    }

    private void digits(long number, int start, int[] counts) {
        long left = number;
        for (int k = start; k < counts.length; k += 2) {
            int base = kinds.get(k).count() + 1;
            counts[k] = (int) (left % base);
            left /= base;
        }
    }
}
