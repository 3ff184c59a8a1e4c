package planewright.acceptance.window;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.locks.LockSupport;
import java.util.function.Consumer;

/**
 * Looks again and again at what the event thread is doing, and tells where our code makes it wait for a file, another
 * thread or a time. What the toolkit itself reads (fonts, classes, texts of a bundle), random numbers of the system, which
 * never wait, and handing work over to other threads, whose lock is held for a moment only, do not count.
 */
final class BlockingWatch {
    private static final List<String> WAITING = List.of(
            "java.io.FileInputStream",
            "java.io.FileOutputStream",
            "java.io.RandomAccessFile",
            "sun.nio.ch.FileDispatcherImpl",
            "sun.nio.ch.UnixFileDispatcherImpl",
            "sun.nio.fs.UnixNativeDispatcher",
            "java.lang.Thread.sleep",
            "java.lang.Object.wait",
            "jdk.internal.misc.Unsafe.park");
    private static final List<String> TOOLKIT = List.of(
            "java.awt.",
            "javax.swing.",
            "sun.awt.",
            "sun.font.",
            "sun.java2d.",
            "com.formdev.",
            "java.lang.ClassLoader",
            "jdk.internal.loader.",
            "java.util.ResourceBundle",
            "java.util.concurrent.ThreadPoolExecutor.execute",
            "java.util.concurrent.ScheduledThreadPoolExecutor.schedule",
            "java.security.SecureRandom");

    /** A wait that is longer than this is seen; looking all the time would slow down what it looks at. */
    private static final long GLANCE_NANOS = 500_000;

    private final Thread watcher;
    private volatile boolean stopped;

    private BlockingWatch(Consumer<String> found) {
        watcher = new Thread(() -> watch(found), "blocking-watch");
        watcher.setDaemon(true);
        watcher.setPriority(Thread.MIN_PRIORITY);
    }

    static BlockingWatch start(Consumer<String> found) {
        var watch = new BlockingWatch(found);
        watch.watcher.start();
        return watch;
    }

    void stop() {
        stopped = true;
    }

    private void watch(Consumer<String> found) {
        var thread = Optional.<Thread>empty();
        while (!stopped) {
            thread = thread.filter(Thread::isAlive).or(BlockingWatch::eventThread);
            thread.flatMap(alive -> blocking(alive.getStackTrace())).ifPresent(found);
            LockSupport.parkNanos(GLANCE_NANOS);
        }
    }

    /** The wait that a stack is in, with the stack; empty where it is in none of ours. */
    static Optional<String> blocking(StackTraceElement[] stack) {
        if (stack.length == 0 || WAITING.stream().noneMatch(name(stack[0])::startsWith)) {
            return Optional.empty();
        }
        for (var frame : stack) {
            var name = name(frame);
            if (name.startsWith("planewright.app.") || name.startsWith("planewright.balance.")) {
                return Optional.of("the event thread waits: " + List.of(stack));
            }
            if (TOOLKIT.stream().anyMatch(name::startsWith)) {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }

    private static String name(StackTraceElement frame) {
        return frame.getClassName() + "." + frame.getMethodName();
    }

    private static Optional<Thread> eventThread() {
        return Thread.getAllStackTraces().keySet().stream()
                .filter(thread -> thread.getName().startsWith("AWT-EventQueue"))
                .findFirst();
    }
}
