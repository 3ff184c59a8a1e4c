package planewright.benchmark;

import java.io.IOException;
import java.util.concurrent.TimeUnit;

/** Heap in use, MiB, of the program without a window: journal and search index open, plugins started, everything unneeded collected. */
public final class IdleHeap {
    private static final int MOST_ROUNDS = 40;
    private static final double STILL = 0.25;

    private IdleHeap() {}

    public static void main(String[] words) throws IOException, InterruptedException {
        try (var program = Opened.program()) {
            program.index().join();
            program.plugins().join();
            program.look();
            ChildJvm.tell("heap in use", whenStill());
        }
    }

    /** Collects until what is in use no longer changes. */
    static double whenStill() throws InterruptedException {
        double last = Double.MAX_VALUE;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            TimeUnit.MILLISECONDS.sleep(200);
            System.gc();
            double now =
                    (Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory()) / (double) (1 << 20);
            if (Math.abs(now - last) < STILL) {
                return now;
            }
            last = now;
        }
        return last;
    }
}
