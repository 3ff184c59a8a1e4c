package planewright.app.calc;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import planewright.api.calculator.About;
import planewright.api.calculator.Calculator;
import planewright.api.calculator.Language;
import planewright.shared.material.Materials;

/**
 * A calculator and all that its annotations say.
 *
 * @param about what it is
 * @param plugin id and version of the plugin it comes from
 * @param calculator the calculator
 * @param inputs what it is given
 * @param results what it answers
 * @param language in which it is told: the calculator's own words, then the program's
 */
public record Described(
        About about, String plugin, Calculator<?, ?> calculator, Shape inputs, Shape results, Language language) {
    /** Its id: {@code balance.ledger}. */
    public String id() {
        return about.id();
    }

    /** The same in the language of a place, as far as the calculator has it. */
    public Described in(Locale locale) {
        var told =
                Language.of(locale, calculator.getClass()).and(Described.class).and(Materials.class);
        return new Described(about, plugin, calculator, inputs.in(told), results.in(told), told);
    }

    /** Two or three words for lists. */
    public String title() {
        return language.say(about.title());
    }

    /** The question it answers. */
    public String question() {
        return language.say(about.question());
    }

    /** What can hurt where the result is put to use. */
    public List<String> cautions() {
        return Arrays.stream(about.cautions()).map(language::say).toList();
    }

    /** Reads a calculator's description. */
    static Described of(Calculator<?, ?> calculator, String plugin) throws Faulty {
        var about = calculator.getClass().getAnnotation(About.class);
        if (about == null) {
            throw new Faulty("class " + calculator.getClass().getName() + " has no @About");
        }
        if (!about.id().matches("[a-z][a-z0-9]*\\.[a-z][a-z0-9]*")) {
            throw new Faulty("id is '" + about.id() + "'; accepted: plugin and name, such as balance.ledger");
        }
        if (about.version().isBlank()
                || about.title().isBlank()
                || about.question().isBlank()) {
            throw new Faulty("calculator " + about.id() + " lacks a version, a title or a question");
        }
        return new Described(
                about,
                plugin,
                calculator,
                ShapeReader.inputs(record(calculator, 0)),
                ShapeReader.results(record(calculator, 1)),
                Language.ENGLISH);
    }

    private static Class<? extends Record> record(Calculator<?, ?> calculator, int position) throws Faulty {
        for (Type type : calculator.getClass().getGenericInterfaces()) {
            if (type instanceof ParameterizedType parameterized
                    && parameterized.getRawType() == Calculator.class
                    && parameterized.getActualTypeArguments()[position] instanceof Class<?> record
                    && record.isRecord()) {
                return record.asSubclass(Record.class);
            }
        }
        throw new Faulty("class " + calculator.getClass().getName()
                + " does not itself say 'implements Calculator<Inputs, Results>' with two records");
    }
}
