package planewright.balance;

import static planewright.api.quantity.Units.GRAM;
import static planewright.api.quantity.Units.KILOGRAM;

import java.util.ArrayList;
import java.util.List;
import planewright.api.quantity.Measured;

/** The pieces at hand: the builder's own, published ones, and lead to cut. */
final class BallastStock {
    /** Tenths of a milligram in a kilogram: the step of the search's masses. */
    static final double STEPS = 1e7;

    private static final double GRAMS = 1000;

    /**
     * Pieces that are all alike, masses in kg.
     *
     * @param name what the builder calls it
     * @param mass of one, on the step of the search
     * @param spread its standard uncertainty, the same for all of a kind; of no account for a lump
     * @param count how many there are
     * @param loose cut off one lump, in steps of its mass
     */
    record Kind(String name, double mass, double spread, int count, boolean loose) {
        double allOfIt() {
            return count * mass;
        }

        /** Of so many together: a lump is weighed once, to its step; whole pieces are all too heavy or all too light. */
        double spreadOf(int some) {
            return loose ? mass / Math.sqrt(12) : some * spread;
        }

        PieceProblem.Kind whole() {
            return new PieceProblem.Kind(Math.round(mass * STEPS), count, loose);
        }
    }

    private BallastStock() {}

    static List<Kind> of(Words words, Ballast.Inputs inputs) {
        var kinds = new ArrayList<Kind>();
        for (var line : inputs.stock()) {
            add(kinds, line.name(), line.mass().in(KILOGRAM), Refusals.spread(line.mass(), KILOGRAM), line.count());
        }
        for (var piece : published(inputs.coins())) {
            double mass = piece.grams() / GRAMS;
            add(kinds, words.say(piece.name()), mass, PieceTable.SPREAD * mass, inputs.coinsEach());
        }
        inputs.leadToCut().ifPresent(lead -> {
            double step = onStep(inputs.cutStep().in(KILOGRAM));
            int count = (int) Math.floor(lead.in(KILOGRAM) / step + 1e-9);
            if (count > 0) {
                kinds.add(new Kind(words.say("lead cut to measure"), step, 0, count, true));
            }
        });
        return kinds;
    }

    private static List<PieceTable.Piece> published(Ballast.Coins coins) {
        return switch (coins) {
            case NONE -> List.of();
            case US_COINS -> PieceTable.US_COINS;
            case EURO_COINS -> PieceTable.EURO_COINS;
            case STEEL_WASHERS -> PieceTable.STEEL_WASHERS;
        };
    }

    private static void add(List<Kind> kinds, String name, double mass, double spread, int count) {
        if (count > 0) {
            kinds.add(new Kind(name, onStep(mass), spread, count, false));
        }
    }

    private static double onStep(double kilograms) {
        return Math.round(kilograms * STEPS) / STEPS;
    }

    /** {@code 3 × US dime}, {@code 12.5 g of lead cut to measure}. */
    static String told(Words words, Kind kind, int count) {
        return kind.loose()
                ? words.say(
                        "{0} of {1}",
                        words.show(Measured.of(Math.rint(STEPS * count * kind.mass()) / (STEPS / GRAMS), GRAM)),
                        kind.name())
                : count + " × " + kind.name();
    }
}
