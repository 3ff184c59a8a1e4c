package planewright.app.calc;

import java.time.LocalDateTime;
import java.util.function.BooleanSupplier;
import java.util.function.ObjDoubleConsumer;
import planewright.api.calculator.Run;
import planewright.api.journal.JournalReader;

/**
 * A run whose progress goes to a listener, and that stops where asked.
 *
 * @param journal the journal to read
 * @param now the builder's clock when it began
 * @param listener hears what it is at and how far it is, on the thread that computes
 * @param stopped whether the builder has stopped it
 */
public record Runs(
        JournalReader journal, LocalDateTime now, ObjDoubleConsumer<String> listener, BooleanSupplier stopped)
        implements Run {
    /** A run that nobody watches. */
    public static Run unwatched(JournalReader journal, LocalDateTime now) {
        return new Runs(journal, now, (doing, done) -> {}, () -> false);
    }

    @Override
    public void progress(double done, String doing) {
        if (stopped.getAsBoolean()) {
            throw new Run.Cancelled();
        }
        listener.accept(doing, done);
    }
}
