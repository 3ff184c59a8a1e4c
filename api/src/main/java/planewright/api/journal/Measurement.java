package planewright.api.journal;

import org.apiguardian.api.API;
import planewright.api.quantity.Measured;

/** A named value: what was measured, what came out, how sure and how taken. */
@API(status = API.Status.MAINTAINED, since = "0.1.0")
public interface Measurement {
    /** {@return its id, short and stable within its entry} */
    String id();

    /** {@return what was measured: {@code left wing panel}} */
    String name();

    /** {@return what came out} */
    Measured<?> value();

    /** {@return the number as it was written: {@code 3 1/2}} */
    String written();

    /** {@return how it was taken: {@code kitchen scale}; may be empty} */
    String method();
}
