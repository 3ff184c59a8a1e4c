package planewright.app.journal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.Unit;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.shared.quantity.QuantityText;

/** Two builds side by side: what they are, fly with, weigh and measured last, by the names that both give to it. */
public final class Comparison {
    private Comparison() {}

    /** Kinds of what is compared. */
    public enum What {
        FACT("fact"),
        SETTING("set-up value"),
        PART("part"),
        MEASUREMENT("measurement");

        private final String word;

        What(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /**
     * A thing of which at least one of the builds says something.
     *
     * @param first what the first build says, for people; empty where it says nothing
     * @param second likewise
     * @param difference the second less the first in the first one's unit, with a share where that has a meaning; empty where
     *     one is missing or they are of different kinds
     */
    public record Row(What what, String name, String first, String second, String difference) {
        /** Whether the two say the same. */
        public boolean isAlike() {
            return first.equals(second);
        }
    }

    /** All that the two say. Reads both logs. */
    public static List<Row> of(OpenJournal journal, BuildRecord first, BuildRecord second) {
        var rows = new ArrayList<Row>();
        rows.addAll(facts(journal, first, second));
        rows.addAll(rows(What.SETTING, settings(journal, first), settings(journal, second)));
        rows.addAll(rows(What.PART, parts(journal, first), parts(journal, second)));
        rows.addAll(rows(What.MEASUREMENT, measurements(journal, first), measurements(journal, second)));
        return rows;
    }

    private static List<Row> facts(OpenJournal journal, BuildRecord first, BuildRecord second) {
        var rows = new ArrayList<Row>();
        rows.add(new Row(What.FACT, "layout", first.layout(), second.layout(), ""));
        rows.add(new Row(What.FACT, "life", first.life().word(), second.life().word(), ""));
        rows.addAll(rows(What.FACT, facts(journal, first), facts(journal, second)));
        return rows;
    }

    private static Map<String, Named> facts(OpenJournal journal, BuildRecord build) {
        var named = new LinkedHashMap<String, Named>();
        BuildFacts.of(journal, build)
                .forEach(fact -> put(named, plural(fact.label()), fact.value(), shown(fact.value())));
        return named;
    }

    /** One day and several are told side by side. */
    private static String plural(String label) {
        return switch (label) {
            case "day at work" -> "days at work";
            case "entry" -> "entries";
            default -> label;
        };
    }

    private static String shown(Measured<?> value) {
        return QuantityText.show(value, Locale.getDefault(Locale.Category.FORMAT));
    }

    /** A value under the name that the builder writes. */
    private record Named(String name, Measured<?> value, String text) {}

    private static Map<String, Named> settings(OpenJournal journal, BuildRecord build) {
        var named = new LinkedHashMap<String, Named>();
        SetUpRecord.newest(journal.log(build.id()))
                .forEach(each -> put(
                        named,
                        each.name(),
                        each.quantity().measured(),
                        each.quantity().text(Locale.getDefault(Locale.Category.FORMAT))));
        return named;
    }

    /** A weighing of a part goes before what its ledger says. */
    private static Map<String, Named> parts(OpenJournal journal, BuildRecord build) {
        var named = new LinkedHashMap<String, Named>();
        for (var part : build.parts()) {
            Weighings.mass(journal, build.id(), part).ifPresent(mass -> put(named, part.name(), mass, shown(mass)));
        }
        return named;
    }

    private static Map<String, Named> measurements(OpenJournal journal, BuildRecord build) {
        var parts = build.parts().stream()
                .map(part -> part.name().toLowerCase(Locale.ROOT))
                .toList();
        var named = new LinkedHashMap<String, Named>();
        for (var entry : journal.log(build.id())) {
            for (var each : entry.measurements()) {
                if (!parts.contains(each.name().toLowerCase(Locale.ROOT))) {
                    put(
                            named,
                            each.name(),
                            each.quantity().measured(),
                            each.quantity().text(Locale.getDefault(Locale.Category.FORMAT)));
                }
            }
        }
        return named;
    }

    private static void put(Map<String, Named> named, String name, Measured<?> value, String text) {
        named.put(name.toLowerCase(Locale.ROOT), new Named(name, value, text));
    }

    private static List<Row> rows(What what, Map<String, Named> first, Map<String, Named> second) {
        return names(first, second).stream()
                .map(key -> row(what, Optional.ofNullable(first.get(key)), Optional.ofNullable(second.get(key))))
                .toList();
    }

    private static Row row(What what, Optional<Named> first, Optional<Named> second) {
        return new Row(
                what,
                first.or(() -> second).orElseThrow().name(),
                first.map(Named::text).orElse(""),
                second.map(Named::text).orElse(""),
                first.flatMap(one -> second.flatMap(other -> difference(one.value(), other.value())))
                        .orElse(""));
    }

    private static List<String> names(Map<String, ?> first, Map<String, ?> second) {
        var names = new LinkedHashSet<>(first.keySet());
        names.addAll(second.keySet());
        return List.copyOf(names);
    }

    private static <Q extends Quantity<Q>> Optional<String> difference(Measured<Q> first, Measured<?> second) {
        var unit = first.value().getUnit();
        if (!Units.alike(unit, second.value().getUnit())) {
            return Optional.empty();
        }
        var less = less(first, same(second), unit);
        double before = first.in(unit);
        boolean shared = before > 0 && unit.getConverterTo(unit.getSystemUnit()).isLinear();
        double share = 100 * less.in(unit) / before;
        return Optional.of(sign(less.in(unit))
                + shown(less)
                + (shared ? String.format(Locale.getDefault(Locale.Category.FORMAT), "  (%+.1f %%)", share) : ""));
    }

    @SuppressWarnings("unchecked") // of the same kind, which the caller has asked
    private static <Q extends Quantity<Q>> Measured<Q> same(Measured<?> other) {
        return (Measured<Q>) other;
    }

    /** Independent readings: their variances add up (JCGM 100:2008, 5.1.2). */
    private static <Q extends Quantity<Q>> Measured<Q> less(Measured<Q> first, Measured<Q> second, Unit<Q> unit) {
        double less = second.in(unit) - first.in(unit);
        return first.plusMinus().isPresent() || second.plusMinus().isPresent()
                ? Measured.of(less, Math.hypot(first.spreadIn(unit), second.spreadIn(unit)), unit)
                : Measured.of(less, unit);
    }

    private static String sign(double number) {
        return number > 0 ? "+" : "";
    }
}
