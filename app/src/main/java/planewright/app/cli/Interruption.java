package planewright.app.cli;

import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import planewright.app.exchange.Watch;

/**
 * Ends long work in good order when the program is told to end (Ctrl-C, SIGTERM): the next piece of work is not begun, and the
 * system gets the program back once all is as it was before.
 */
final class Interruption implements Watch, AutoCloseable {
    private static final int PATIENCE_SECONDS = 30;

    private final CountDownLatch ended = new CountDownLatch(1);
    private final Thread hook = new Thread(this::interrupt, "planewright-interruption");
    private volatile boolean asked;

    private Interruption() {}

    /** From now on the end of the program waits for the end of the work. */
    static Interruption watching() {
        var interruption = new Interruption();
        Runtime.getRuntime().addShutdownHook(interruption.hook);
        return interruption;
    }

    @Override
    public void reached(String what) {
        if (asked) {
            throw new CancellationException("stopped before " + what + "; nothing of it was written");
        }
    }

    /** The work has ended, one way or the other. */
    @Override
    public void close() {
        ended.countDown();
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException endingAlready) {
            // the hook has just been let go
        }
    }

    private void interrupt() {
        asked = true;
        try {
            ended.await(PATIENCE_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException impatient) {
            Thread.currentThread().interrupt();
        }
    }
}
