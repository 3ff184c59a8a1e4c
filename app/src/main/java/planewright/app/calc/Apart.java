package planewright.app.calc;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import planewright.api.calculator.Run;
import planewright.shared.quantity.UnitChoice;

/**
 * Runs calculations on threads of their own, so that one that does not end keeps nobody waiting: once stopped it is left to itself, and
 * its calculator is not asked again before it has come to an end. Java can end no thread against its will.
 */
public final class Apart {
    private static final int LOOK_MILLIS = 50;
    private static final int PATIENT_LOOKS = 40;

    private final Map<String, Thread> abandoned = new ConcurrentHashMap<>();

    /**
     * Runs a calculation and waits for its outcome.
     *
     * @param units in which it is told what cannot be computed with
     * @param stopped whether the builder no longer wants it; a calculator that does not listen is then left alone
     */
    public Outcome run(Described described, ObjectNode inputs, Run run, UnitChoice units, BooleanSupplier stopped) {
        var before = abandoned.get(described.id());
        if (before != null && before.isAlive()) {
            return busy(described, "is still busy with an earlier question that was stopped");
        }
        var task = new FutureTask<>(() -> Calculation.run(described, inputs, run, units));
        var thread = new Thread(task, "planewright-calculator-" + described.id());
        thread.setDaemon(true);
        thread.start();
        int looks = 0;
        while (true) {
            try {
                return task.get(LOOK_MILLIS, TimeUnit.MILLISECONDS);
            } catch (TimeoutException notYet) {
                looks = stopped.getAsBoolean() ? looks + 1 : 0;
                if (looks > PATIENT_LOOKS) {
                    abandoned.put(described.id(), thread);
                    return busy(described, "does not stop when it is told to");
                }
            } catch (InterruptedException ended) {
                Thread.currentThread().interrupt();
                return new Outcome.Stopped();
            } catch (ExecutionException impossible) {
                throw new IllegalStateException("a calculation tells its failures as an outcome", impossible);
            }
        }
    }

    private static Outcome busy(Described described, String how) {
        var words = "calculator " + described.id() + " of plugin " + described.plugin() + " " + how
                + ". The journal is as it was. Switch the plugin off, or start the program again";
        return new Outcome.Failed(words, new IllegalStateException(words));
    }
}
