package planewright.benchmark;

import java.awt.GraphicsEnvironment;
import java.io.IOException;

/** What an idle program holds. */
final class Memory implements Section {
    private static final double MOST = 96;

    @Override
    public void measure(Run run) throws IOException, InterruptedException {
        run.report()
                .goal(Goal.under(
                        "heap in use, idle, no window", "MiB", run.child().measure(IdleHeap.class), MOST));
        if (GraphicsEnvironment.isHeadless()) {
            run.report().leftOut("heap in use with the window", "there is no display");
        } else {
            run.report()
                    .goal(Goal.under(
                            "heap in use, idle, window open",
                            "MiB",
                            run.child().measure(OneSession.class, "heap"),
                            MOST));
        }
    }
}
