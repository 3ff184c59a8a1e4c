package planewright.shared.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.measure.Unit;
import planewright.api.calculator.Language;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;

/** Reads {@code 212 g ± 1 g}, {@code 3 1/2 in}, {@code 1/8"}, {@code 2' 3 1/2"} and writes quantities for people. */
public final class QuantityText {
    private static final String SIGN = "[-+−]?\\s*";
    private static final String UNIT = "(?:[\\p{L}µ°%Ω\"'″′\\[{][^\\s±]*)";
    private static final String SPREAD =
            "(?:\\s*(?:±|\\+/-|\\+-)\\s*(" + NumberText.UNSIGNED + ")\\s*(" + UNIT + ")?)?";
    private static final Pattern QUANTITY =
            Pattern.compile("(" + SIGN + NumberText.UNSIGNED + ")\\s*(" + UNIT + ")?" + SPREAD);
    private static final Pattern FEET_AND_INCHES = Pattern.compile(
            "(\\d+)\\s*(?:'|′|ft|feet|foot)\\s*(" + NumberText.UNSIGNED + ")\\s*(?:\"|″|in|inch|inches)");
    private static final Map<String, Unit<?>> NAMES = names();

    /** As many places before or after the point are still read easily. */
    private static final int MOST_ZEROS = 15;

    /** Places after the point, before it where below 0, to which values are set and read at the bench: common practice, no source. */
    private static final Map<Unit<?>, Integer> BENCH = Map.ofEntries(
            Map.entry(Units.MILLIMETRE, 1),
            Map.entry(Units.CENTIMETRE, 2),
            Map.entry(Units.METRE, 4),
            Map.entry(Units.INCH, 2),
            Map.entry(Units.FOOT, 3),
            Map.entry(Units.MILLIGRAM, -2),
            Map.entry(Units.GRAM, 1),
            Map.entry(Units.KILOGRAM, 4),
            Map.entry(Units.OUNCE, 2),
            Map.entry(Units.POUND, 4),
            Map.entry(Units.RADIAN, 3),
            Map.entry(Units.DEGREE, 1),
            Map.entry(Units.PERCENT, 1));

    private QuantityText() {}

    /**
     * The quantity that a text stands for; a number alone is taken in the unit given.
     *
     * @throws QuantityProblem if it is no quantity, or its unit is not known
     */
    public static Written parse(String text, Unit<?> otherwise) throws QuantityProblem {
        var stripped = text.strip();
        var feet = FEET_AND_INCHES.matcher(stripped);
        if (feet.matches()) {
            return feetAndInches(feet.group(1), feet.group(2));
        }
        var quantity = QUANTITY.matcher(stripped);
        if (!quantity.matches()) {
            throw new QuantityProblem(
                    "'{0}' is not a quantity", "a number and a unit, such as {1}", text, example(otherwise));
        }
        var first = quantity.group(2);
        var second = quantity.group(4);
        var unit = first != null ? unit(first) : second != null ? unit(second) : otherwise;
        var spread = quantity.group(3);
        if (spread != null && first != null && second != null && !unit(second).equals(unit)) {
            spread = converted(spread, unit(second), unit, text);
        }
        return written(quantity.group(1).replaceAll("\\s+(?=\\d+$)|^([-+−])\\s+", "$1"), unit, spread, text);
    }

    /**
     * As {@link #parse(String, Unit)}, and of the same kind as the unit given.
     *
     * @throws QuantityProblem also where it measures something else; the message lists the units that are accepted
     */
    public static Written parseLike(String text, Unit<?> kind) throws QuantityProblem {
        var written = parse(text, kind);
        if (!Units.alike(written.unit(), kind)) {
            throw new QuantityProblem(
                    "'{0}' is in {1}", "{2}", text.strip(), Units.symbolOf(written.unit()), accepted(kind));
        }
        return written;
    }

    /**
     * A quantity with its unit at the end of a line, and what stands before it: {@code left wing panel 212 g}.
     *
     * @return empty where the line does not end in a quantity with a unit, or has nothing before it
     */
    public static Optional<Trailing> trailing(String line) {
        var words = line.strip().split("\\s+");
        for (int from = 1; from < words.length; from++) {
            var tail = String.join(" ", List.of(words).subList(from, words.length));
            try {
                var written = parse(tail, Units.NUMBER);
                if (!written.unit().equals(Units.NUMBER)) {
                    return Optional.of(
                            new Trailing(String.join(" ", List.of(words).subList(0, from)), written));
                }
            } catch (QuantityProblem notHere) {
                // the quantity may start at a later word
            }
        }
        return Optional.empty();
    }

    /**
     * A line that ends in a quantity.
     *
     * @param before what stands before it; not blank
     * @param quantity the quantity
     */
    public record Trailing(String before, Written quantity) {}

