package planewright.api.journal;

import java.util.Optional;
import javax.measure.quantity.Time;
import org.apiguardian.api.API;
import planewright.api.quantity.Measured;

/** A flight or a run of flights on one pack. */
@API(status = API.Status.MAINTAINED, since = "0.1.0")
public interface Flight {
    /** {@return its id, short and stable within its entry} */
    String id();

    /** {@return how long it was in the air, where somebody looked at the clock} */
    Optional<Measured<Time>> duration();

    /** {@return wind, light, field; may be empty} */
    String conditions();

    /** {@return what it did and what to change; may be empty} */
    String behaviour();
}
