package planewright.balance;

import static planewright.api.quantity.Units.GRAM;
import static planewright.api.quantity.Units.KILOGRAM;
import static planewright.api.quantity.Units.METRE;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import javax.measure.quantity.Length;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.quantity.Measured;

/** Which weighings cannot be computed with. */
final class WeighingChecks {
    /** Supports nearer to each other than this cannot tell where between them it balances, m. */
    private static final double LEAST_BASE = 0.001;

    /** An aircraft lighter than this is none, kg. */
    private static final double LEAST_MASS = 1e-6;

    private static final Measured<Length> FARTHEST = Measured.of(Refusals.FARTHEST, METRE);

    private final Words words;
    private final Refusals refusals;

    private WeighingChecks(Words words) {
        this.words = words;
        this.refusals = new Refusals(words);
    }

    static void require(Words words, Weighing.Inputs inputs, Map<String, List<Weighing.SupportLine>> rounds)
            throws UnsuitableInput {
        var checks = new WeighingChecks(words);
        if (rounds.isEmpty()) {
            checks.supports(
                    words.say("empty"), words.say("2 or more"), words.say("Put a scale under each wheel or block"));
        }
        var taken = new HashSet<String>();
        for (int i = 0; i < inputs.supports().size(); i++) {
            checks.line("supports[" + i + "].", i + 1, inputs.supports().get(i), taken);
        }
        rounds.forEach(checks::round);
        checks.refusals.shape(inputs.planform());
        checks.refusals.throwIfAny();
    }

    /** Whether supports stand far enough from each other along an axis. */
    static boolean apart(List<Weighing.SupportLine> lines, Function<Weighing.SupportLine, Measured<Length>> station) {
        var stations = lines.stream()
                .mapToDouble(line -> station.apply(line).in(METRE))
                .summaryStatistics();
        return stations.getMax() - stations.getMin() > LEAST_BASE;
    }

    private void line(String path, int number, Weighing.SupportLine line, HashSet<String> taken) {
        var name = "'" + line.name() + "'";
        if (line.name().isBlank()) {
            refusals.name(path + "name", words.say("row {0} of Supports", number), line.name(), taken, "");
        } else if (!taken.add((line.round().strip() + "\n" + line.name().strip()).toLowerCase(Locale.ROOT))) {
            refusals.add(
                    path + "name",
                    name,
                    in(words.say("there twice"), line.round().strip()),
                    words.say("each support once in a round"),
                    words.say("Name the supports apart, or give a repeated weighing another word in 'Round'"));
        }
        if (line.tare().in(KILOGRAM) > line.reading().in(KILOGRAM)) {
            refusals.add(
                    path + "tare",
                    words.say("tare of {0}", name),
                    words.show(line.tare()),
                    words.say("up to its reading of {0}", words.show(line.reading())),
                    words.say("Read both again"));
        }
        var greatest = Measured.of(1000, KILOGRAM);
        refusals.spread(path + "reading", words.say("reading of {0}", name), line.reading(), greatest);
        refusals.spread(path + "tare", words.say("tare of {0}", name), line.tare(), greatest);
        refusals.spread(path + "x", words.say("x of {0}", name), line.x(), FARTHEST);
        refusals.spread(path + "y", words.say("y of {0}", name), line.y(), FARTHEST);
    }

    private void round(String round, List<Weighing.SupportLine> lines) {
        if (lines.size() < 2) {
            supports(
                    in(Integer.toString(lines.size()), round),
                    words.say("2 or more in each round"),
                    words.say("One scale alone tells only the mass"));
        } else if (!apart(lines, Weighing.SupportLine::x)) {
            supports(
                    in(words.say("all at one station"), round),
                    words.say("supports at different x"),
                    words.say("One must stand ahead of the others"));
        } else if (total(lines) < LEAST_MASS) {
            supports(
                    in(words.say("without any load"), round),
                    words.say("readings above the tare"),
                    words.say("Read the scales again"));
        } else if (doubt(lines) > total(lines)) {
            supports(
                    words.say(
                            "lighter in sum, {0}, than the ± of the readings",
                            in(words.show(Measured.of(total(lines), KILOGRAM).to(GRAM)), round)),
                    words.say("readings that stand out of their ±"),
                    words.say("Take a finer scale, or a smaller ±"));
        }
    }

    private void supports(String value, String accepted, String wayOut) {
        refusals.add("supports", words.say("Supports"), value, accepted, wayOut);
    }

    private static double total(List<Weighing.SupportLine> lines) {
        return lines.stream()
                .mapToDouble(line -> line.reading().in(KILOGRAM) - line.tare().in(KILOGRAM))
                .sum();
    }

    private static double doubt(List<Weighing.SupportLine> lines) {
        return lines.stream()
                .mapToDouble(line -> Math.hypot(
                        line.reading().spreadIn(KILOGRAM), line.tare().spreadIn(KILOGRAM)))
                .reduce(0, Math::hypot);
    }

    private String in(String said, String round) {
        return round.isEmpty() ? said : words.say("{0} in round '{1}'", said, round);
    }
}
