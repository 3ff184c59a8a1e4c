package planewright.cure;

import java.util.function.DoubleUnaryOperator;
import planewright.shared.uncertainty.Propagation;

/** A stage that a joint on the bench has to wait for. */
final class Waiting {
    private static final double WETTEST = 0.95;
    private static final double THINNEST = 1e-6;

    private final Bench bench;
    private final Curing curing;
    private final Range hours;
    private final DoubleUnaryOperator factor;
    private final boolean inAnyAir;

    /**
     * @param hours what it takes at the reference
     * @param factor how many times longer at a thickness in mm
     * @param inAnyAir whether the hours hold as damp or dry as it is
     */
    Waiting(Bench bench, Curing curing, Range hours, DoubleUnaryOperator factor, boolean inAnyAir) {
        this.bench = bench;
        this.curing = curing;
        this.hours = hours;
        this.factor = factor;
        this.inAnyAir = inAnyAir;
    }

    /** The figures that one course goes by: hours at the reference, J/mol, and how far off the bench is from what is said. */
    private record Case(double hours, double energy, double warmer, double wetter, double thicker) {}

    /** Whether the usual figures ever get there. */
    boolean ends() {
        return hours(likely()) < Progress.LONGEST;
    }

    Stage stage() {
        double[] usual = {hours.typical(), curing.energy().typical(), 0, 0, 0};
        double[] spreads = {
            hours.spread(), curing.energy().spread(), bench.airSpread(), bench.humiditySpread(), bench.thicknessSpread()
        };
        var likely = Propagation.through(
                given -> hours(new Case(given[0], given[1], given[2], given[3], given[4])), usual, spreads);
        return new Stage(
                Math.min(likely.value(), hours(quickest())),
                likely.value(),
                likely.spread(),
                Math.max(likely.value(), hours(slowest())));
    }

    /** How much of it is done at evenly spaced instants until an end, 0 to 1: the quick, the likely, the slow course. */
    double[][] courses(double end, int instants) {
        return new double[][] {
            shares(quickest(), end, instants), shares(likely(), end, instants), shares(slowest(), end, instants)
        };
    }

    private Case likely() {
        return new Case(hours.typical(), curing.energy().typical(), 0, 0, 0);
    }

    private Case quickest() {
        var least = likely();
        for (double energy :
                new double[] {curing.energy().low(), curing.energy().high()}) {
            for (double wetter : new double[] {-bench.humiditySpread(), bench.humiditySpread()}) {
                var other = new Case(hours.low(), energy, bench.airSpread(), wetter, -bench.thicknessSpread());
                least = hours(other) < hours(least) ? other : least;
            }
        }
        return least;
    }

    private Case slowest() {
        var most = likely();
        for (double energy :
                new double[] {curing.energy().low(), curing.energy().high()}) {
            for (double wetter : new double[] {-bench.humiditySpread(), bench.humiditySpread()}) {
                var other = new Case(hours.high(), energy, -bench.airSpread(), wetter, bench.thicknessSpread());
                most = hours(other) > hours(most) ? other : most;
            }
        }
        return most;
    }

    private double[] shares(Case given, double end, int instants) {
        double wanted = wanted(given);
        return progress(given).earnedUntil(end, instants).stream()
                .mapToDouble(earned -> earned >= wanted ? 1 : earned / wanted)
                .toArray();
    }

    private double hours(Case given) {
        return progress(given).hoursToEarn(wanted(given)).orElse(Progress.LONGEST);
    }

    private double wanted(Case given) {
        double thick = Math.max(THINNEST, bench.millimetres() + given.thicker());
        return Math.max(0, given.hours()) * factor.applyAsDouble(thick);
    }

    private Progress progress(Case given) {
        double relative = Math.max(0, Math.min(WETTEST, bench.humidity() + given.wetter()));
        double rate = inAnyAir ? 1 : curing.humidityRate(relative);
        double energy = Math.max(0, given.energy());
        return new Progress(
                given.warmer() == 0 ? bench.air() : bench.air().warmer(given.warmer()),
                kelvin -> rate * Arrhenius.rate(energy, kelvin, curing.kelvin()));
    }
}
