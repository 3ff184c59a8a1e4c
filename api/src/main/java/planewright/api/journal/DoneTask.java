package planewright.api.journal;

import java.util.Optional;
import javax.measure.quantity.Time;
import planewright.api.quantity.Measured;

/** A piece of work that was done. */
public interface DoneTask {
    /** Short and stable within its entry. */
    String id();

    /** What was done: {@code cut both cores}. */
    String name();

    /** How long hands were busy, where somebody looked at the clock; waiting does not count. */
    Optional<Measured<Time>> handsOn();
}
