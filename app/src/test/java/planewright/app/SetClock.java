package planewright.app;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.concurrent.atomic.AtomicReference;

/** A clock that stands until it is moved on. */
public final class SetClock extends Clock {
    private final AtomicReference<Instant> now;

    public SetClock(Instant now) {
        this.now = new AtomicReference<>(now);
    }

    public void advance(Duration by) {
        now.updateAndGet(at -> at.plus(by));
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return this;
    }

    @Override
    public Instant instant() {
        return now.get();
    }
}
