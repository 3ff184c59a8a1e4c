package planewright.api.journal;

import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Time;
import org.apiguardian.api.API;
import planewright.api.quantity.Measured;

/** One step of a procedure. */
@API(status = API.Status.MAINTAINED, since = "0.3.0")
public interface Step {
    /** {@return its id, short and stable within its template} */
    String id();

    /** {@return what to do} */
    String text();

    /** {@return how long hands are busy} */
    Optional<Measured<Time>> handsOn();

    /** {@return how long to leave it alone before the next step} */
    Optional<Measured<Time>> waiting();

    /** {@return materials by class} */
    List<String> materials();

    /** {@return what its writer warns of} */
    List<String> cautions();
}
