package planewright.balance;

import java.util.List;

/**
 * Which pieces go into which pockets, as an integer programme. Masses are whole tenths of a milligram and arms whole
 * micrometres from the point where it shall balance, so that every moment is an exact whole number.
 *
 * <p>With n of kind k in pocket p: minimise W = Σ mₖ·nₖₚ, then Σ nₖₚ over the kinds that count as pieces, subject to Σₚ nₖₚ ≤
 * count of k, the room of every pocket, and |S + Σ mₖ·nₖₚ·aₚ| ≤ t·(M + W) along x and along y, where M is the mass of all the
 * rest, S its moment and t the tolerance. Along x the parts that may move let S be anything between two limits.
 *
 * @param rest what is there already
 * @param kinds pieces at hand; may be empty
 * @param pockets where they may go; may be empty
 */
record PieceProblem(Rest rest, List<Kind> kinds, List<Pocket> pockets) {
    /** Moments stay within a long where no mass in all is greater and no arm longer than this: 400 kg, 200 m. */
    static final long GREATEST_MASS = 4_000_000_000L;

    /** Wider than this every balance point is within, µm. */
    private static final double WIDEST = 4e8;

    /**
     * The aircraft without ballast.
     *
     * @param mass above 0
     * @param xLow moment along x with every part that may move as far forward as it goes
     * @param xHigh the same as far aft
     * @param y moment along y
     * @param toleranceX above 0
     * @param toleranceY above 0
     */
    record Rest(long mass, long xLow, long xHigh, long y, long toleranceX, long toleranceY) {}

    /**
     * Pieces that are all alike.
     *
     * @param mass of one, above 0
     * @param count how many there are
     * @param loose cut off one lump: needs no room of its own and does not count as a piece
     */
    record Kind(long mass, int count, boolean loose) {}

    /**
     * A place for pieces.
     *
     * @param x arm from the target
     * @param y arm from the target
     * @param pieces how many it takes
     * @param mass how much it takes
     */
    record Pocket(long x, long y, int pieces, long mass) {}

    /** The same with tolerances so many times as wide. */
    PieceProblem within(double factor) {
        return new PieceProblem(
                new Rest(
                        rest.mass(),
                        rest.xLow(),
                        rest.xHigh(),
                        rest.y(),
                        (long) Math.ceil(Math.min(WIDEST, rest.toleranceX() * factor)),
                        (long) Math.ceil(Math.min(WIDEST, rest.toleranceY() * factor))),
                kinds,
                pockets);
    }

    /** The same where sideways does not matter. */
    PieceProblem lengthwise() {
        return new PieceProblem(
                new Rest(rest.mass(), rest.xLow(), rest.xHigh(), 0, rest.toleranceX(), rest.toleranceY()),
                kinds,
                pockets.stream()
                        .map(pocket -> new Pocket(pocket.x(), 0, pocket.pieces(), pocket.mass()))
                        .toList());
    }

    /** The same with nothing that moves, its moment along x being so much. */
    PieceProblem still(long x) {
        return new PieceProblem(
                new Rest(rest.mass(), x, x, rest.y(), rest.toleranceX(), rest.toleranceY()), kinds, pockets);
    }

    /** The same with pieces and room without end. */
    PieceProblem boundless() {
        return new PieceProblem(
                rest,
                List.of(new Kind(1000, (int) (GREATEST_MASS / 2000), true)),
                pockets.stream()
                        .map(pocket -> new Pocket(pocket.x(), pocket.y(), 0, GREATEST_MASS))
                        .toList());
    }

    /** The same with other pieces. */
    PieceProblem with(List<Kind> others) {
        return new PieceProblem(rest, List.copyOf(others), pockets);
    }

    /** How much more than the tolerance it is off at these moments of the ballast; within it up to 1. */
    double deviation(long mass, long x, long y) {
        return Math.max(
                (double) offX(x) / (rest.toleranceX() * (rest.mass() + mass)),
                (double) Math.abs(rest.y() + y) / (rest.toleranceY() * (rest.mass() + mass)));
    }

    /** Whether it balances within the tolerance, without rounding. */
    boolean balances(long mass, long x, long y) {
        return offX(x) <= rest.toleranceX() * (rest.mass() + mass)
                && Math.abs(rest.y() + y) <= rest.toleranceY() * (rest.mass() + mass);
    }

    /** The moment along x that no shift of a part takes away. */
    private long offX(long x) {
        return Math.max(0, Math.max(rest.xLow() + x, -(rest.xHigh() + x)));
    }

    /** The most mass that each pocket can take of what there is. */
    long[] room() {
        return pockets.stream().mapToLong(this::room).toArray();
    }

    private long room(Pocket pocket) {
        long mass = 0;
        int left = pocket.pieces();
        for (var kind : kinds.stream()
                .sorted((one, other) -> Long.compare(other.mass(), one.mass()))
                .toList()) {
            int taken = kind.loose() ? kind.count() : Math.min(left, kind.count());
            left -= kind.loose() ? 0 : taken;
            mass += taken * kind.mass();
        }
        return Math.min(mass, pocket.mass());
    }
}
