package planewright.balance;

import static planewright.api.quantity.Units.GRAM;
import static planewright.api.quantity.Units.KILOGRAM;
import static planewright.api.quantity.Units.METRE;
import static planewright.api.quantity.Units.MILLIMETRE;
import static planewright.api.quantity.Units.NUMBER;
import static planewright.api.quantity.Units.PERCENT;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import planewright.api.calculator.InputProblem;
import planewright.api.calculator.Proposal;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.figure.Chart;
import planewright.api.figure.Drawing;
import planewright.api.figure.Point;
import planewright.api.quantity.Measured;
import planewright.shared.planform.Outlines;
import planewright.shared.quantity.QuantityText;

/** Puts the results of a weighing together. */
record WeighingAnswer(
        Weighing.Inputs inputs,
        Map<String, List<Weighing.SupportLine>> rounds,
        Map<String, Weighings.Outcome> outcomes,
        boolean lateral) {
    /** Supports nearer to each other than this cannot tell where between them it balances, m. */
    private static final double LEAST_BASE = 0.001;

    private static final double MM = 1000;

    static WeighingAnswer of(Weighing.Inputs inputs) throws UnsuitableInput {
        var rounds = new LinkedHashMap<String, List<Weighing.SupportLine>>();
        inputs.supports()
                .forEach(line -> rounds.computeIfAbsent(line.round().strip(), round -> new ArrayList<>())
                        .add(line));
        requireSuitable(inputs, rounds);
        var outcomes = new LinkedHashMap<String, Weighings.Outcome>();
        rounds.forEach((round, lines) -> outcomes.put(
                round,
                Weighings.weigh(lines.stream().map(WeighingAnswer::support).toList())));
        boolean lateral = rounds.values().stream().allMatch(lines -> base(lines, Weighing.SupportLine::y) > LEAST_BASE);
        return new WeighingAnswer(inputs, rounds, outcomes, lateral);
    }

    Weighing.Results results() {
        var mass = grams(mass().best());
        var x = millimetres(x().best());
        boolean several = outcomes.size() > 1;
        return new Weighing.Results(
                mass,
                x,
                lateral ? Optional.of(millimetres(y().best())) : Optional.empty(),
                several ? Optional.of(Measured.of(MM * x().worstResidual(), MILLIMETRE)) : Optional.empty(),
                several ? Optional.of(Measured.of(x().birgeRatio(), NUMBER)) : Optional.empty(),
                new WeighingFindings(this).all(),
                loads(),
                several ? roundLines() : List.of(),
                plan(),
                chart(),
                List.of(
                        new Proposal.NewMeasurement("all-up mass", mass),
                        new Proposal.NewMeasurement("balance point", x)));
    }

    Weighings.Combined mass() {
        return combined(Weighings.Outcome::mass);
    }

    Weighings.Combined x() {
        return combined(Weighings.Outcome::x);
    }

    Weighings.Combined y() {
        return combined(Weighings.Outcome::y);
    }

    /** Net loads as shares of their round's mass, by support. */
    List<Weighing.LoadLine> loads() {
        var loads = new ArrayList<Weighing.LoadLine>();
        rounds.forEach((round, lines) -> {
            double total = outcomes.get(round).mass().value();
            for (var line : lines) {
                var support = support(line);
                loads.add(new Weighing.LoadLine(
                        line.name(),
                        round,
                        grams(new Weighings.Estimate(support.load(), support.loadSpread())),
                        Measured.of(100 * support.load() / total, PERCENT),
                        line.x().to(MILLIMETRE),
                        line.y().to(MILLIMETRE)));
            }
        });
        return loads;
    }

    private Weighings.Combined combined(Function<Weighings.Outcome, Weighings.Estimate> which) {
        return Weighings.combine(outcomes.values().stream().map(which).toList());
    }

    private List<Weighing.RoundLine> roundLines() {
        return outcomes.entrySet().stream()
                .map(round -> new Weighing.RoundLine(
                        round.getKey().isEmpty() ? "without a word" : round.getKey(),
                        grams(round.getValue().mass()),
                        millimetres(round.getValue().x()),
                        lateral ? Optional.of(millimetres(round.getValue().y())) : Optional.empty()))
                .toList();
    }

    private Drawing plan() {
        var layers = new ArrayList<Drawing.Layer>();
        inputs.planform()
                .ifPresent(planform ->
                        layers.add(new Drawing.Layer(Drawing.Use.OUTLINE, List.copyOf(Outlines.plan(planform)))));
        var marks = new ArrayList<Drawing.Shape>();
        for (var line : inputs.supports()) {
            marks.add(new Drawing.Mark(
                    at(line.x().in(METRE), line.y().in(METRE)),
                    Drawing.Sign.SUPPORT,
                    line.name() + ", " + QuantityText.show(grams(net(line)))));
        }
        double y = lateral ? y().best().value() : 0;
        marks.add(new Drawing.Mark(at(0, 0), Drawing.Sign.DATUM, "datum"));
        inputs.targetX()
                .ifPresent(
                        target -> marks.add(new Drawing.Mark(at(target.in(METRE), 0), Drawing.Sign.TARGET, "target")));
        marks.add(new Drawing.Mark(at(x().best().value(), y), Drawing.Sign.BALANCE_POINT, "balances here"));
        layers.add(new Drawing.Layer(
                Drawing.Use.DIMENSION,
                List.of(new Drawing.Dimension(
                        at(0, y),
                        at(x().best().value(), y),
                        QuantityText.show(Measured.of(Math.rint(x().best().value() * 1e4) / 10, MILLIMETRE))))));
        layers.add(new Drawing.Layer(Drawing.Use.MARK, marks));
        return new Drawing("From above", layers);
    }

    private Chart chart() {
        return new Chart.Bars(
                "Net load on each support",
                "Support",
                new Chart.Axis("Load", "g"),
                loads().stream()
                        .map(load -> new Chart.Bar(
                                load.round().isEmpty() ? load.name() : load.name() + ", " + load.round(),
                                load.load().in(GRAM),
                                load.load().spreadIn(GRAM)))
                        .toList());
    }

    private static void requireSuitable(Weighing.Inputs inputs, Map<String, List<Weighing.SupportLine>> rounds)
            throws UnsuitableInput {
        var problems = new ArrayList<InputProblem>();
        for (int i = 0; i < inputs.supports().size(); i++) {
            var line = inputs.supports().get(i);
            if (line.tare().in(KILOGRAM) > line.reading().in(KILOGRAM)) {
                problems.add(new InputProblem(
                        "supports[" + i + "].tare",
                        "tare of '" + line.name() + "'",
                        QuantityText.show(line.tare()),
                        "up to its reading of " + QuantityText.show(line.reading()),
                        "Read both again"));
            }
        }
        if (rounds.isEmpty()) {
            problems.add(problem("empty", "2 or more", "Put a scale under each wheel or block"));
        }
        rounds.forEach((round, lines) -> requireSuitable(round, lines, problems));
        if (!problems.isEmpty()) {
            throw new UnsuitableInput(problems);
        }
    }

    private static void requireSuitable(String round, List<Weighing.SupportLine> lines, List<InputProblem> problems) {
        var which = round.isEmpty() ? "" : " in round '" + round + "'";
        if (lines.size() < 2) {
            problems.add(
                    problem(lines.size() + which, "2 or more in each round", "One scale alone tells only the mass"));
        } else if (base(lines, Weighing.SupportLine::x) <= LEAST_BASE) {
            problems.add(problem(
                    "all at one station" + which, "supports at different x", "One must stand ahead of the others"));
        } else if (lines.stream().mapToDouble(line -> net(line).value()).sum() <= 0) {
            problems.add(problem("without any load" + which, "readings above the tare", "Read the scales again"));
        }
    }

    private static InputProblem problem(String value, String accepted, String wayOut) {
        return new InputProblem("supports", "Supports", value, accepted, wayOut);
    }

    private static double base(
            List<Weighing.SupportLine> lines, Function<Weighing.SupportLine, Measured<Length>> station) {
        var stations = lines.stream()
                .mapToDouble(line -> station.apply(line).in(METRE))
                .summaryStatistics();
        return stations.getMax() - stations.getMin();
    }

    private static Weighings.Support support(Weighing.SupportLine line) {
        var net = net(line);
        return new Weighings.Support(
                line.x().in(METRE),
                line.y().in(METRE),
                net.value(),
                line.x().spreadIn(METRE),
                line.y().spreadIn(METRE),
                net.spread());
    }

    private static Weighings.Estimate net(Weighing.SupportLine line) {
        return new Weighings.Estimate(
                line.reading().in(KILOGRAM) - line.tare().in(KILOGRAM),
                Math.hypot(line.reading().spreadIn(KILOGRAM), line.tare().spreadIn(KILOGRAM)));
    }

    private static Measured<Mass> grams(Weighings.Estimate estimate) {
        return (estimate.spread() > 0
                        ? Measured.of(estimate.value(), estimate.spread(), KILOGRAM)
                        : Measured.of(estimate.value(), KILOGRAM))
                .to(GRAM);
    }

    private static Measured<Length> millimetres(Weighings.Estimate estimate) {
        return (estimate.spread() > 0
                        ? Measured.of(estimate.value(), estimate.spread(), METRE)
                        : Measured.of(estimate.value(), METRE))
                .to(MILLIMETRE);
    }

    private static Point at(double x, double y) {
        return new Point(MM * y, -MM * x);
    }
}
