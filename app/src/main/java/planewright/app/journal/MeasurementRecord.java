package planewright.app.journal;

import planewright.api.journal.Measurement;
import planewright.api.quantity.Measured;
import planewright.shared.quantity.Written;

/** A measurement as the journal holds it: the quantity keeps the numbers as they were written. */
public record MeasurementRecord(String id, String name, Written quantity, String method) implements Measurement {
    public MeasurementRecord {
        name = Checks.notBlank("name of a measurement", name);
    }

    /** A new measurement. */
    public static MeasurementRecord of(String name, Written quantity, String method) {
        return new MeasurementRecord(Ids.small(), name, quantity, method);
    }

    @Override
    public Measured<?> value() {
        return quantity.measured();
    }

    @Override
    public String written() {
        return quantity.number();
    }
}
