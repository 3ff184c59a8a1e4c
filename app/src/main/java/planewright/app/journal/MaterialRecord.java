package planewright.app.journal;

import java.util.Optional;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import planewright.api.journal.OwnMaterial;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;

/** A material as its user knows it. */
public record MaterialRecord(
        String id,
        String name,
        String material,
        Optional<Measured<Time>> workingTime,
        Optional<Measured<Time>> flashOff,
        Optional<Measured<Time>> handsOff,
        Optional<Measured<Time>> fullyCured,
        Optional<Measured<Temperature>> at,
        String note)
        implements OwnMaterial {
    private static final double LONGEST_DAYS = 90;

    public MaterialRecord {
        name = Checks.notBlank("name of a material", name);
        material = Checks.notBlank("class of the material '" + name + "'", material);
        requireTime(name, "working time", workingTime);
        requireTime(name, "drying time", flashOff);
        requireTime(name, "time of hands off", handsOff);
        requireTime(name, "time to full cure", fullyCured);
        if (handsOff.isPresent()
                && fullyCured.isPresent()
                && fullyCured.get().in(Units.SECOND) < handsOff.get().in(Units.SECOND)) {
            throw new IllegalArgumentException("material '" + name
                    + "' is fully cured before it may be touched; accepted: a full cure no shorter than hands off");
        }
    }

    private static void requireTime(String name, String what, Optional<Measured<Time>> time) {
        double days = time.map(known -> known.in(Units.DAY)).orElse(1.0);
        if (!(days > 0) || !(days <= LONGEST_DAYS)) {
            throw new IllegalArgumentException(what + " of the material '" + name + "' is " + days
                    + " d; accepted: above 0 and up to " + (int) LONGEST_DAYS + " d");
        }
    }
}
