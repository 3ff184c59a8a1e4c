package planewright.app.ui;

import java.io.Closeable;
import java.io.IOException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import javax.swing.SwingWorker;

/** Journals that are left are closed one after another, off the event thread; what is opened next may be one of them, and waits. */
final class Endings {
    private static final System.Logger LOGGER = System.getLogger(Endings.class.getName());

    private Future<?> last = CompletableFuture.completedFuture(null);

    /**
     * Closes something after what was left before; on the event thread.
     *
     * @param then runs there once it is closed, or could not be
     */
    void add(Closeable left, Runnable then) {
        var earlier = soFar();
        var ending = new SwingWorker<Void, Void>() {
            @Override
            protected Void doInBackground() throws IOException {
                earlier.run();
                left.close();
                return null;
            }

            @Override
            protected void done() {
                then.run();
            }
        };
        last = ending;
        ending.execute();
    }

    /** Waits for all that has been left so far; asked for on the event thread, run off it. */
    Runnable soFar() {
        var end = last;
        return () -> {
            try {
                end.get();
            } catch (ExecutionException failure) {
                LOGGER.log(System.Logger.Level.WARNING, "a journal did not close as it should", failure.getCause());
            } catch (InterruptedException stopped) {
                Thread.currentThread().interrupt();
            }
        };
    }
}
