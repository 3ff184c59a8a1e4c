package planewright.app.journal;

import java.util.Optional;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import planewright.api.journal.Part;
import planewright.api.quantity.Measured;

/** A line of the mass ledger as the journal holds it. */
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
        Optional<Measured<Length>> height)
        implements Part {
    public PartRecord {
        name = Checks.notBlank("name of a part", name);
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
}
