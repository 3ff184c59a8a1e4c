package planewright.balance;

import static planewright.api.quantity.Units.KILOGRAM;
import static planewright.api.quantity.Units.KILOGRAM_PER_CUBIC_METRE;
import static planewright.api.quantity.Units.METRE;
import static planewright.api.quantity.Units.METRE_PER_SECOND;

import java.util.Optional;
import planewright.shared.air.Atmosphere;

/**
 * Level flight where it balances: what it takes at the speed asked for, and how slow it can be. Lift equals weight, L = ½ρV²S
 * C_L; thrust is taken along the flight path.
 *
 * @param density of the air, kg/m³
 * @param speed asked for, m/s
 * @param lift coefficient needed; empty without mass and speed
 * @param state incidence and control for it, rad; empty too where it has stalled, or beyond what a lattice tells
 * @param trimAngle of what trims it, rad; empty where nothing does
 * @param momentLeft coefficient of what still turns it, nose up; 0 in trim
 * @param stallSpeed m/s; empty without mass, where it stalls before it lifts at all, or beyond what a lattice tells
 */
record LevelFlight(
        double density,
        Optional<Double> speed,
        Optional<Double> lift,
        Optional<Longitudinal.State> state,
        Optional<Double> trimAngle,
        double momentLeft,
        Optional<Double> stallSpeed) {
    private static final double GRAVITY = 9.80665;

    private static final double MOST_INCIDENCE = Math.toRadians(25);
    private static final double MOST_CONTROL = Math.toRadians(40);

    static LevelFlight of(BalanceRangeAnswer answer) {
        var inputs = answer.inputs();
        double density = inputs.airDensity()
                .map(given -> given.in(KILOGRAM_PER_CUBIC_METRE))
                .orElseGet(() -> Atmosphere.at(inputs.altitude().in(METRE)).density());
        var speed = inputs.speed().map(given -> given.in(METRE_PER_SECOND));
        var mass = inputs.mass().map(given -> given.in(KILOGRAM));
        double area = answer.wing().area();
        var linear = answer.trimmed().linear();
        var lift = mass.flatMap(kilograms -> speed.map(fast -> liftCoefficient(kilograms, density, fast, area)));
        var stall = answer.stall();
        boolean stallTold = stall.lift() > Stall.NO_LIFT && told(linear.trimmed(stall.lift()));
        var state = lift.filter(needed -> needed <= stall.lift() || !stallTold)
                .map(linear::trimmed)
                .filter(LevelFlight::told);
        boolean trims = answer.rigging().trimming().isPresent() && linear.canBeTrimmed();
        return new LevelFlight(
                density,
                speed,
                lift,
                state,
                state.filter(each -> trims).map(Longitudinal.State::control),
                state.map(linear::momentIn).orElse(0.0),
                mass.filter(kilograms -> stallTold)
                        .map(kilograms -> stallSpeed(kilograms, density, area, stall.lift())));
    }

    /** Whether straight lines still hold: greater angles than any model flies at. */
    private static boolean told(Longitudinal.State state) {
        return Math.abs(state.incidence()) <= MOST_INCIDENCE && Math.abs(state.control()) <= MOST_CONTROL;
    }

    static double liftCoefficient(double mass, double density, double speed, double area) {
        return 2 * mass * GRAVITY / (density * speed * speed * area);
    }

    static double stallSpeed(double mass, double density, double area, double lift) {
        return Math.sqrt(2 * mass * GRAVITY / (density * area * lift));
    }
}
