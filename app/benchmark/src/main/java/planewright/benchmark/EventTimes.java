package planewright.benchmark;

import java.awt.AWTEvent;
import java.awt.EventQueue;
import java.awt.Toolkit;
import java.awt.event.InvocationEvent;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Times every event on the event thread: as the builder waits, and what the thread itself computes, which a busy machine changes
 * less. What only looks at the window for the measurement is not counted.
 */
final class EventTimes extends EventQueue {
    private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    private final List<Double> milliseconds = new ArrayList<>();
    private final List<Double> processor = new ArrayList<>();
    private final Map<String, Double> longest = new LinkedHashMap<>();
    private volatile String doing = "";

    private EventTimes() {}

    /** From now on the events of this program are timed. */
    static EventTimes begin() {
        var times = new EventTimes();
        Toolkit.getDefaultToolkit().getSystemEventQueue().push(times);
        return times;
    }

    /** An event that is not counted. */
    static final class Look extends InvocationEvent {
        private static final long serialVersionUID = 1L;

        Look(Runnable look) {
            super(Toolkit.getDefaultToolkit(), look);
        }
    }

    /** Says what the builder does from now on. */
    void doing(String what) {
        doing = what;
    }

    @Override
    protected void dispatchEvent(AWTEvent event) {
        if (event instanceof Look) {
            super.dispatchEvent(event);
            return;
        }
        var what = doing;
        long began = System.nanoTime();
        long busy = threads.getCurrentThreadCpuTime();
        super.dispatchEvent(event);
        double took = (System.nanoTime() - began) / 1e6;
        processor.add((threads.getCurrentThreadCpuTime() - busy) / 1e6);
        milliseconds.add(took);
        longest.merge(what, took, Math::max);
    }

    /** In the child: tells how long events took. */
    void tell() {
        Fingers.look(() -> {
            tell("", milliseconds);
            tell(", of the processor", processor);
            return milliseconds;
        });
    }

    /** In the child: tells the longest event of each thing that was done. */
    void tellLongest() {
        Fingers.look(() -> {
            longest.forEach((what, took) -> ChildJvm.tell("longest: " + what, took));
            return longest;
        });
    }

    /** Of events that take a millisecond or more: layouts send notices by the thousand, which would dilute the others. */
    private static void tell(String kind, List<Double> unsorted) {
        var times = unsorted.stream()
                .mapToDouble(Double::doubleValue)
                .filter(time -> time >= 1)
                .sorted()
                .toArray();
        ChildJvm.tell("median" + kind, times[times.length / 2]);
        ChildJvm.tell("nearly all" + kind, times[(int) (times.length * 0.99)]);
        ChildJvm.tell("longest" + kind, times[times.length - 1]);
    }
}
