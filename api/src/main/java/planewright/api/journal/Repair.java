package planewright.api.journal;

import java.util.Optional;
import javax.measure.quantity.Mass;
import org.apiguardian.api.API;
import planewright.api.quantity.Measured;

/** Something that broke and was mended. */
@API(status = API.Status.MAINTAINED, since = "0.3.0")
public interface Repair {
    /** {@return its id, short and stable within its entry} */
    String id();

    /** {@return what broke: {@code fin at the root}} */
    String broke();

    /** {@return why it broke; may be empty} */
    String cause();

    /** {@return how it was mended; may be empty} */
    String mended();

    /** {@return what the mending weighs more than what it replaced; negative where it is lighter} */
    Optional<Measured<Mass>> massAdded();
}
