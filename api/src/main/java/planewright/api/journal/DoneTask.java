package planewright.api.journal;

import java.util.Optional;
import javax.measure.quantity.Time;
import org.apiguardian.api.API;
import planewright.api.quantity.Measured;

/** A piece of work that was done. */
@API(status = API.Status.MAINTAINED, since = "0.3.0")
public interface DoneTask {
    /** {@return its id, short and stable within its entry} */
    String id();

    /** {@return what was done: {@code cut both cores}} */
    String name();

    /** {@return how long hands were busy, where somebody looked at the clock; waiting does not count} */
    Optional<Measured<Time>> handsOn();
}
