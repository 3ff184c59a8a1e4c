package planewright.api.journal;

import java.time.LocalDateTime;
import java.util.Optional;
import org.apiguardian.api.API;

/** Parts held by an adhesive or filler that needs time. */
@API(status = API.Status.MAINTAINED, since = "0.1.0")
public interface Joint {
    /** Short and stable within its entry. */
    String id();

    /** What is joined: {@code fin to centre line}. */
    String name();

    /** The adhesive or filler by class: {@code solvent-based contact adhesive}. */
    String material();

    /** When it was closed. */
    LocalDateTime start();

    /** Until when nobody may touch it. */
    Optional<LocalDateTime> handsOffUntil();

    /** When it carries its full load. */
    Optional<LocalDateTime> fullyCured();
}
