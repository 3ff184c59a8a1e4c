package planewright.app.journal;

import java.util.Optional;
import javax.measure.quantity.Mass;
import planewright.api.journal.Repair;
import planewright.api.quantity.Measured;

/** A repair as the journal holds it. */
public record RepairRecord(String id, String broke, String cause, String mended, Optional<Measured<Mass>> massAdded)
        implements Repair {
    public RepairRecord {
        broke = Checks.notBlank("what broke", broke);
    }
}
