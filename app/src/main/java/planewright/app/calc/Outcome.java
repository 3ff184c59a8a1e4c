package planewright.app.calc;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.stream.Collectors;
import planewright.api.calculator.Finding;
import planewright.api.calculator.InputProblem;
import planewright.shared.quantity.UnitChoice;

/** How a computation ended. */
public sealed interface Outcome {
    /**
     * It answered.
     *
     * @param inputs what it was given
     * @param results the record it made
     * @param json the same as JSON
     * @param unusual inputs that are seldom so
     * @param units in which its sentences tell quantities
     */
    record Answered(ObjectNode inputs, Record results, ObjectNode json, List<Finding> unusual, UnitChoice units)
            implements Outcome {}

    /**
     * It was given something it cannot compute with.
     *
     * @param problems all that was found, at least one
     */
    record Refused(List<InputProblem> problems) implements Outcome {
        /** All of it in one line. */
        public String message() {
            return problems.stream().map(InputProblem::message).collect(Collectors.joining("; "));
        }
    }

    /** The builder stopped it. */
    record Stopped() implements Outcome {}

    /**
     * The calculator itself is at fault.
     *
     * @param message which, and how, in words for a builder
     * @param cause for the log
     */
    record Failed(String message, Throwable cause) implements Outcome {}
}
