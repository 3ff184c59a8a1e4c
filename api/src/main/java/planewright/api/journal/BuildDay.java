package planewright.api.journal;

import java.time.LocalDate;

/** A build on a day: where a template came from, went to, or flew. */
public interface BuildDay {
    /** The build's id; the journal need not hold that build. */
    String build();

    /** What the build was called. */
    String name();

    LocalDate date();
}
