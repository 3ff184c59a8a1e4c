package planewright.benchmark;

import java.io.IOException;

/** A part of the run that can be asked for alone. */
interface Section {
    /** Measures, and tells the run's report. */
    void measure(Run run) throws IOException, InterruptedException;

    /** Whether it measures with the synthetic journal, which takes a minute to write. */
    default boolean needsJournal() {
        return true;
    }
}
