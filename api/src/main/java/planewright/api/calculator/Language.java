package planewright.api.calculator;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.measure.IncommensurableException;
import javax.measure.Unit;
import org.apiguardian.api.API;
import planewright.api.quantity.Units;

/**
 * The language of whoever reads an answer, and the units in which they read. A calculator is written in English and says its
 * sentences through this: {@code language.say("It balances {0} behind the target.", language.quantity(12.3, Units.MILLIMETRE, 1))}. A table beside the class has them in another language, {@code
 * words_de.tsv} in German: UTF-8, a line for each sentence and each text of the annotations, the English, a tabulator, the
 * translation with the same values in it. What the table lacks is said in English.
 */
@API(status = API.Status.MAINTAINED, since = "0.3.0")
public final class Language {
    /** As calculators are written. */
    public static final Language ENGLISH =
            new Language(Locale.ENGLISH, english -> Optional.empty(), english -> {}, UnaryOperator.identity());

    /** By language; they go with the class that they lie beside. */
    private static final ClassValue<Map<String, Map<String, String>>> TABLES = new ClassValue<>() {
        @Override
        protected Map<String, Map<String, String>> computeValue(Class<?> beside) {
            return new ConcurrentHashMap<>();
        }
    };

    /** What the factor of a power of ten may be off by, in decimals. */
    private static final double ROUNDING = 1e-9;

    private static final Pattern PLACE = Pattern.compile("\\{(\\d)}");

    private final Locale locale;
    private final Function<String, Optional<String>> table;
    private final Consumer<String> missing;
    private final UnaryOperator<Unit<?>> units;

    private Language(
            Locale locale,
            Function<String, Optional<String>> table,
            Consumer<String> missing,
            UnaryOperator<Unit<?>> units) {
        this.locale = locale;
        this.table = table;
        this.missing = missing;
        this.units = units;
    }

    /**
     * The language of a place with the words of the table beside a class.
     *
     * @param locale language, and the country that says how numbers and days are written
     * @param beside whose package holds the table; where it has none, all stays English
     * @return the language
     */
    public static Language of(Locale locale, Class<?> beside) {
        return of(locale, beside, english -> {});
    }

    /**
     * As {@link #of(Locale, Class)}, for tests of a table.
     *
     * @param locale language and country
     * @param beside whose package holds the table
     * @param missing hears of each text that is said and stands in no table
     * @return the language
     */
    public static Language of(Locale locale, Class<?> beside, Consumer<String> missing) {
        return new Language(locale, lookUp(words(locale, beside)), missing, UnaryOperator.identity());
    }

    /**
     * The texts of the table beside a class, by their English. It is read when it is first asked for.
     *
     * @param locale its language
     * @param beside whose package holds it
     * @return empty where there is none
     */
    public static Map<String, String> words(Locale locale, Class<?> beside) {
        return locale.getLanguage().equals(ENGLISH.locale.getLanguage())
                ? Map.of()
                : TABLES.get(beside).computeIfAbsent(locale.getLanguage(), language -> read(language, beside));
    }

    private static Map<String, String> read(String language, Class<?> beside) {
        try (var in = beside.getResourceAsStream("words_" + language + ".tsv")) {
            return in == null
                    ? Map.of()
                    : new String(in.readAllBytes(), StandardCharsets.UTF_8)
                            .lines()
                            .map(line -> line.split("\t", -1))
                            .filter(cells -> cells.length == 2)
                            .collect(Collectors.toUnmodifiableMap(
                                    cells -> cells[0], cells -> cells[1], (first, again) -> first));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /**
     * The same language, which also knows the words beside another class.
     *
     * @param beside whose package holds the other table; this language's own words go before it
     * @return the language
     */
    public Language and(Class<?> beside) {
        var more = lookUp(words(locale, beside));
        return new Language(locale, english -> table.apply(english).or(() -> more.apply(english)), missing, units);
    }

    /**
     * The same language for somebody who reads quantities in units of their own.
     *
     * @param chosen the unit for what is told in another; that one itself where none is chosen
     * @return the language
     */
    public Language in(UnaryOperator<Unit<?>> chosen) {
        return new Language(locale, table, missing, chosen);
    }

    /**
     * In which unit is read what a calculator tells in the given one.
     *
     * @param told the calculator's, one of {@link Units}
     * @return the reader's, of the same kind
     * @throws IllegalArgumentException where it is none of those, or the reader's measures something else
     */
    public Unit<?> unit(Unit<?> told) {
        var code = Units.codeOf(told);
        var unit = units.apply(told);
        if (!Units.alike(told, unit)) {
            throw new IllegalArgumentException(Units.codeOf(unit) + " is chosen for what is told in " + code
                    + "; accepted: a unit of the same kind");
        }
        return unit;
    }

    /** {@return how numbers and days are written} */
    public Locale locale() {
        return locale;
    }

    /**
     * A sentence in this language.
     *
     * @param english as it stands in the calculator, places of values as {@code {0}}, {@code {1}}, …
     * @param values what goes there, as it is to be read; numbers with decimals through {@link #number}
     * @return the translation, else the English, with the values in their places
     */
    public String say(String english, Object... values) {
        var said = table.apply(english).orElseGet(() -> {
            missing.accept(english);
            return english;
        });
        return values.length == 0 ? said : filled(said, values);
    }

    /**
     * A number within a sentence.
     *
     * @param value the number
     * @param decimals digits after the decimal sign
     * @return with the decimal sign of the language
     */
    public String number(double value, int decimals) {
        return String.format(locale, "%." + decimals + "f", value);
    }

    /**
     * A quantity within a sentence, in the unit in which it is read: {@code 12.3 mm}, {@code 0.484 in}.
     *
     * @param value how many of the unit
     * @param told the calculator's unit, one of {@link Units}
     * @param decimals digits after the decimal sign in that unit; in another as many as tell no less
     * @return the number and the unit's symbol
     * @throws IllegalArgumentException as {@link #unit}
     */
    public String quantity(double value, Unit<?> told, int decimals) {
        var symbol = Units.symbolOf(unit(told));
        return number(value, told, decimals) + (symbol.isEmpty() || symbol.equals("°") ? "" : " ") + symbol;
    }

    /**
     * As {@link #quantity}, without the symbol, which stands in a heading: it is that of {@link #unit}.
     *
     * @param value how many of the unit
     * @param told the calculator's unit, one of {@link Units}
     * @param decimals digits after the decimal sign in that unit; in another as many as tell no less
     * @return the number
     * @throws IllegalArgumentException as {@link #unit}
     */
    public String number(double value, Unit<?> told, int decimals) {
        try {
            var converter = told.getConverterToAny(unit(told));
            double size = Math.abs(converter.convert(1.0) - converter.convert(0.0));
            double more = Math.ceil(-Math.log10(size) - ROUNDING);
            return number(converter.convert(value), (int) Math.max(0, decimals + more));
        } catch (IncommensurableException unlike) {
            throw new IllegalArgumentException(unlike);
        }
    }

    private static Function<String, Optional<String>> lookUp(Map<String, String> words) {
        return english -> Optional.ofNullable(words.get(english));
    }

    /** Braces in a value are no places, and a place without a value stays as it is. */
    private static String filled(String pattern, Object... values) {
        return PLACE.matcher(pattern).replaceAll(place -> {
            int number = Integer.parseInt(place.group(1));
            return Matcher.quoteReplacement(number < values.length ? String.valueOf(values[number]) : place.group());
        });
    }
}
