package planewright.app.journal;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.time.temporal.ChronoUnit;
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
import planewright.shared.quantity.UnitChoice;
import planewright.shared.quantity.Written;

/** Two builds side by side: what they are, fly with, weigh and measured last, by the names that both give to it. */
public final class Comparison {
    /** Far below what anybody can measure, and above what is lost in changing units. Chosen. */
    private static final double ALIKE = 1e-9;

    /** What rounds to 0.1, %. */
    private static final double LEAST_SHARE = 0.05;

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
     * What a build says of a thing.
     *
     * @param text for people; empty where it says nothing
     * @param carried whether it still is as it was carried over from another build
     */
    public record Side(String text, boolean carried) {
        private static final Side NOTHING = new Side("", false);

        /** The text, with how firm it is. */
        public String words() {
            return carried ? Said.say("{0}, carried over", text) : text;
        }
    }

    /**
     * A thing of which at least one of the builds says something.
     *
     * @param difference the second less the first in the first one's unit, with a share where that has a meaning; in words where they
     *     are the same, of days and of counts; empty where one is missing or they are of different kinds
     */
    public record Row(What what, String name, Side first, Side second, String difference) {
        /** Whether the two say the same. */
        public boolean isAlike() {
            return first.text().equals(second.text());
        }
    }

    /**
     * All that the two say. Reads both logs.
     *
     * @param units in which it is told
     */
    public static List<Row> of(OpenJournal journal, BuildRecord first, BuildRecord second, UnitChoice units) {
        var rows = new ArrayList<Row>();
        rows.addAll(facts(journal, first, second, units));
        rows.addAll(rows(What.SETTING, settings(journal, first, units), settings(journal, second, units)));
        rows.addAll(rows(What.PART, parts(journal, first, units), parts(journal, second, units)));
        rows.addAll(rows(What.MEASUREMENT, measurements(journal, first, units), measurements(journal, second, units)));
        return rows;
    }

    private static List<Row> facts(OpenJournal journal, BuildRecord first, BuildRecord second, UnitChoice units) {
        var rows = new ArrayList<Row>();
        rows.add(words("layout", first.layout(), second.layout()));
        rows.add(words("life", first.life().word(), second.life().word()));
        rows.add(begun(first.begun(), second.begun()));
        rows.addAll(rows(What.FACT, facts(journal, first, units), facts(journal, second, units)));
        return rows;
    }

    private static Row words(String name, String first, String second) {
        boolean same = !first.isEmpty() && first.equals(second);
        return new Row(What.FACT, name, new Side(first, false), new Side(second, false), same ? same() : "");
    }

    private static Row begun(LocalDate first, LocalDate second) {
        long later = ChronoUnit.DAYS.between(first, second);
        var difference = later == 0
                ? same()
                : later == 1
                        ? Said.say("a day later")
                        : later == -1
                                ? Said.say("a day earlier")
                                : later > 0 ? Said.say("{0} days later", later) : Said.say("{0} days earlier", -later);
        return new Row(What.FACT, "begun", new Side(day(first), false), new Side(day(second), false), difference);
    }

    private static String day(LocalDate day) {
        return DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM)
                .withLocale(Locale.getDefault(Locale.Category.FORMAT))
                .format(day);
    }

    private static String same() {
        return Said.say("same");
    }

    private static Map<String, Named> facts(OpenJournal journal, BuildRecord build, UnitChoice units) {
        var named = new LinkedHashMap<String, Named>();
        BuildFacts.of(journal, build)
                .forEach(fact -> put(
                        named,
                        plural(fact.label()),
                        fact.value(),
                        units,
                        fact.standing() == BuildFacts.Standing.CARRIED));
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
    private record Named(String name, Measured<?> value, Side side) {}

    private static Map<String, Named> settings(OpenJournal journal, BuildRecord build, UnitChoice units) {
        var named = new LinkedHashMap<String, Named>();
        for (var entry : journal.log(build.id())) {
            entry.setUp().forEach(each -> put(named, each.name(), each.quantity(), units, entry));
        }
        return named;
    }

    /** A weighing of a part goes before what its ledger says. */
    private static Map<String, Named> parts(OpenJournal journal, BuildRecord build, UnitChoice units) {
        var named = new LinkedHashMap<String, Named>();
        for (var part : build.parts()) {
            var weighed = Weighings.weighed(journal, build.id(), part);
            weighed.or(part::mass)
                    .ifPresent(mass -> put(named, part.name(), mass, units, part.carried() && weighed.isEmpty()));
        }
        return named;
    }

    private static Map<String, Named> measurements(OpenJournal journal, BuildRecord build, UnitChoice units) {
        var parts = build.parts().stream()
                .map(part -> part.name().toLowerCase(Locale.ROOT))
                .toList();
        var named = new LinkedHashMap<String, Named>();
        for (var entry : journal.log(build.id())) {
            entry.measurements().stream()
                    .filter(each -> !parts.contains(each.name().toLowerCase(Locale.ROOT)))
                    .forEach(each -> put(named, each.name(), each.quantity(), units, entry));
        }
        return named;
    }

    private static void put(
            Map<String, Named> named, String name, Written quantity, UnitChoice units, EntryRecord entry) {
        var text = units.written(quantity).text(Locale.getDefault(Locale.Category.FORMAT));
        put(named, name, units.measured(quantity.measured()), new Side(text, Carried.isIn(entry)));
    }

    private static void put(
            Map<String, Named> named, String name, Measured<?> value, UnitChoice units, boolean carried) {
        var text = units.written(value).text(Locale.getDefault(Locale.Category.FORMAT));
        put(named, name, units.measured(value), new Side(text, carried));
    }

    private static void put(Map<String, Named> named, String name, Measured<?> value, Side side) {
        named.put(name.toLowerCase(Locale.ROOT), new Named(name, value, side));
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
                first.map(Named::side).orElse(Side.NOTHING),
                second.map(Named::side).orElse(Side.NOTHING),
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
        var less = less(first, ofSameKind(second), unit);
        double before = first.in(unit);
        if (Math.abs(less.in(unit)) <= ALIKE * Math.abs(before)) {
            return Optional.of(same());
        }
        if (unit.equals(Units.NUMBER) && isWhole(before) && isWhole(less.in(unit))) {
            return Optional.of(Said.say(
                    less.in(unit) > 0 ? "{0} more" : "{0} fewer", shown(Measured.of(Math.abs(less.in(unit)), unit))));
        }
        boolean shared = before > 0 && unit.getConverterTo(unit.getSystemUnit()).isLinear();
        double share = 100 * less.in(unit) / before;
        return Optional.of(sign(less.in(unit))
                + QuantityText.result(less, unit, Locale.getDefault(Locale.Category.FORMAT))
                + (shared && Math.abs(share) >= LEAST_SHARE
                        ? String.format(Locale.getDefault(Locale.Category.FORMAT), "  (%+.1f %%)", share)
                        : ""));
    }

    private static boolean isWhole(double number) {
        return number == Math.rint(number);
    }

    @SuppressWarnings("unchecked") // of the same kind, which the caller has asked
    private static <Q extends Quantity<Q>> Measured<Q> ofSameKind(Measured<?> other) {
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
