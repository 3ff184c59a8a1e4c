package planewright.balance;

import static planewright.api.quantity.Units.GRAM;
import static planewright.api.quantity.Units.MILLIMETRE;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.journal.Planform;
import planewright.api.quantity.Measured;

/** A short way to ask for ballast, in grams and millimetres. */
final class BallastLines {
    private final List<Ballast.PartLine> parts = new ArrayList<>();
    private final List<Ballast.MovableLine> movable = new ArrayList<>();
    private final List<Ballast.PocketLine> pockets = new ArrayList<>();
    private final List<Ballast.StockLine> stock = new ArrayList<>();
    private Optional<String> leaveOut = Optional.empty();
    private Optional<Double> targetX = Optional.empty();
    private double tolerance = 2;
    private boolean sideways;
    private double toleranceY = 1;
    private Ballast.Coins coins = Ballast.Coins.NONE;
    private Optional<Double> lead = Optional.empty();
    private Optional<Planform> planform = Optional.empty();

    BallastLines part(String name, double grams, double x, double y) {
        return part(name, Measured.of(grams, GRAM), Measured.of(x, MILLIMETRE), y);
    }

    BallastLines part(
            String name,
            Measured<javax.measure.quantity.Mass> mass,
            Measured<javax.measure.quantity.Length> x,
            double y) {
        parts.add(new Ballast.PartLine(name, Optional.of(mass), Optional.of(x), Measured.of(y, MILLIMETRE)));
        return this;
    }

    BallastLines unweighed(String name) {
        parts.add(new Ballast.PartLine(name, Optional.empty(), Optional.empty(), Measured.of(0, MILLIMETRE)));
        return this;
    }

    BallastLines movable(String part, double from, double to) {
        movable.add(new Ballast.MovableLine(part, Measured.of(from, MILLIMETRE), Measured.of(to, MILLIMETRE)));
        return this;
    }

    BallastLines pocket(String name, double x, double y) {
        return pocket(name, x, y, Optional.empty(), Optional.empty());
    }

    BallastLines pocket(String name, double x, double y, Optional<Integer> pieces, Optional<Double> grams) {
        pockets.add(new Ballast.PocketLine(
                name,
                Measured.of(x, MILLIMETRE),
                Measured.of(y, MILLIMETRE),
                pieces,
                grams.map(most -> Measured.of(most, GRAM))));
        return this;
    }

    BallastLines stock(String name, double grams, int count) {
        stock.add(new Ballast.StockLine(name, Measured.of(grams, GRAM), count));
        return this;
    }

    BallastLines coins(Ballast.Coins known) {
        coins = known;
        return this;
    }

    BallastLines lead(double grams) {
        lead = Optional.of(grams);
        return this;
    }

    BallastLines leaveOut(String part) {
        leaveOut = Optional.of(part);
        return this;
    }

    BallastLines target(double x, double within) {
        targetX = Optional.of(x);
        tolerance = within;
        return this;
    }

    BallastLines sideways(double within) {
        sideways = true;
        toleranceY = within;
        return this;
    }

    BallastLines shape(Planform shape) {
        planform = Optional.of(shape);
        return this;
    }

    Ballast.Inputs inputs() {
        return new Ballast.Inputs(
                List.copyOf(parts),
                leaveOut,
                targetX.map(x -> Measured.of(x, MILLIMETRE)),
                Measured.of(tolerance, MILLIMETRE),
                sideways,
                Measured.of(0, MILLIMETRE),
                Measured.of(toleranceY, MILLIMETRE),
                List.copyOf(movable),
                List.copyOf(pockets),
                List.copyOf(stock),
                coins,
                10,
                lead.map(grams -> Measured.of(grams, GRAM)),
                Measured.of(0.5, GRAM),
                planform);
    }

    Ballast.Results answer() throws UnsuitableInput {
        return new Ballast().compute(inputs(), LightestPiecesTest.unwatched());
    }
}
