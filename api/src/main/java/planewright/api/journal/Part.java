package planewright.api.journal;

import java.util.Optional;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.apiguardian.api.API;
import planewright.api.quantity.Measured;

/** Something with a mass and a place on the aircraft: a line of the mass ledger. */
@API(status = API.Status.MAINTAINED, since = "0.1.0")
public interface Part {
    /** {@return its id, short and stable within its build} */
    String id();

    /** {@return what the builder calls it} */
    String name();

    /** {@return what it belongs to: {@code airframe}, {@code power}, {@code radio}; may be empty} */
    String group();

    /** {@return its mass; empty while it has not been weighed or estimated} */
    Optional<Measured<Mass>> mass();

    /** {@return station of its own centre of mass: aft of the datum} */
    Optional<Measured<Length>> x();

    /** {@return station of its own centre of mass: to the right wing} */
    Optional<Measured<Length>> y();

    /** {@return station of its own centre of mass: up} */
    Optional<Measured<Length>> z();

    /** {@return its own extent along x, aft} */
    Optional<Measured<Length>> length();

    /** {@return its own extent along y, across} */
    Optional<Measured<Length>> width();

    /** {@return its own extent along z, upwards} */
    Optional<Measured<Length>> height();
}
