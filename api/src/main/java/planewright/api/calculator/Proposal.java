package planewright.api.calculator;

import planewright.api.quantity.Measured;

/** Something a calculator would write into the journal; the builder looks, the program writes. */
public sealed interface Proposal permits Proposal.NewMeasurement, Proposal.NewSetUpValue {
    /** What is written, by name. */
    String name();

    /** The value that is written. */
    Measured<?> value();

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
}
