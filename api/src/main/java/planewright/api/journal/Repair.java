package planewright.api.journal;

import java.util.Optional;
import javax.measure.quantity.Mass;
import org.apiguardian.api.API;
import planewright.api.quantity.Measured;

/** Something that broke and was mended. */
@API(status = API.Status.MAINTAINED, since = "0.3.0")
public interface Repair {
    /** Short and stable within its entry. */
    String id();

    /** What broke: {@code fin at the root}. */
    String broke();

    /** Why it broke; may be empty. */
    String cause();

    /** How it was mended; may be empty. */
    String mended();

    /** What the mending weighs more than what it replaced; negative where it is lighter. */
    Optional<Measured<Mass>> massAdded();
}
