package planewright.benchmark;

import java.awt.AWTEvent;
import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.Frame;
import java.awt.Toolkit;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.lang.reflect.InvocationTargetException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.locks.LockSupport;
import javax.swing.JComponent;
import javax.swing.JScrollBar;
import javax.swing.JScrollPane;
import javax.swing.JTabbedPane;
import javax.swing.SwingUtilities;

/**
 * Opens the page of pictures and scrolls: turns of the wheel sixty times a second, then the bar dragged to and fro, first where no
 * small views have been made, then where they are kept. Every event's time on the event thread counts, painting included.
 */
public final class ScrollThroughPictures {
    private static final int TURNS = 600;
    private static final int DRAGS = 300;
    private static final long FRAME_NANOS = 16_000_000;

    private ScrollThroughPictures() {}

    public static void main(String[] words) throws InterruptedException, InvocationTargetException {
        OneSession.untilFilled();
        EventQueue.invokeAndWait(() -> {
            var tabs = (JTabbedPane) named("pages").orElseThrow();
            tabs.setSelectedComponent(named("pictures-page").orElseThrow());
        });
        var grid = (JComponent) named("picture-grid").orElseThrow();
        var bar = ((JScrollPane) SwingUtilities.getAncestorOfClass(JScrollPane.class, grid)).getVerticalScrollBar();
        var watch = new Watch();
        Toolkit.getDefaultToolkit().getSystemEventQueue().push(watch);
        var random = new Random(1);
        for (int round = 0; round < 2; round++) {
            for (int turn = 0; turn < TURNS; turn++) {
                by(bar, bar.getUnitIncrement(1) * 3);
            }
            for (int drag = 0; drag < DRAGS; drag++) {
                by(bar, random.nextInt(bar.getMaximum() + 1) - bar.getValue());
            }
            by(bar, -bar.getMaximum());
        }
        tell("", watch.milliseconds);
        tell(", of the processor", watch.processor);
        ChildJvm.tell("heap in use, MiB", IdleHeap.whenStill());
        EventQueue.invokeLater(OneSession::close);
    }

    private static void by(JScrollBar bar, int way) throws InterruptedException, InvocationTargetException {
        EventQueue.invokeAndWait(() -> bar.setValue(bar.getValue() + way));
        LockSupport.parkNanos(FRAME_NANOS);
    }

    private static Optional<Component> named(String name) {
        return Arrays.stream(Frame.getFrames())
                .flatMap(frame -> below(frame).stream())
                .filter(each -> name.equals(each.getName()))
                .findFirst();
    }

    private static List<Component> below(Component component) {
        var found = new ArrayList<Component>(List.of(component));
        if (component instanceof Container container) {
            for (var child : container.getComponents()) {
                found.addAll(below(child));
            }
        }
        return found;
    }

    private static void tell(String kind, List<Double> milliseconds)
            throws InterruptedException, InvocationTargetException {
        EventQueue.invokeAndWait(() -> {
            var times = milliseconds.stream()
                    .mapToDouble(Double::doubleValue)
                    .sorted()
                    .toArray();
            ChildJvm.tell("median" + kind, times[times.length / 2]);
            ChildJvm.tell("nearly all" + kind, times[(int) (times.length * 0.99)]);
            ChildJvm.tell("longest" + kind, times[times.length - 1]);
        });
    }

    /** Times every event: as the builder waits, and what the event thread itself computes, which a busy machine changes less. */
    private static final class Watch extends EventQueue {
        private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        private final List<Double> milliseconds = new ArrayList<>();
        private final List<Double> processor = new ArrayList<>();

        @Override
        protected void dispatchEvent(AWTEvent event) {
            long began = System.nanoTime();
            long busy = threads.getCurrentThreadCpuTime();
            super.dispatchEvent(event);
            processor.add((threads.getCurrentThreadCpuTime() - busy) / 1e6);
            milliseconds.add((System.nanoTime() - began) / 1e6);
        }
    }
}
