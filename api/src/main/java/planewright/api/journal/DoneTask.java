package planewright.api.journal;

import java.util.Optional;
import javax.measure.quantity.Time;
import org.apiguardian.api.API;
import planewright.api.quantity.Measured;

/** A piece of work that was done. */
@API(status = API.Status.MAINTAINED, since = "0.3.0")
public interface DoneTask {
    /** Short and stable within its entry. */
    String id();

    /** What was done: {@code cut both cores}. */
    String name();

    /** How long hands were busy, where somebody looked at the clock; waiting does not count. */
    Optional<Measured<Time>> handsOn();
}
