package planewright.balance;

import java.util.Optional;
import planewright.shared.lattice.Derivatives;
import planewright.shared.lattice.Flow;
import planewright.shared.lattice.Motion;

/**
 * An aircraft in trim at any lift coefficient.
 *
 * @param derivatives about where it balances
 * @param linear its lift and moment with bodies and sections
 * @param control the vortices for a radian of what trims it; empty where nothing does
 */
record Trimmed(Derivatives derivatives, Longitudinal linear, Optional<Flow> control) {
    /**
     * Of an aircraft.
     *
     * @param margin static margin where it balances, bodies counted, in mean chords
     */
    static Trimmed of(Derivatives derivatives, Rigging rigging, double margin) {
        var lattice = derivatives.lattice();
        var reference = derivatives.reference();
        double force = 2 / reference.area();
        var straight = lattice.load(derivatives.straight(), Motion.AHEAD);
        double slope =
                force * lattice.load(Motion.INCIDENCE, Motion.AHEAD).force().z();
        double moment = (2 * straight.momentAbout(reference.centre()).y() + rigging.moment())
                / reference.area()
                / reference.chord();
        var flow = rigging.trimming().map(control -> lattice.flow(control.turn()));
        var load = flow.map(vortices -> lattice.load(vortices, Motion.AHEAD));
        return new Trimmed(
                derivatives,
                new Longitudinal(
                        force * straight.force().z(),
                        slope,
                        load.map(each -> force * each.force().z()).orElse(0.0),
                        moment,
                        -margin * slope,
                        load.map(each -> force
                                        * each.momentAbout(reference.centre()).y()
                                        / reference.chord())
                                .orElse(0.0)),
                flow);
    }

    Longitudinal.State state(double lift) {
        return linear.trimmed(lift);
    }

    /** Local lift coefficient of each strip at a lift coefficient of the whole; 0 where a strip has no chord. */
    double[] localLift(double lift) {
        var state = state(lift);
        var lattice = derivatives.lattice();
        var circulation = lattice.stripCirculation(derivatives.straight());
        var slope = lattice.stripCirculation(Motion.INCIDENCE);
        var turned = control.filter(flow -> linear.canBeTrimmed()).map(lattice::stripCirculation);
        for (int i = 0; i < circulation.length; i++) {
            int strip = i;
            double sum = circulation[i]
                    + state.incidence() * slope[i]
                    + turned.map(each -> state.control() * each[strip]).orElse(0.0);
            var at = lattice.strips().get(i);
            circulation[i] = at.chord() > 0 ? 2 * at.facing() * sum / at.chord() : 0;
        }
        return circulation;
    }
}
