package planewright.app.journal;

import planewright.api.journal.SetUpValue;
import planewright.api.quantity.Measured;
import planewright.shared.quantity.Written;

/** A value of the set-up as the journal holds it. */
public record SetUpRecord(String name, Written quantity) implements SetUpValue {
    public SetUpRecord {
        name = Checks.notBlank("name of a set-up value", name);
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
