package planewright.api.journal;

import java.time.LocalDate;
import org.apiguardian.api.API;

/** A build on a day: where a template came from, went to, or flew. */
@API(status = API.Status.MAINTAINED, since = "0.3.0")
public interface BuildDay {
    /** {@return the build's id; the journal need not hold that build} */
    String build();

    /** {@return what the build was called} */
    String name();

    /** {@return the day by the builder's clock} */
    LocalDate date();
}
