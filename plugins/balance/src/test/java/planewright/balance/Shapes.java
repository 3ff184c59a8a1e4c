package planewright.balance;

import static planewright.api.quantity.Units.DEGREE;
import static planewright.api.quantity.Units.METRE;
import static planewright.api.quantity.Units.METRE_PER_SECOND;
import static planewright.api.quantity.Units.MILLIMETRE;
import static planewright.api.quantity.Units.NUMBER;
import static planewright.api.quantity.Units.PERCENT;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Speed;
import planewright.api.calculator.Run;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.journal.JournalReader;
import planewright.api.journal.Planform;
import planewright.api.journal.Planform.Body;
import planewright.api.journal.Planform.Panel;
import planewright.api.journal.Planform.Surface;
import planewright.api.quantity.Measured;

/** Inputs of a balance range, built up; lengths of shapes in metres. */
final class Shapes {
    static final Run RUN = new Run() {
        @Override
        public void progress(double done, String doing) {}

        @Override
        public JournalReader journal() {
            throw new UnsupportedOperationException("the range needs no journal");
        }

        @Override
        public LocalDateTime now() {
            return LocalDateTime.of(2026, 1, 1, 12, 0);
        }
    };

    private final Planform planform;
    private final List<BalanceRange.SectionLine> sections = new ArrayList<>();
    private final List<BalanceRange.ControlLine> controls = new ArrayList<>();
    private String layout = "";
    private Optional<Measured<Dimensionless>> marginFrom = Optional.empty();
    private Optional<Measured<Dimensionless>> marginTo = Optional.empty();
    private Optional<Measured<Length>> balancePoint = Optional.empty();
    private Optional<Measured<Mass>> mass = Optional.empty();
    private Optional<Measured<Speed>> speed = Optional.empty();

    Shapes(Surface... surfaces) {
        this(new Planform(List.of(surfaces), List.<Body>of()));
    }

    Shapes(Planform planform) {
        this.planform = planform;
    }

    static Surface surface(String name, double x, boolean mirrored, Panel... panels) {
        return new Surface(name, x, 0, 0, mirrored, List.of(panels));
    }

    Shapes layout(String words) {
        layout = words;
        return this;
    }

    Shapes margin(double from, double to) {
        marginFrom = Optional.of(Measured.of(from, PERCENT));
        marginTo = Optional.of(Measured.of(to, PERCENT));
        return this;
    }

    Shapes balancesAt(double millimetres) {
        return balancesAt(Optional.of(Measured.of(millimetres, MILLIMETRE)));
    }

    Shapes balancesAt(Optional<Measured<Length>> point) {
        balancePoint = point;
        return this;
    }

    Shapes mass(Measured<Mass> weighed) {
        mass = Optional.of(weighed);
        return this;
    }

    Shapes speed(double metresPerSecond) {
        speed = Optional.of(Measured.of(metresPerSecond, METRE_PER_SECOND));
        return this;
    }

    /** A section: degrees at which it is set and lifts nothing, moment, greatest lift ± a tenth. */
    Shapes section(String surface, double setAt, double zeroLift, double moment, double mostLift) {
        sections.add(new BalanceRange.SectionLine(
                surface,
                Optional.of(Measured.of(setAt, DEGREE)),
                Optional.of(Measured.of(zeroLift, DEGREE)),
                Optional.of(Measured.of(moment, NUMBER)),
                Optional.of(Measured.of(mostLift, 0.1, NUMBER))));
        return this;
    }

    /** A control surface: from and to along its surface and hinge along the chord, in percent. */
    Shapes control(String name, String surface, Planform.Role does, double from, double to, double hinge) {
        controls.add(new BalanceRange.ControlLine(
                name,
                surface,
                does,
                Measured.of(from, PERCENT),
                Measured.of(to, PERCENT),
                Measured.of(hinge, PERCENT),
                Optional.empty()));
        return this;
    }

    BalanceRange.Inputs inputs() {
        return new BalanceRange.Inputs(
                planform,
                layout,
                marginFrom,
                marginTo,
                balancePoint,
                mass,
                speed,
                Measured.of(0, METRE),
                Optional.empty(),
                sections,
                controls,
                "leading edge");
    }

    BalanceRangeResults results() throws UnsuitableInput {
        return new BalanceRange().compute(inputs(), RUN);
    }
}
