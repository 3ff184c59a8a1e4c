package planewright.app.ui.common;

import java.awt.EventQueue;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import planewright.app.journal.Slow;

/** Work off the event thread. Results and failures come back on it. Once it is stopped, what is asked is dropped. */
public final class Background {
    private static final int PATIENCE_SECONDS = 20;

    private final ExecutorService workers;
    private final AtomicInteger underWay = new AtomicInteger();
    private final Consumer<Throwable> failed;

    /**
     * @param threads how much goes on at once; with one, work is done in the order in which it was given
     * @param failed hears of failures, on the event thread
     */
    public Background(int threads, Consumer<Throwable> failed) {
        this.failed = failed;
        this.workers = Executors.newFixedThreadPool(threads, work -> {
            var thread = new Thread(work, "planewright-window-work");
            thread.setDaemon(true);
            return thread;
        });
    }

    /** Runs work, then hands its result over on the event thread. */
    public <T> void run(Callable<T> work, Consumer<T> done) {
        run(work, done, failed);
    }

    /** As {@link #run(Callable, Consumer)}, with a place of its own for failures. */
    public <T> void run(Callable<T> work, Consumer<T> done, Consumer<Throwable> otherwise) {
        underWay.incrementAndGet();
        try {
            workers.execute(() -> carryOut(work, done, otherwise));
        } catch (RejectedExecutionException stopped) {
            underWay.decrementAndGet();
        }
    }

    private <T> void carryOut(Callable<T> work, Consumer<T> done, Consumer<Throwable> otherwise) {
        Runnable ending;
        try {
            T result = work.call();
            ending = () -> done.accept(result);
        } catch (Throwable failure) {
            ending = () -> otherwise.accept(failure);
        }
        var last = ending;
        EventQueue.invokeLater(() -> {
            try {
                last.run();
            } finally {
                underWay.decrementAndGet();
            }
        });
    }

    /** Whether nothing is under way; for tests. */
    public boolean isIdle() {
        return underWay.get() == 0;
    }

    /** Lets nothing new begin and waits for what is under way; not on the event thread. */
    public void stop() {
        Slow.work("waiting for the end of work");
        workers.shutdown();
        try {
            workers.awaitTermination(PATIENCE_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    /** Runs questions of which only the newest answer counts. */
    public final class Latest {
        private final AtomicInteger newest = new AtomicInteger();

        /** Drops the answer that is still to come. */
        public void drop() {
            newest.incrementAndGet();
        }

        /** Asks; the answer is dropped if another question came meanwhile. */
        public <T> void ask(Callable<T> work, Consumer<T> done) {
            int number = newest.incrementAndGet();
            run(
                    () -> number == newest.get() ? java.util.Optional.of(work.call()) : java.util.Optional.<T>empty(),
                    answer -> {
                        if (number == newest.get()) {
                            answer.ifPresent(done);
                        }
                    });
        }
    }

    /** A line of questions of its own. */
    public Latest latest() {
        return new Latest();
    }
}
