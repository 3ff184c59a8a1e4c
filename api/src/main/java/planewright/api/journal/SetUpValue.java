package planewright.api.journal;

import org.apiguardian.api.API;
import planewright.api.quantity.Measured;

/** One value the aircraft flies with: {@code elevator throw, low rate}. */
@API(status = API.Status.MAINTAINED, since = "0.1.0")
public interface SetUpValue {
    /** {@return what is set: {@code aileron throw up}} */
    String name();

    /** {@return to what it is set, in the unit in which it was written} */
    Measured<?> value();

    /** {@return the number as it was written} */
    String written();
}
