package planewright.balance;

/**
 * Lift and pitching moment of an aircraft, straight lines in incidence and in the angle of what trims it; coefficients, and
 * radians or any other unit of angle throughout.
 *
 * @param lift at no incidence, the control neutral
 * @param liftSlope by incidence
 * @param liftPower by the control; 0 where there is none
 * @param moment about the balance point at no incidence, nose up
 * @param momentSlope by incidence
 * @param momentPower by the control; 0 where there is none
 */
record Longitudinal(
        double lift, double liftSlope, double liftPower, double moment, double momentSlope, double momentPower) {
    /** Less than this share of the control's own moment at the balance point leaves nothing to trim with. */
    private static final double POWERLESS = 1e-3;

    /** A state of level flight. */
    record State(double incidence, double control) {}

    /** Whether its control can pitch it at a constant lift. */
    boolean canBeTrimmed() {
        return Math.abs(determinant()) > POWERLESS * Math.abs(liftSlope);
    }

    /** Incidence at which it carries a lift coefficient with the control neutral. */
    double untrimmed(double wanted) {
        return (wanted - lift) / liftSlope;
    }

    /** Incidence and control at which it carries a lift coefficient without turning; the control neutral where it has none. */
    State trimmed(double wanted) {
        if (!canBeTrimmed()) {
            return new State(untrimmed(wanted), 0);
        }
        double more = wanted - lift;
        return new State(
                (more * momentPower + moment * liftPower) / determinant(),
                (-liftSlope * moment - momentSlope * more) / determinant());
    }

    /** What still turns it in a state, nose up. */
    double momentIn(State state) {
        return moment + momentSlope * state.incidence() + momentPower * state.control();
    }

    /** How far the neutral point lies behind the balance point, in mean chords: −dCm/dCL, Raymer equation 16.10. */
    double staticMargin() {
        return -momentSlope / liftSlope;
    }

    private double determinant() {
        return liftSlope * momentPower - momentSlope * liftPower;
    }
}
