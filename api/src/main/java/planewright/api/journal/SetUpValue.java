package planewright.api.journal;

import planewright.api.quantity.Measured;

/** One value the aircraft flies with: {@code elevator throw, low rate}. */
public interface SetUpValue {
    String name();

    Measured<?> value();

    /** The number as it was written. */
    String written();
}
