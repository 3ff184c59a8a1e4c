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
import planewright.shared.quantity.QuantityText;

/** Which weighings cannot be computed with. */
final class WeighingChecks {
    /** Supports nearer to each other than this cannot tell where between them it balances, m. */
    private static final double LEAST_BASE = 0.001;

    /** An aircraft lighter than this is none, kg. */
    private static final double LEAST_MASS = 1e-6;

    private static final Measured<Length> FARTHEST = Measured.of(Refusals.FARTHEST, METRE);

    private final Refusals refusals = new Refusals();

    private WeighingChecks() {}

    static void require(Weighing.Inputs inputs, Map<String, List<Weighing.SupportLine>> rounds) throws UnsuitableInput {
        var checks = new WeighingChecks();
        if (rounds.isEmpty()) {
            checks.supports("empty", "2 or more", "Put a scale under each wheel or block");
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
            refusals.name(path + "name", "row " + number + " of Supports", line.name(), taken, "");
        } else if (!taken.add((line.round().strip() + "\n" + line.name().strip()).toLowerCase(Locale.ROOT))) {
            refusals.add(
                    path + "name",
                    name,
                    "there twice" + in(line.round().strip()),
                    "each support once in a round",
                    "Name the supports apart, or give a repeated weighing another word in 'Round'");
        }
        if (line.tare().in(KILOGRAM) > line.reading().in(KILOGRAM)) {
            refusals.add(
                    path + "tare",
                    "tare of " + name,
                    QuantityText.show(line.tare()),
                    "up to its reading of " + QuantityText.show(line.reading()),
                    "Read both again");
        }
        var greatest = Measured.of(1000, KILOGRAM);
        refusals.spread(path + "reading", "reading of " + name, line.reading(), greatest);
        refusals.spread(path + "tare", "tare of " + name, line.tare(), greatest);
        refusals.spread(path + "x", "x of " + name, line.x(), FARTHEST);
        refusals.spread(path + "y", "y of " + name, line.y(), FARTHEST);
    }

    private void round(String round, List<Weighing.SupportLine> lines) {
        if (lines.size() < 2) {
            supports(lines.size() + in(round), "2 or more in each round", "One scale alone tells only the mass");
        } else if (!apart(lines, Weighing.SupportLine::x)) {
            supports("all at one station" + in(round), "supports at different x", "One must stand ahead of the others");
        } else if (total(lines) < LEAST_MASS) {
            supports("without any load" + in(round), "readings above the tare", "Read the scales again");
        } else if (doubt(lines) > total(lines)) {
            supports(
                    "lighter in sum, "
                            + QuantityText.show(
                                    Measured.of(total(lines), KILOGRAM).to(GRAM)) + in(round)
                            + ", than the ± of the readings",
                    "readings that stand out of their ±",
                    "Take a finer scale, or a smaller ±");
        }
    }

    private void supports(String value, String accepted, String wayOut) {
        refusals.add("supports", "Supports", value, accepted, wayOut);
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

    private static String in(String round) {
        return round.isEmpty() ? "" : " in round '" + round + "'";
    }
}
