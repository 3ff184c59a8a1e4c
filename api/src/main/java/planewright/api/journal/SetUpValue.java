package planewright.api.journal;

import org.apiguardian.api.API;
import planewright.api.quantity.Measured;

/** One value the aircraft flies with: {@code elevator throw, low rate}. */
@API(status = API.Status.MAINTAINED, since = "0.1.0")
public interface SetUpValue {
    String name();

    Measured<?> value();

    /** The number as it was written. */
    String written();
}
