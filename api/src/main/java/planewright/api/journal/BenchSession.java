package planewright.api.journal;

import java.time.LocalTime;
import org.apiguardian.api.API;

/**
 * A stretch of a day in which the builder can work.
 *
 * @param from when it begins
 * @param to when it ends, after it begins; 00:00 is the midnight that ends the day
 */
@API(status = API.Status.MAINTAINED, since = "0.3.0")
public record BenchSession(LocalTime from, LocalTime to) {
    public BenchSession {
        if (!to.isAfter(from) && !to.equals(LocalTime.MIDNIGHT)) {
            throw new IllegalArgumentException("a bench session runs from " + from + " to " + to
                    + "; accepted: an end after the beginning, 00:00 at the latest; what is after midnight belongs to the"
                    + " next day");
        }
    }
}
