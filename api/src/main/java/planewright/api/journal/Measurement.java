package planewright.api.journal;

import planewright.api.quantity.Measured;

/** A named value: what was measured, what came out, how sure and how taken. */
public interface Measurement {
    /** Short and stable within its entry. */
    String id();

    /** What was measured: {@code left wing panel}. */
    String name();

    /** What came out. */
    Measured<?> value();

    /** The number as it was written: {@code 3 1/2}. */
    String written();

    /** How it was taken: {@code kitchen scale}; may be empty. */
    String method();
}
