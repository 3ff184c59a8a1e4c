package planewright.api.calculator;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Time;
import org.apiguardian.api.API;
import planewright.api.figure.Outline;
import planewright.api.journal.Planform;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;

/** Something a calculator would write into the journal; the builder looks, the program writes. */
@API(status = API.Status.MAINTAINED, since = "0.1.0")
public sealed interface Proposal
        permits Proposal.NewMeasurement,
                Proposal.NewSetUpValue,
                Proposal.NewJoint,
                Proposal.NewTask,
                Proposal.NewOutline,
                Proposal.NewPlanform,
                Proposal.NewText {
    /** {@return what is written, by name} */
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

    /**
     * Work that was done.
     *
     * @param name what was done: {@code cut the inlet}; not blank
     * @param handsOn how long hands were busy, above 0; empty where nobody knows
     */
    record NewTask(String name, Optional<Measured<Time>> handsOn) implements Proposal {
        public NewTask {
            if (name.isBlank()) {
                throw new IllegalArgumentException("name of a task is empty; accepted: some words");
            }
            if (handsOn.isPresent() && !(handsOn.get().in(Units.SECOND) > 0)) {
                throw new IllegalArgumentException("hands were busy on '" + name + "' for "
                        + handsOn.get().in(Units.MINUTE) + " min; accepted: above 0 min");
            }
        }
    }

    /**
     * A shape that becomes an outline template, with the build as where it came from.
     *
     * @param name what the template is called; not blank
     * @param outline the shape at true size
     * @param notes how it was found and what to mind, a paragraph an element
     */
    record NewOutline(String name, Outline outline, List<String> notes) implements Proposal {
        public NewOutline {
            if (name.isBlank()) {
                throw new IllegalArgumentException("name of an outline is empty; accepted: some words");
            }
            notes = List.copyOf(notes);
        }
    }

    /**
     * A shape that the build is to have from now on, in place of the one it had.
     *
     * @param name what is other about it, in a few words: {@code wing 20 mm aft}; not blank
     * @param planform all of it, with what stays as it was
     */
    record NewPlanform(String name, Planform planform) implements Proposal {
        public NewPlanform {
            if (name.isBlank()) {
                throw new IllegalArgumentException("name of a shape is empty; accepted: some words");
            }
        }
    }

    /**
     * Words for the entry.
     *
     * @param name what they tell, in a few words: {@code how to find the middle}
     * @param text paragraphs in CommonMark, at least one
     */
    record NewText(String name, List<String> text) implements Proposal {
        public NewText {
            text = List.copyOf(text);
            if (text.isEmpty() || text.stream().anyMatch(String::isBlank)) {
                throw new IllegalArgumentException(
                        "words on '" + name + "' hold an empty paragraph, or none; accepted: 1 or more with words");
            }
        }
    }
}
