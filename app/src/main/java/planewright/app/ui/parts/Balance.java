package planewright.app.ui.parts;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.measure.quantity.Length;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.app.journal.PartRecord;
import planewright.app.ui.planform.Sight;
import planewright.shared.mass.Centre;
import planewright.shared.mass.Centre.Weight;

/**
 * Where parts balance, in metres from the datum.
 *
 * @param counted how many parts have a mass and a place
 */
record Balance(Centre x, Centre y, Centre z, long counted) {
    /** Empty where no part has both a mass and a place. */
    static Optional<Balance> of(List<DrawnPart> parts) {
        var counting = parts.stream().filter(DrawnPart::counts).toList();
        return counting.isEmpty()
                ? Optional.empty()
                : Optional.of(new Balance(
                        along(counting, PartRecord::x),
                        along(counting, PartRecord::y),
                        along(counting, PartRecord::z),
                        counting.size()));
    }

    /** Along the axis that lies across a drawing. */
    Centre across(Sight sight) {
        return sight == Sight.ABOVE ? y : z;
    }

    private static Centre along(List<DrawnPart> parts, Function<PartRecord, Optional<Measured<Length>>> axis) {
        return Centre.of(parts.stream()
                .map(part -> weight(part, axis.apply(part.part())))
                .toList());
    }

    private static Weight weight(DrawnPart part, Optional<Measured<Length>> station) {
        return new Weight(
                part.grams(),
                part.mass().map(mass -> mass.spreadIn(Units.GRAM)).orElse(0.0),
                station.map(each -> each.in(Units.METRE)).orElse(0.0),
                station.map(each -> each.spreadIn(Units.METRE)).orElse(0.0));
    }
}
