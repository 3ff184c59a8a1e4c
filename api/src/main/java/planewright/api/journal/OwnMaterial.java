package planewright.api.journal;

import java.util.Optional;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.apiguardian.api.API;
import planewright.api.quantity.Measured;

/** What somebody has found of a material at the bench. */
@API(status = API.Status.MAINTAINED, since = "0.3.0")
public interface OwnMaterial {
    /** Short and stable within the journal's materials. */
    String id();

    /** What it is called at this bench: {@code epoxy from the tall tin}. */
    String name();

    /** Its class, as tables of materials name it: {@code laminating epoxy}. */
    String material();

    /** From mixing or spreading to when it must be closed. */
    Optional<Measured<Time>> workingTime();

    /** How long a contact adhesive dries before it is closed. */
    Optional<Measured<Time>> flashOff();

    /** Until it may be touched. */
    Optional<Measured<Time>> handsOff();

    /** Until it carries its full load. */
    Optional<Measured<Time>> fullyCured();

    /** How warm it was. */
    Optional<Measured<Temperature>> at();

    /** What else there is to say; may be empty. */
    String note();
}
