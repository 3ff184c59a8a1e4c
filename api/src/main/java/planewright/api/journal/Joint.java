package planewright.api.journal;

import java.time.LocalDateTime;
import java.util.Optional;
import org.apiguardian.api.API;

/** Parts held by an adhesive or filler that needs time. */
@API(status = API.Status.MAINTAINED, since = "0.1.0")
public interface Joint {
    /** {@return its id, short and stable within its entry} */
    String id();

    /** {@return what is joined: {@code fin to centre line}} */
    String name();

    /** {@return the adhesive or filler by class: {@code solvent-based contact adhesive}} */
    String material();

    /** {@return when it was closed} */
    LocalDateTime start();

    /** {@return the time until which nobody may touch it} */
    Optional<LocalDateTime> handsOffUntil();

    /** {@return when it carries its full load} */
    Optional<LocalDateTime> fullyCured();
}
