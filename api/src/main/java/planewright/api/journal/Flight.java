package planewright.api.journal;

import java.util.Optional;
import javax.measure.quantity.Time;
import org.apiguardian.api.API;
import planewright.api.quantity.Measured;

/** A flight or a run of flights on one pack. */
@API(status = API.Status.MAINTAINED, since = "0.1.0")
public interface Flight {
    /** Short and stable within its entry. */
    String id();

    /** In the air, where somebody looked at the clock. */
    Optional<Measured<Time>> duration();

    /** Wind, light, field; may be empty. */
    String conditions();

    /** What it did and what to change; may be empty. */
    String behaviour();
}
