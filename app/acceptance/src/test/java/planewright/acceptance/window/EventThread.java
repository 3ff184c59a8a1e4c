package planewright.acceptance.window;

import java.awt.AWTException;
import java.awt.EventQueue;
import java.awt.Robot;
import java.awt.Toolkit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.RepaintManager;
import javax.swing.ToolTipManager;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * Fails a test in which a component was touched off the event thread, an exception was lost on it, or something waited on
 * it for files, other threads or time.
 */
final class EventThread implements BeforeEachCallback, AfterEachCallback {
    private final List<String> faults = Collections.synchronizedList(new ArrayList<>());
    private RepaintManager managerBefore;
    private Thread.UncaughtExceptionHandler handlerBefore;
    private BlockingWatch watch;

    @Override
    public void beforeEach(ExtensionContext test) throws AWTException {
        putPointerAside();
        hideHint();
        managerBefore = RepaintManager.currentManager(null);
        RepaintManager.setCurrentManager(new Watching());
        handlerBefore = Thread.getDefaultUncaughtExceptionHandler();
        Thread.setDefaultUncaughtExceptionHandler((thread, failure) ->
                faults.add("lost on " + thread.getName() + ": " + failure + " at " + List.of(failure.getStackTrace())));
        watch = BlockingWatch.start(faults::add);
    }

    /** Where it lies on a component, a hint comes up, which takes the next Escape for itself. */
    private static void putPointerAside() throws AWTException {
        var screen = Toolkit.getDefaultToolkit().getScreenSize();
        new Robot().mouseMove(screen.width - 1, screen.height - 1);
    }

    /** One that a test has left counts as up for seconds after its window has gone, and takes that Escape as well. */
    private static void hideHint() {
        Hands.onEventThread(() -> {
            var hints = ToolTipManager.sharedInstance();
            hints.setEnabled(false);
            hints.setEnabled(true);
            return hints;
        });
    }

    @Override
    public void afterEach(ExtensionContext test) {
        watch.stop();
        RepaintManager.setCurrentManager(managerBefore);
        Thread.setDefaultUncaughtExceptionHandler(handlerBefore);
        if (!faults.isEmpty()) {
            throw new AssertionError(String.join("\n", faults));
        }
    }

    /** Notes who touches components off the event thread; {@code repaint} may be called from anywhere. */
    private final class Watching extends RepaintManager {
        @Override
        public void addInvalidComponent(JComponent component) {
            check(component);
            super.addInvalidComponent(component);
        }

        @Override
        public void addDirtyRegion(JComponent component, int x, int y, int width, int height) {
            check(component);
            super.addDirtyRegion(component, x, y, width, height);
        }

        private void check(JComponent component) {
            if (EventQueue.isDispatchThread()) {
                return;
            }
            var stack = Thread.currentThread().getStackTrace();
            for (var frame : stack) {
                if (frame.getMethodName().equals("repaint")
                        || frame.getMethodName().equals("imageUpdate")) {
                    return;
                }
            }
            faults.add(component + " touched off the event thread: " + List.of(stack));
        }
    }
}
