package planewright.api.journal;

import java.util.Optional;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.apiguardian.api.API;
import planewright.api.quantity.Measured;

/** Something with a mass and a place on the aircraft: a line of the mass ledger. */
@API(status = API.Status.MAINTAINED, since = "0.1.0")
public interface Part {
    /** Short and stable within its build. */
    String id();

    /** What the builder calls it. */
    String name();

    /** What it belongs to: {@code airframe}, {@code power}, {@code radio}; may be empty. */
    String group();

    /** Its mass; empty while it has not been weighed or estimated. */
    Optional<Measured<Mass>> mass();

    /** Station of its own centre of mass: aft of the datum. */
    Optional<Measured<Length>> x();

    /** Station of its own centre of mass: to the right wing. */
    Optional<Measured<Length>> y();

    /** Station of its own centre of mass: up. */
    Optional<Measured<Length>> z();

    /** Its own extent along x. */
    Optional<Measured<Length>> length();

    /** Its own extent along y. */
    Optional<Measured<Length>> width();

    /** Its own extent along z. */
    Optional<Measured<Length>> height();
}