    /**
     * The unit of a name, symbol or UCUM code: {@code in}, {@code inches}, {@code "}, {@code [in_i]}.
     *
     * @throws QuantityProblem if there is none of that name
     */
    public static Unit<?> unit(String name) throws QuantityProblem {
        var unit = NAMES.get(name);
        if (unit == null) {
            unit = NAMES.get(name.toLowerCase(Locale.ROOT));
        }
        if (unit == null) {
            throw new QuantityProblem(
                    "'{0}' is not a unit",
                    "{1}",
                    name,
                    Units.all().stream()
                            .map(Units.Coded::symbol)
                            .filter(symbol -> !symbol.isEmpty())
                            .collect(Collectors.joining(", ")));
        }
        return unit;
    }

    /** For people: {@code 212 g ± 1 g}, {@code 88.9 mm}, {@code 12.5°}; no more digits than the ± deserves. */
    public static String show(Measured<?> value) {
        return Written.of(value).text();
    }

    /** As {@link #show(Measured)}, with the decimal sign of a language: {@code 12,5°}. */
    public static String show(Measured<?> value, Locale locale) {
        return Written.of(value).text(locale);
    }

    /**
     * As {@link #show(Measured, Locale)}, to somebody who may have chosen another unit, and reads it then in the figures that a
     * builder can use. What was typed in metres is one of the bench's lengths, which are told in inches and not in feet.
     */
    public static String show(Measured<?> value, Language reader) {
        UnitChoice units =
                told -> Optional.of(reader.unit(reader.unit(told).equals(Units.FOOT) ? Units.MILLIMETRE : told));
        return units.written(value).text(reader.locale());
    }

    /** As {@link #show(Measured)}, in another unit of the same kind. */
    public static String show(Measured<?> value, Unit<?> unit) {
        return show(in(value, unit));
    }

    /**
     * What was computed, in another unit of the same kind: with a ± as {@link #show(Measured)}, without one in the figures
     * that a builder can use, three or as many as the bench can tell: a tenth of a millimetre, gram, degree or percent.
     *
     * @param locale for the decimal sign
     */
    public static String result(Measured<?> value, Unit<?> unit, Locale locale) {
        return useful(in(value, unit)).text(locale);
    }

    /** In the figures of {@link #result(Measured, Unit, Locale)}. */
    static Written useful(Measured<?> value) {
        double number = value.value().getValue().doubleValue();
        boolean doubted = value.plusMinus()
                .filter(spread -> spread.getValue().doubleValue() > 0)
                .isPresent();
        var unit = value.value().getUnit();
        return doubted || number == 0
                ? Written.of(value)
                : new Written(plain(useful(number, unit)), unit, Optional.empty());
    }

    /**
     * The same in another unit of the same kind.
     *
     * @throws IllegalArgumentException if the unit measures something else
     */
    public static Measured<?> in(Measured<?> value, Unit<?> unit) {
        if (!Units.alike(value.value().getUnit(), unit)) {
            throw new IllegalArgumentException(
                    value.value() + " cannot be shown in " + Units.symbolOf(unit) + "; accepted: " + accepted(unit));
        }
        return converted(value, unit);
    }

    /** A unit's symbol with the space that goes before it, if any. */
    static String joined(String symbol) {
        return symbol.isEmpty() || symbol.equals("°") ? symbol : " " + symbol;
    }

    /** The value's digits: down to the second digit of its ±, or five figures. */
    static String digits(Measured<?> measured) {
        double value = measured.value().getValue().doubleValue();
        var spread = measured.plusMinus()
                .map(pm -> converted(measured, measured.value().getUnit())
                        .plusMinus()
                        .orElseThrow()
                        .getValue()
                        .doubleValue())
                .filter(pm -> pm > 0);
        if (value == 0) {
            return "0";
        }
        return spread.map(pm -> new BigDecimal(value)
                        .setScale(new BigDecimal(roundedSpread(pm)).scale(), RoundingMode.HALF_UP)
                        .toPlainString())
                .orElseGet(() -> plain(figures(value, 5)));
    }

    /** A ± to two figures, as JCGM 100:2008, 7.2.6 advises. */
    static String roundedSpread(double spread) {
        return spread == 0 ? "0" : plain(figures(spread, 2));
    }

    /** Three figures, or as many as the bench can tell, where those are more; see {@link #BENCH}. */
    private static BigDecimal useful(double value, Unit<?> unit) {
        var three = figures(value, 3);
        int places = Math.max(three.scale(), BENCH.getOrDefault(unit, three.scale()));
        return new BigDecimal(value).setScale(places, RoundingMode.HALF_UP);
    }

    /** Rounded, towards 0 where it would else exceed every double. */
    private static BigDecimal figures(double number, int figures) {
        var exact = new BigDecimal(number);
        var rounded = exact.round(new MathContext(figures, RoundingMode.HALF_UP));
        return Double.isFinite(rounded.doubleValue())
                ? rounded
                : exact.round(new MathContext(figures, RoundingMode.DOWN));
    }

