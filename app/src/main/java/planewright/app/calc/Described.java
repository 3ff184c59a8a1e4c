package planewright.app.calc;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import planewright.api.calculator.About;
import planewright.api.calculator.Calculator;

/**
 * A calculator and all that its annotations say.
 *
 * @param about what it is
 * @param plugin id and version of the plugin it comes from
 * @param calculator the calculator
 * @param inputs what it is given
 * @param results what it answers
 */
public record Described(About about, String plugin, Calculator<?, ?> calculator, Shape inputs, Shape results) {
    /** Its id: {@code balance.ledger}. */
    public String id() {
        return about.id();
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
                ShapeReader.results(record(calculator, 1)));
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
