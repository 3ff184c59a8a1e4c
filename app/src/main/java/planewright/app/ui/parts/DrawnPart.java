package planewright.app.ui.parts;

import java.util.Optional;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.app.journal.PartRecord;
import planewright.app.ui.planform.Sight;
import planewright.shared.planform.Place;

/**
 * A part on the drawing.
 *
 * @param row in the mass ledger, from 0
 * @param mass as it was weighed, else as the ledger has it
 */
record DrawnPart(int row, PartRecord part, Optional<Measured<Mass>> mass) {
    private static final double EXACT = 1e6;

    /** Whether it is known where it sits; across and up it sits in the middle until somebody says otherwise. */
    boolean isPlaced() {
        return part.x().isPresent();
    }

    /** Whether it counts for where the aircraft balances. */
    boolean counts() {
        return isPlaced() && mass.isPresent();
    }

    Place place() {
        return new Place(metres(part.x()), metres(part.y()), metres(part.z()));
    }

    double grams() {
        return mass.map(each -> each.in(Units.GRAM)).orElse(0.0);
    }

    private static double metres(Optional<Measured<Length>> station) {
        return station.map(each -> each.in(Units.METRE)).orElse(0.0);
    }

    /**
     * The part as it sits elsewhere. A station that is the same stays as it was written, and one that was never written stays so
     * while it is 0.
     *
     * @param across station across the drawing, m
     * @param aft station, m
     * @param snap steps to which stations are rounded, m
     * @param usual the unit of stations that were never written
     */
    PartRecord moved(Sight sight, double across, double aft, double snap, Unit<Length> usual) {
        var side = station(sight == Sight.ABOVE ? part.y() : part.z(), across, snap, usual);
        var x = part.x().isEmpty()
                ? Optional.of(Measured.of(inUnit(rounded(aft, snap), usual), usual))
                : station(part.x(), aft, snap, usual);
        return sight == Sight.ABOVE ? part.at(x, side, part.z()) : part.at(x, part.y(), side);
    }

    private static Optional<Measured<Length>> station(
            Optional<Measured<Length>> before, double metres, double snap, Unit<Length> usual) {
        if (Math.abs(metres - metres(before)) < snap / 2) {
            return before;
        }
        var unit = before.map(each -> unit(each)).orElse(usual);
        double number = inUnit(rounded(metres, snap), unit);
        return Optional.of(before.filter(each -> each.plusMinus().isPresent())
                .map(each -> Measured.of(number, each.spreadIn(unit), unit))
                .orElseGet(() -> Measured.of(number, unit)));
    }

    private static Unit<Length> unit(Measured<Length> station) {
        return station.value().getUnit();
    }

    private static double rounded(double metres, double snap) {
        return Math.rint(metres / snap) * snap;
    }

    private static double inUnit(double metres, Unit<Length> unit) {
        return Math.rint(Measured.of(metres, Units.METRE).in(unit) * EXACT) / EXACT;
    }
}
