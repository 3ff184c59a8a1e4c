package planewright.balance;

import static planewright.api.quantity.Units.GRAM;
import static planewright.api.quantity.Units.GRAM_MILLIMETRE;
import static planewright.api.quantity.Units.KILOGRAM;
import static planewright.api.quantity.Units.KILOGRAM_METRE;
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
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import planewright.api.calculator.Proposal;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.quantity.Measured;
import planewright.balance.Weighings.Combined;
import planewright.balance.Weighings.Estimate;
import planewright.balance.Weighings.Support;

/**
 * Puts the results of a weighing together.
 *
 * @param words in which it is told
 * @param inputs what was given
 * @param rounds the supports of each round, by its word
 * @param outcomes what each round says
 * @param lateral whether in every round supports stand beside each other, so that y can be told
 */
record WeighingAnswer(
        Words words,
        Weighing.Inputs inputs,
        Map<String, List<Weighing.SupportLine>> rounds,
        Map<String, Weighings.Outcome> outcomes,
        boolean lateral) {

    static WeighingAnswer of(Words words, Weighing.Inputs inputs) throws UnsuitableInput {
        var rounds = new LinkedHashMap<String, List<Weighing.SupportLine>>();
        inputs.supports()
                .forEach(line -> rounds.computeIfAbsent(line.round().strip(), round -> new ArrayList<>())
                        .add(line));
        WeighingChecks.require(words, inputs, rounds);
        var outcomes = new LinkedHashMap<String, Weighings.Outcome>();
        rounds.forEach((round, lines) -> outcomes.put(
                round,
                Weighings.weigh(lines.stream().map(WeighingAnswer::support).toList())));
        boolean lateral =
                rounds.values().stream().allMatch(lines -> WeighingChecks.apart(lines, Weighing.SupportLine::y));
        return new WeighingAnswer(words, inputs, rounds, outcomes, lateral);
    }

    Weighing.Results results() {
        var mass = grams(mass());
        var x = millimetres(x());
        boolean several = outcomes.size() > 1;
        var figures = new WeighingFigures(this);
        return new Weighing.Results(
                mass,
                x,
                lateral ? Optional.of(millimetres(y())) : Optional.empty(),
                several ? Optional.of(Measured.of(x().worstResidual(), METRE).to(MILLIMETRE)) : Optional.empty(),
                agreement().map(ratio -> Measured.of(ratio, NUMBER)),
                new WeighingFindings(this).all(),
                loads(),
                several ? roundLines() : List.of(),
                figures.plan(),
                figures.side(),
                figures.chart(),
                several ? Optional.of(figures.rounds()) : Optional.empty(),
                List.of(
                        new Proposal.NewMeasurement("all-up mass", mass),
                        new Proposal.NewMeasurement("balance point", x),
                        new Proposal.NewSetUpValue("balance point", x)));
    }

    Combined mass() {
        return combined(Weighings.Outcome::mass);
    }

    Combined x() {
        return combined(Weighings.Outcome::x);
    }

    Combined y() {
        return combined(Weighings.Outcome::y);
    }

    /** The worst Birge ratio of mass, x and, where it can be told, y; empty where nothing can be judged. */
    Optional<Double> agreement() {
        return Stream.of(mass(), x(), y())
                .limit(lateral ? 3 : 2)
                .flatMap(combined -> combined.birgeRatio().stream())
                .max(Double::compare);
    }

    /** Net loads, their shares of their round's mass and their moments, by support. */
    List<Weighing.LoadLine> loads() {
        var loads = new ArrayList<Weighing.LoadLine>();
        rounds.forEach((round, lines) -> {
            double total = outcomes.get(round).mass().value();
            for (var line : lines) {
                var support = support(line);
                double arm = support.x().value();
                double doubt = Math.hypot(
                        arm * netSpread(line), support.load() * support.x().spread());
                loads.add(new Weighing.LoadLine(
                        line.name(),
                        round,
                        net(line),
                        Measured.of(100 * support.load() / total, PERCENT),
                        line.x().to(MILLIMETRE),
                        line.y().to(MILLIMETRE),
                        measured(support.load() * arm, doubt, KILOGRAM_METRE).to(GRAM_MILLIMETRE)));
            }
        });
        return loads;
    }

    /** What a support carries. */
    static Measured<Mass> net(Weighing.SupportLine line) {
        return measured(support(line).load(), netSpread(line), KILOGRAM).to(GRAM);
    }

    private Combined combined(Function<Weighings.Outcome, Estimate> which) {
        return Weighings.combine(outcomes.values().stream().map(which).toList());
    }

    /** What each round says by itself. */
    List<Weighing.RoundLine> roundLines() {
        return outcomes.entrySet().stream()
                .map(round -> new Weighing.RoundLine(
                        round.getKey().isEmpty() ? words.say("without a word") : round.getKey(),
                        measured(
                                        round.getValue().mass().value(),
                                        round.getValue().mass().spread(),
                                        KILOGRAM)
                                .to(GRAM),
                        millimetres(round.getValue().x()),
                        lateral ? Optional.of(millimetres(round.getValue().y())) : Optional.empty()))
                .toList();
    }

    /**
     * Every reading was taken anew. A support's station, and the tare of its blocks, were measured once for all rounds that
     * write them alike.
     */
    private static Support support(Weighing.SupportLine line) {
        var name = line.name().strip();
        return new Support(
                once("x of " + name, line.x(), METRE),
                once("y of " + name, line.y(), METRE),
                new Weighings.Reading(
                        line.reading().in(KILOGRAM),
                        Refusals.spread(line.reading(), KILOGRAM),
                        "reading of " + name + " in " + line.round().strip()),
                once("tare of " + name, line.tare(), KILOGRAM));
    }

    private static <Q extends Quantity<Q>> Weighings.Reading once(String what, Measured<Q> measured, Unit<Q> unit) {
        double value = measured.in(unit);
        double spread = Refusals.spread(measured, unit);
        return new Weighings.Reading(value, spread, what + " " + value + " ± " + spread);
    }

    private static double netSpread(Weighing.SupportLine line) {
        var support = support(line);
        return Math.hypot(support.gross().spread(), support.tare().spread());
    }

    private static Measured<Mass> grams(Combined combined) {
        return measured(combined.value(), combined.spread(), KILOGRAM).to(GRAM);
    }

    private static Measured<Length> millimetres(Combined combined) {
        return measured(combined.value(), combined.spread(), METRE).to(MILLIMETRE);
    }

    private static Measured<Length> millimetres(Estimate estimate) {
        return measured(estimate.value(), estimate.spread(), METRE).to(MILLIMETRE);
    }

    /** A value with its standard uncertainty; without one where none is known, or none but what adding doubles leaves. */
    static <Q extends Quantity<Q>> Measured<Q> measured(double value, double spread, Unit<Q> unit) {
        return spread >= Refusals.LEAST_SPREAD ? Measured.of(value, spread, unit) : Measured.of(value, unit);
    }
}
