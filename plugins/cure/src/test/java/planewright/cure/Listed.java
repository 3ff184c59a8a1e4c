package planewright.cure;

import java.util.Optional;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import planewright.api.journal.OwnMaterial;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;

/** A material of the journal's list of which somebody knows until when to keep hands off. */
record Listed(String name, String material, Measured<Time> touched, double celsius) implements OwnMaterial {
    @Override
    public String id() {
        return name;
    }

    @Override
    public Optional<Measured<Time>> workingTime() {
        return Optional.empty();
    }

    @Override
    public Optional<Measured<Time>> flashOff() {
        return Optional.empty();
    }

    @Override
    public Optional<Measured<Time>> handsOff() {
        return Optional.of(touched);
    }

    @Override
    public Optional<Measured<Time>> fullyCured() {
        return Optional.empty();
    }

    @Override
    public Optional<Measured<Temperature>> at() {
        return Optional.of(Measured.of(celsius, Units.CELSIUS));
    }

    @Override
    public String note() {
        return "";
    }
}
