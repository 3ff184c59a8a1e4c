package planewright.api.journal;

import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Time;
import org.apiguardian.api.API;
import planewright.api.quantity.Measured;

/** One step of a procedure. */
@API(status = API.Status.MAINTAINED, since = "0.3.0")
public interface Step {
    /** Short and stable within its template. */
    String id();

    /** What to do. */
    String text();

    /** How long hands are busy. */
    Optional<Measured<Time>> handsOn();

    /** How long to leave it alone before the next step. */
    Optional<Measured<Time>> waiting();

    /** Materials by class. */
    List<String> materials();

    /** What its writer warns of. */
    List<String> cautions();
}
