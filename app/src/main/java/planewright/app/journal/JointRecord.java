package planewright.app.journal;

import java.time.LocalDateTime;
import java.util.Optional;
import planewright.api.journal.Joint;

/** A joint as the journal holds it. */
public record JointRecord(
        String id,
        String name,
        String material,
        LocalDateTime start,
        Optional<LocalDateTime> handsOffUntil,
        Optional<LocalDateTime> fullyCured)
        implements Joint {
    public JointRecord {
        name = Checks.notBlank("name of a joint", name);
    }
}
