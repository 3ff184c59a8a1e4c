package planewright.app.ui.common;

/** How long work goes on in one event: short enough that nobody notices; what is left comes in the next. */
public final class Turn {
    private static final long NANOS = 12_000_000;

    private long end;

    /** A new event. */
    public void begin() {
        end = System.nanoTime() + NANOS;
    }

    /** Whether there is time for another piece. */
    public boolean goesOn() {
        return System.nanoTime() < end;
    }
}
