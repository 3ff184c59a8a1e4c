package planewright.throws_;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The reverse question: every pair of an arm hole and a horn hole, the best first. Among pairs that give all that is wanted,
 * the one that gives least beyond it is best: turned down the least, the servo keeps the most leverage and the finest steps
 * (common practice, no source). Of those that fall short, the one that falls short least. A pair that locks or passes over
 * centre within its travel comes after all that do not.
 *
 * @param wantedUp radians; empty where any will do
 * @param wantedDown radians; empty where any will do
 */
record Holes(OptionalDouble wantedUp, OptionalDouble wantedDown) {
    /** Rounding of doubles in two ways to the same throw. */
    private static final double ROUNDING = 1e-9;

    /**
     * A pair of holes.
     *
     * @param arm the hole in the arm, m
     * @param horn the hole in the horn, m
     * @param setting what they make
     * @param least the smaller of up and down, each over what is wanted of it
     * @param most the greater of them
     * @param sound whether it neither locks nor passes over centre
     */
    record Pair(double arm, double horn, Setting setting, double least, double most, boolean sound) {
        boolean reaches() {
            return least >= 1 - ROUNDING;
        }
    }

    /** The pairs that close with the servo centred, best first. */
    List<Pair> ranked(Setting now, List<Double> armHoles, List<Double> hornHoles) {
        var pairs = new ArrayList<Pair>();
        for (double arm : armHoles) {
            for (double horn : hornHoles) {
                Linkage.of(now.linkage().geometry().withHoles(arm, horn))
                        .map(linkage -> pair(arm, horn, new Setting(linkage, now.towards(), now.away(), now.up())))
                        .ifPresent(pairs::add);
            }
        }
        pairs.sort(Comparator.comparing((Pair pair) -> !pair.sound())
                .thenComparing(pair -> !pair.reaches())
                .thenComparingDouble(pair -> pair.reaches() ? pair.most() : -pair.least())
                .thenComparingDouble(Pair::arm)
                .thenComparingDouble(Pair::horn));
        return pairs;
    }

    /** The command at which a pair stands at what is wanted of one direction. */
    Optional<Double> commandUp(Pair pair) {
        return wantedUp.isEmpty() ? Optional.empty() : pair.setting().commandFor(wantedUp.getAsDouble());
    }

    Optional<Double> commandDown(Pair pair) {
        return wantedDown.isEmpty() ? Optional.empty() : pair.setting().commandFor(-wantedDown.getAsDouble());
    }

    private Pair pair(double arm, double horn, Setting setting) {
        var shares = new ArrayList<Double>();
        wantedUp.ifPresent(wanted -> shares.add(setting.deflection(setting.highest()) / wanted));
        wantedDown.ifPresent(wanted -> shares.add(-setting.deflection(setting.lowest()) / wanted));
        double least = shares.stream().min(Double::compare).orElseThrow();
        double most = shares.stream().max(Double::compare).orElseThrow();
        boolean sound =
                !setting.locks(1) && !setting.locks(-1) && setting.turnsBack().isEmpty();
        return new Pair(arm, horn, setting, least, most, sound);
    }
}
