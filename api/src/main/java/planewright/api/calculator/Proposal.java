package planewright.api.calculator;

import java.time.LocalDateTime;
import org.apiguardian.api.API;
import planewright.api.quantity.Measured;

/** Something a calculator would write into the journal; the builder looks, the program writes. */
@API(status = API.Status.MAINTAINED, since = "0.1.0")
public sealed interface Proposal permits Proposal.NewMeasurement, Proposal.NewSetUpValue, Proposal.NewJoint {
    /** What is written, by name. */
    String name();

    /**
     * A measurement that the computation stands for.
     *
     * @param name what it measures
     * @param value what came out
     */
    record NewMeasurement(String name, Measured<?> value) implements Proposal {}

    /**
     * A value to fly with.
     *
     * @param name what is set
     * @param value to what
     */
    record NewSetUpValue(String name, Measured<?> value) implements Proposal {}

    /**
     * A joint with the times that the computation found.
     *
     * @param name what is joined; not blank
     * @param material the adhesive or filler by class
     * @param start when it was closed
     * @param handsOffUntil until when nobody may touch it; not before the start
     * @param fullyCured when it carries its full load; not before {@code handsOffUntil}
     */
    record NewJoint(
            String name, String material, LocalDateTime start, LocalDateTime handsOffUntil, LocalDateTime fullyCured)
            implements Proposal {
        public NewJoint {
            if (name.isBlank()) {
                throw new IllegalArgumentException("name of a joint is empty; accepted: some words");
            }
            if (handsOffUntil.isBefore(start) || fullyCured.isBefore(handsOffUntil)) {
                throw new IllegalArgumentException("joint '" + name + "' starts " + start + ", hands off until "
                        + handsOffUntil + ", fully cured " + fullyCured + "; accepted: times in this order");
            }
        }
    }
}
