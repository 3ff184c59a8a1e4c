package planewright.app.journal;

import java.util.Optional;
import javax.measure.quantity.Mass;
import planewright.api.journal.JournalReader;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;

/** What the parts of a build weigh: the newest weighing that bears a part's name goes before the mass in the ledger. */
final class Weighings {
    private Weighings() {}

    /** The mass of a part; empty where it was neither weighed nor written into the ledger. */
    static Optional<Measured<Mass>> mass(JournalReader journal, String buildId, PartRecord part) {
        return weighed(journal, buildId, part).or(part::mass);
    }

    /** The newest weighing of a part. */
    static Optional<Measured<Mass>> weighed(JournalReader journal, String buildId, PartRecord part) {
        return journal.latestMeasurement(buildId, part.name())
                .<Measured<?>>map(dated -> dated.what().value())
                .filter(value -> Units.alike(value.value().getUnit(), Units.GRAM))
                .map(value -> value.asType(Mass.class));
    }
}
