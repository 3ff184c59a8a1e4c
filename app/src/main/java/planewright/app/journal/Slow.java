package planewright.app.journal;

/** Marks work that may wait for a disk or takes long. It refuses to run on the event thread, where it would freeze the window. */
public final class Slow {
    private static final String EVENT_THREAD = "AWT-EventQueue";

    private Slow() {}

    /**
     * Called first by whatever may block.
     *
     * @throws IllegalStateException on the event thread: a mistake of ours, told at once instead of felt later
     */
    public static void work(String what) {
        if (Thread.currentThread().getName().startsWith(EVENT_THREAD)) {
            throw new IllegalStateException(what + " was asked for on the event thread; run it in the background");
        }
    }
}
