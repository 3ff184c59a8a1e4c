package planewright.api.journal;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.apiguardian.api.API;

/** One aircraft, from first sketch to retirement. */
@API(status = API.Status.MAINTAINED, since = "0.1.0")
public interface Build {
    /** Its ULID; never changes. */
    String id();

    /** What the builder calls it. */
    String name();

    /** Where it stands in its life. */
    Life life();

    /** Its layout in the builder's words: {@code tailless with elevons}, {@code biplane}; may be empty. */
    String layout();

    /** Where stations are measured from: {@code wing leading edge at the centre line}; may be empty. */
    String datum();

    /** The day it was begun. */
    LocalDate begun();

    /** What else there is to say, a paragraph an element. */
    List<String> notes();

    /** The mass ledger, in the builder's order. */
    List<? extends Part> parts();

    /** Its shape as far as it is known. */
    Optional<Planform> planform();
}
