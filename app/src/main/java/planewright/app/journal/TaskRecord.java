package planewright.app.journal;

import java.util.Optional;
import javax.measure.quantity.Time;
import planewright.api.journal.DoneTask;
import planewright.api.quantity.Measured;

/** Work done as the journal holds it. */
public record TaskRecord(String id, String name, Optional<Measured<Time>> handsOn) implements DoneTask {
    public TaskRecord {
        name = Checks.notBlank("name of a task", name);
    }
}
