package planewright.api.journal;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.apiguardian.api.API;

/** One aircraft, from first sketch to retirement. */
@API(status = API.Status.MAINTAINED, since = "0.1.0")
public interface Build {
    /** {@return its ULID, which never changes} */
    String id();

    /** {@return what the builder calls it} */
    String name();

    /** {@return where it stands in its life} */
    Life life();

    /** {@return its layout in the builder's words: {@code tailless with elevons}, {@code biplane}; may be empty} */
    String layout();

    /** {@return where stations are measured from: {@code wing leading edge at the centre line}; may be empty} */
    String datum();

    /** {@return the day it was begun} */
    LocalDate begun();

    /** {@return what else there is to say, a paragraph an element} */
    List<String> notes();

    /** {@return the mass ledger, in the builder's order} */
    List<? extends Part> parts();

    /** {@return its shape as far as it is known} */
    Optional<Planform> planform();
}
