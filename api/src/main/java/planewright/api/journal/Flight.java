package planewright.api.journal;

import java.util.Optional;
import javax.measure.quantity.Time;
import planewright.api.quantity.Measured;

/** A flight or a run of flights on one pack. */
public interface Flight {
    /** Short and stable within its entry. */
    String id();

    /** In the air, where somebody looked at the clock. */
    Optional<Measured<Time>> duration();

    /** Wind, light, field; may be empty. */
    String conditions();

    /** What it did and what to change; may be empty. */
    String behaviour();
}
