package planewright.app.journal;

import java.util.Optional;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import planewright.api.journal.Part;
import planewright.api.quantity.Measured;

/**
 * A line of the mass ledger as the journal holds it.
 *
 * @param carried whether its mass was carried over from another build and not weighed here yet
 */
public record PartRecord(
        String id,
        String name,
        String group,
        Optional<Measured<Mass>> mass,
        Optional<Measured<Length>> x,
        Optional<Measured<Length>> y,
        Optional<Measured<Length>> z,
        Optional<Measured<Length>> length,
        Optional<Measured<Length>> width,
        Optional<Measured<Length>> height,
        boolean carried)
        implements Part {
    public PartRecord {
        name = Checks.notBlank("name of a part", name);
    }

    /** A part of this build's own. */
    public PartRecord(
            String id,
            String name,
            String group,
            Optional<Measured<Mass>> mass,
            Optional<Measured<Length>> x,
            Optional<Measured<Length>> y,
            Optional<Measured<Length>> z,
            Optional<Measured<Length>> length,
            Optional<Measured<Length>> width,
            Optional<Measured<Length>> height) {
        this(id, name, group, mass, x, y, z, length, width, height, false);
    }

    /** A part of which nothing but the name is known. */
    public static PartRecord named(String name) {
        return new PartRecord(
                Ids.small(),
                name,
                "",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /** The same at another place. */
    public PartRecord at(
            Optional<Measured<Length>> stationX,
            Optional<Measured<Length>> stationY,
            Optional<Measured<Length>> stationZ) {
        return new PartRecord(id, name, group, mass, stationX, stationY, stationZ, length, width, height, carried);
    }

    PartRecord withMass(Optional<Measured<Mass>> changed) {
        return new PartRecord(id, name, group, changed, x, y, z, length, width, height, carried);
    }

    /** The same with a mass carried over from another build: as good as a guess until the part is weighed. */
    PartRecord carried(Optional<Measured<Mass>> guess) {
        return new PartRecord(id, name, group, guess, x, y, z, length, width, height, guess.isPresent());
    }
}
