package planewright.app.ui;

import java.util.concurrent.CompletableFuture;

/** Does what the program must not: it waits on the event thread, until somebody has seen it. */
public final class OursThatWaits {
    private OursThatWaits() {}

    public static void on(CompletableFuture<?> seen) {
        seen.join();
    }
}
