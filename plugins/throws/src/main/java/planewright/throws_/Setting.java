package planewright.throws_;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A linkage with the travel that the servo is given. Commands run from −1, full travel away from the surface, to 1, full
 * travel towards it; deflections are up positive, in radians.
 *
 * @param linkage the linkage
 * @param towards how far the arm turns towards the surface at full command; radians, above 0
 * @param away how far it turns away from it
 * @param up 1 where the surface goes up as the horn's hole goes aft, as with a horn below, else −1
 */
record Setting(Linkage linkage, double towards, double away, int up) {
    /** The arm's turn at a command; no farther than the linkage lets it. */
    double turn(double command) {
        double asked = command > 0 ? command * towards : command * away;
        var limits = linkage.limits();
        return Math.max(limits[0], Math.min(limits[1], asked));
    }

    double deflection(double turn) {
        return up * linkage.deflection(turn);
    }

    /** Whether the linkage locks before the arm has made its full travel on a side. */
    boolean locks(int side) {
        return side > 0 ? linkage.limits()[1] < towards : linkage.limits()[0] > -away;
    }

    /** The turns within the travel at which the surface turns back. */
    List<Double> turnsBack() {
        double from = turn(-1);
        double to = turn(1);
        return linkage.overCentre().stream()
                .filter(turn -> from < turn && turn < to)
                .toList();
    }

    /** The turn at which the surface stands highest. */
    double highest() {
        return extremes().max(Comparator.comparingDouble(this::deflection)).orElseThrow();
    }

    /** The turn at which the surface stands lowest. */
    double lowest() {
        return extremes().min(Comparator.comparingDouble(this::deflection)).orElseThrow();
    }

    /** The command at which the surface first reaches a deflection; empty where it does not. */
    Optional<Double> commandFor(double deflection) {
        return Stream.of(1, -1)
                .filter(side -> between(deflection, deflection(0), deflection(firstEnd(side))))
                .map(side -> linkage.turnFor(up * deflection, firstEnd(side)) / (side > 0 ? towards : away))
                .findFirst();
    }

    /** The end of the travel on a side, or the nearer turn at which the surface turns back. */
    private double firstEnd(int side) {
        return turnsBack().stream()
                .filter(turn -> turn * side > 0)
                .min(Comparator.comparingDouble(Math::abs))
                .orElseGet(() -> turn(side));
    }

    private Stream<Double> extremes() {
        return Stream.concat(Stream.of(turn(-1), 0.0, turn(1)), turnsBack().stream());
    }

    private static boolean between(double value, double one, double other) {
        return Math.min(one, other) <= value && value <= Math.max(one, other);
    }
}
