package planewright.balance;

import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import planewright.api.calculator.Language;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;

/** Short ways to write ledgers: pounds and inches as in the handbooks, or kilograms and metres. */
final class Lines {
    private Lines() {}

    static Ledger.PartLine part(String name, double pounds, double inches) {
        return part(name, Measured.of(pounds, Units.POUND), Measured.of(inches, Units.INCH), 0);
    }

    static Ledger.PartLine part(String name, Measured<Mass> mass, Measured<Length> x, double millimetresRight) {
        return new Ledger.PartLine(
                name,
                Optional.of(mass),
                Optional.of(x),
                Measured.of(millimetresRight, Units.MILLIMETRE),
                Measured.of(0, Units.MILLIMETRE),
                "",
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    static Ledger.Results ledger(Ledger.PartLine... parts) throws UnsuitableInput {
        return ledger(List.of(parts));
    }

    static Ledger.Results ledger(List<Ledger.PartLine> parts) throws UnsuitableInput {
        return LedgerAnswer.of(new Words(Language.ENGLISH), inputs(Optional.empty(), parts))
                .results();
    }

    static Ledger.Results ledger(double targetInches, Ledger.PartLine... parts) throws UnsuitableInput {
        return LedgerAnswer.of(
                        new Words(Language.ENGLISH),
                        inputs(Optional.of(Measured.of(targetInches, Units.INCH)), List.of(parts)))
                .results();
    }

    static Ledger.Inputs inputs(Optional<Measured<Length>> target, List<Ledger.PartLine> parts) {
        return new Ledger.Inputs(
                List.copyOf(parts),
                target,
                Optional.empty(),
                Measured.of(2, Units.MILLIMETRE),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "",
                Optional.empty());
    }

    static MassPoint at(double mass, double x, double y, double length) {
        return new MassPoint(
                mass,
                0,
                new MassPoint.Vector(x, y, 0),
                MassPoint.Vector.ZERO,
                new MassPoint.Vector(length, 0, 0),
                MassPoint.Vector.ZERO);
    }

    static MassPoint solid(double mass, double length, double width, double height) {
        return new MassPoint(
                mass,
                0,
                MassPoint.Vector.ZERO,
                MassPoint.Vector.ZERO,
                new MassPoint.Vector(length, width, height),
                MassPoint.Vector.ZERO);
    }
}
