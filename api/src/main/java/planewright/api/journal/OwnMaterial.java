package planewright.api.journal;

import java.util.Optional;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.apiguardian.api.API;
import planewright.api.quantity.Measured;

/** What somebody has found of a material at the bench. */
@API(status = API.Status.MAINTAINED, since = "0.3.0")
public interface OwnMaterial {
    /** {@return its id, short and stable within the journal's materials} */
    String id();

    /** {@return what it is called at this bench: {@code epoxy from the tall tin}} */
    String name();

    /** {@return its class, as tables of materials name it: {@code laminating epoxy}} */
    String material();

    /** {@return how long it can be worked, from mixing or spreading to when it must be closed} */
    Optional<Measured<Time>> workingTime();

    /** {@return how long a contact adhesive dries before it is closed} */
    Optional<Measured<Time>> flashOff();

    /** {@return how long until it may be touched} */
    Optional<Measured<Time>> handsOff();

    /** {@return how long until it carries its full load} */
    Optional<Measured<Time>> fullyCured();

    /** {@return how warm it was} */
    Optional<Measured<Temperature>> at();

    /** {@return what else there is to say; may be empty} */
    String note();
}
