package planewright.app.store;

import java.nio.file.attribute.BasicFileAttributes;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.concurrent.TimeUnit;

/** Tells a file from what it was before by its time and size, in one number. */
final class Stamp {
    /** The stamp of a file of which nothing is known. */
    static final long UNKNOWN = 0;

    /** FAT keeps times in steps of two seconds: a file may change within one and keep its stamp. */
    private static final Duration STEP = Duration.ofSeconds(2);

    /** As many as times until the year 2112 leave. */
    private static final int SIZE_BITS = 11;

    private Stamp() {}

    /** The time in microseconds, and what fits of the size below it. */
    static long of(BasicFileAttributes file) {
        long micros = file.lastModifiedTime().to(TimeUnit.MICROSECONDS);
        return micros << SIZE_BITS | file.size() & (1 << SIZE_BITS) - 1;
    }

    /** The stamp, if the file is old enough at that moment that every later change would show in it; else {@link #UNKNOWN}. */
    static long settled(long stamp, Instant moment) {
        var changed = Instant.EPOCH.plus(stamp >> SIZE_BITS, ChronoUnit.MICROS);
        return changed.isBefore(moment.minus(STEP)) ? stamp : UNKNOWN;
    }
}
