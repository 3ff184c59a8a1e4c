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
 * A calculator and all that its annotations say. What is said of inputs and results is read when it is first asked for, which takes
 * longer than all else of it and touches the plugin's file.
 */
public final class Described {
    private final About about;
    private final String plugin;
    private final Calculator<?, ?> calculator;
    private final Language language;
    private Shape inputs;
    private Shape results;

    private Described(About about, String plugin, Calculator<?, ?> calculator, Language language) {
        this.about = about;
        this.plugin = plugin;
        this.calculator = calculator;
        this.language = language;
    }

    /** Its id: {@code balance.ledger}. */
    public String id() {
        return about.id();
    }

    /** What it is. */
    public About about() {
        return about;
    }

    /** Id and version of the plugin it comes from. */
    public String plugin() {
        return plugin;
    }

    public Calculator<?, ?> calculator() {
        return calculator;
    }

    /** In which it is told: the calculator's own words, then the program's. */
    public Language language() {
        return language;
    }

    /** What it is given. */
    public Shape inputs() {
        look();
        return inputs;
    }

    /** What it answers. */
    public Shape results() {
        look();
        return results;
    }

    /** Reads what is not read yet; whoever started the plugin has made sure that it can be used. */
    private void look() {
        try {
            read();
        } catch (Faulty faulty) {
            throw new IllegalStateException(faulty.getMessage(), faulty);
        }
    }

    /** The same in the language of a place, as far as the calculator has it. */
    public Described in(Locale locale) {
        look();
        var told =
                Language.of(locale, calculator.getClass()).and(Described.class).and(Materials.class);
        var same = new Described(about, plugin, calculator, told);
        same.inputs = inputs.in(told);
        same.results = results.in(told);
        return same;
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

    @Override
    public String toString() {
        return id();
    }

    /** Reads a calculator's whole description. */
    static Described of(Calculator<?, ?> calculator, String plugin) throws Faulty {
        var described = named(calculator, plugin);
        described.read();
        return described;
    }

    /** Reads of a calculator's description what lists show of it. */
    static Described named(Calculator<?, ?> calculator, String plugin) throws Faulty {
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
        return new Described(about, plugin, calculator, Language.ENGLISH);
    }

    private synchronized void read() throws Faulty {
        if (results == null) {
            inputs = ShapeReader.inputs(record(calculator, 0));
            results = ShapeReader.results(record(calculator, 1));
        }
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