    /** Without zeros that say nothing, and with an exponent where there would be too many. */
    private static String plain(BigDecimal number) {
        var stripped = number.stripTrailingZeros();
        boolean extreme = Math.abs(stripped.precision() - stripped.scale()) > MOST_ZEROS;
        return extreme ? stripped.toString() : stripped.toPlainString();
    }

    private static Written feetAndInches(String feet, String inches) {
        double whole = Double.parseDouble(feet) * 12;
        var fraction = inches.matches("\\d+") ? "" : inches.replaceFirst("^\\d+[ -]", "");
        double rest = NumberText.parse(inches).orElseThrow();
        boolean mixed = fraction.contains("/") && rest >= 0;
        var number =
                mixed ? (int) (whole + Math.floor(rest)) + " " + fraction : plain(BigDecimal.valueOf(whole + rest));
        return new Written(number, Units.INCH, Optional.empty());
    }

    private static Written written(String number, Unit<?> unit, String spread, String text) throws QuantityProblem {
        try {
            return new Written(number, unit, Optional.ofNullable(spread));
        } catch (IllegalArgumentException noNumber) {
            throw new QuantityProblem("'{0}' has a number that cannot be read", "212, 0.85, 3,5, 3 1/2, 1/8", text);
        }
    }

    private static String converted(String spread, Unit<?> from, Unit<?> to, String text) throws QuantityProblem {
        if (!Units.alike(from, to)) {
            throw new QuantityProblem("'{0}' has a ± in {1}", "{2}", text, Units.symbolOf(from), accepted(to));
        }
        var measured = converted(new Written(spread, from, Optional.empty()).measured(), to);
        return plain(BigDecimal.valueOf(measured.value().getValue().doubleValue()));
    }

    @SuppressWarnings({"unchecked", "rawtypes"}) // callers have checked that the unit is of the value's kind
    private static Measured<?> converted(Measured<?> value, Unit<?> unit) {
        return ((Measured) value).to((Unit) unit);
    }

    private static String accepted(Unit<?> kind) {
        return Units.alike(kind).stream()
                .map(coded -> coded.symbol().isEmpty() ? "a bare number" : coded.symbol())
                .collect(Collectors.joining(", "));
    }

    private static String example(Unit<?> unit) {
        return unit.equals(Units.NUMBER) ? "212 g, 3 1/2 in, 1.5 h" : "12" + joined(Units.symbolOf(unit));
    }

    private static Map<String, Unit<?>> names() {
        var names = new HashMap<String, Unit<?>>();
        for (var coded : Units.all()) {
            names.put(coded.code(), coded.unit());
            names.putIfAbsent(coded.symbol(), coded.unit());
        }
        names.remove("");
        spelled(names, Units.GRAM, "gram grams gramme grammes");
        spelled(names, Units.KILOGRAM, "kilogram kilograms kilo");
        spelled(names, Units.POUND, "lbs pound pounds");
        spelled(names, Units.OUNCE, "ounce ounces");
        spelled(names, Units.MILLIMETRE, "millimetre millimetres millimeter millimeters");
        spelled(names, Units.CENTIMETRE, "centimetre centimetres centimeter centimeters");
        spelled(names, Units.METRE, "metre metres meter meters");
        spelled(names, Units.INCH, "inch inches \" ″");
        spelled(names, Units.FOOT, "foot feet ' ′");
        spelled(names, Units.DEGREE, "degree degrees");
        spelled(names, Units.CELSIUS, "°c degc celsius");
        spelled(names, Units.SECOND, "sec second seconds");
        spelled(names, Units.MINUTE, "mins minute minutes");
        spelled(names, Units.HOUR, "hr hrs hour hours");
        spelled(names, Units.DAY, "day days");
        spelled(names, Units.VOLT, "v volt volts");
        spelled(names, Units.AMPERE, "a amp amps");
        spelled(names, Units.WATT, "w watt watts");
        spelled(names, Units.OHM, "ohm ohms");
        spelled(names, Units.MILLIOHM, "mohm");
        spelled(names, Units.MILLIAMPERE_HOUR, "mah");
        spelled(names, Units.AMPERE_HOUR, "ah");
        spelled(names, Units.PERCENT, "percent");
        spelled(names, Units.NEWTON_METRE, "Nm");
        spelled(names, Units.NEWTON_CENTIMETRE, "Ncm");
        spelled(names, Units.KILOGRAM_FORCE_CENTIMETRE, "kgcm kgfcm kg·cm kg.cm");
        spelled(names, Units.OUNCE_FORCE_INCH, "ozfin ozf-in ozf.in ozin oz-in");
        spelled(names, Units.OUNCE_INCH, "oz.in");
        spelled(names, Units.TURN_PER_MINUTE, "1/min");
        return Map.copyOf(names);
    }

    private static void spelled(Map<String, Unit<?>> names, Unit<?> unit, String words) {
        for (var word : words.split(" ")) {
            names.put(word, unit);
        }
    }
}
