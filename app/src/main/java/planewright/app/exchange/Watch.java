package planewright.app.exchange;

import java.util.concurrent.CancellationException;

/** Hears how far long work has come, and may end it. */
@FunctionalInterface
public interface Watch {
    /** Nobody listens, and nobody ends it. */
    Watch NONE = what -> {};

    /**
     * Called before each piece of work.
     *
     * @param what a file's name
     * @throws CancellationException to end the work; then everything is as it was
     */
    void reached(String what);
}
