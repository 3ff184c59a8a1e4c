package planewright.app.calc;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDateTime;
import java.util.List;
import planewright.api.calculator.Calculator;
import planewright.api.calculator.Language;
import planewright.api.calculator.Run;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.journal.JournalReader;
import planewright.app.journal.Slow;
import planewright.shared.quantity.UnitChoice;

/** Runs a calculator. Whatever the plugin does, the outcome is one of four. */
public final class Calculation {
    private Calculation() {}

    /** Computes; may take long, so not on the event thread. */
    public static Outcome run(Described described, ObjectNode inputs, Run run) {
        return run(described, inputs, run, UnitChoice.NONE);
    }

    /**
     * As {@link #run(Described, ObjectNode, Run)}.
     *
     * @param units in which sentences tell quantities; a number alone is in the calculator's own
     */
    public static Outcome run(Described described, ObjectNode inputs, Run run, UnitChoice units) {
        Slow.work("computing");
        var binder = new Binder(run.journal(), run.now(), described.language(), units);
        try {
            var bound = binder.bind(described.inputs(), inputs);
            if (bound.isEmpty()) {
                return new Outcome.Refused(List.copyOf(binder.problems()));
            }
            var results = compute(
                    described.calculator(),
                    bound.get(),
                    new Spoken(run, described.language().in(units::shown)));
            var json = RecordJson.write(described.results(), results);
            requireFinite(json, "");
            return new Outcome.Answered(
                    RecordJson.write(described.inputs(), bound.get()),
                    results,
                    json,
                    List.copyOf(binder.unusual()),
                    units);
        } catch (UnsuitableInput unsuitable) {
            return new Outcome.Refused(unsuitable.problems());
        } catch (Run.Cancelled stopped) {
            return new Outcome.Stopped();
        } catch (Exception | Error failure) {
            return new Outcome.Failed(
                    described
                            .language()
                            .say(
                                    "calculator {0} of plugin {1} failed: {2}. The journal is as it was",
                                    described.id(), described.plugin(), words(failure)),
                    failure);
        }
    }

    /** A run whose answer is read in a language and in units. */
    private record Spoken(Run run, Language language) implements Run {
        @Override
        public void progress(double done, String doing) {
            run.progress(done, doing);
        }

        @Override
        public JournalReader journal() {
            return run.journal();
        }

        @Override
        public LocalDateTime now() {
            return run.now();
        }
    }

    @SuppressWarnings("unchecked") // the record was made from the calculator's own description
    private static <I extends Record, R extends Record> R compute(Calculator<I, R> calculator, Record inputs, Run run)
            throws UnsuitableInput {
        return calculator.compute((I) inputs, run);
    }

    private static void requireFinite(JsonNode node, String path) {
        if (node.isDouble() && !Double.isFinite(node.doubleValue())) {
            throw new ArithmeticException("result '" + path + "' is " + node.doubleValue());
        }
        if (node.isArray()) {
            for (int i = 0; i < node.size(); i++) {
                requireFinite(node.get(i), path + "[" + i + "]");
            }
        }
        node.properties()
                .forEach(field ->
                        requireFinite(field.getValue(), path.isEmpty() ? field.getKey() : path + "." + field.getKey()));
    }

    private static String words(Throwable failure) {
        return failure.getMessage() == null ? failure.getClass().getSimpleName() : failure.getMessage();
    }
}
