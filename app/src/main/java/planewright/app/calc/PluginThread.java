package planewright.app.calc;

import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** Something of a plugin that runs on a thread of its own, which is left alone if it does not come to an end. */
final class PluginThread<T> {
    /** Longer than any plugin needs on a slow disk; one that never comes up keeps the others waiting no longer. */
    private static final int START_SECONDS = 10;

    private final FutureTask<T> task;

    private PluginThread(FutureTask<T> task) {
        this.task = task;
    }

    static <T> PluginThread<T> begin(PluginPackage plugin, Callable<T> work) {
        var task = new FutureTask<>(work);
        var thread = new Thread(task, "planewright-start-" + plugin.id());
        thread.setDaemon(true);
        thread.start();
        return new PluginThread<>(task);
    }

    /**
     * What came out; waits for it.
     *
     * @throws Faulty if it fails, or does not end in time
     */
    T result() throws Faulty {
        try {
            return task.get(START_SECONDS, TimeUnit.SECONDS);
        } catch (TimeoutException never) {
            throw new Faulty("it has not come up within {0} s", START_SECONDS);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new Faulty("the start was stopped");
        } catch (ExecutionException failure) {
            if (failure.getCause() instanceof Faulty faulty) {
                throw faulty;
            }
            throw new Faulty("it cannot be started: {0}", words(failure.getCause()));
        }
    }

    /** What is at the bottom of a failure. */
    static String words(Throwable failure) {
        var root = failure;
        while (root.getCause() != null) {
            root = root.getCause();
        }
        return root.getClass().getSimpleName() + (root.getMessage() == null ? "" : ", " + root.getMessage());
    }
}
