package planewright.app.journal;

import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Time;
import planewright.api.journal.Step;
import planewright.api.quantity.Measured;

/** A step of a procedure as the journal holds it. */
public record StepRecord(
        String id,
        String text,
        Optional<Measured<Time>> handsOn,
        Optional<Measured<Time>> waiting,
        List<String> materials,
        List<String> cautions)
        implements Step {
    public StepRecord {
        text = Checks.notBlank("text of a step", text);
        materials = List.copyOf(materials);
        cautions = List.copyOf(cautions);
    }
}
