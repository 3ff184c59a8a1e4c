package planewright.acceptance.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;

/** Joints of all builds in the rail at the right, from closing to ready, by a clock that the test sets. */
class BenchRailTest extends InNewJournal {
    @Test
    void aJointIsFollowedFromTheLineTypedToTheNoticeAndUndoTakesItOff() throws Exception {
        var clock = new SetClock(OpenWindow.CLOCK.instant());
        try (var window = OpenWindow.on(journal, user, clock)) {
            assertThat(window.frame().isShowing()).isTrue();
            if (!Hands.isThere("bench")) {
                Hands.click("show-bench");
            }
            see("Nothing cures now");
            begin("Teal");
            write("fin joint contact adhesive 12 h");
            see("hands off until");
            see("(12 h 0 min to go)");
            begin("Wigeon");
            write("spar joint laminating epoxy 40 h");
            see("(40 h 0 min to go)");
            Hands.waitUntil(
                    "two",
                    () -> Hands.all(javax.swing.AbstractButton.class).stream()
                            .anyMatch(button ->
                                    button.getText() != null && button.getText().equals("Bench (2)")));

            clock.advance(Duration.ofHours(11));
            see("(1 h 0 min to go)");
            clock.advance(Duration.ofHours(1));
            see("ready since");
            see("Ready: fin joint (Teal)");
            Hands.waitUntil(
                    "one",
                    () -> Hands.all(javax.swing.AbstractButton.class).stream()
                            .anyMatch(button ->
                                    button.getText() != null && button.getText().equals("Bench (1)")));

            Hands.click("undo");
            Hands.waitUntil(
                    "the spar gone",
                    () -> Hands.all(java.awt.Component.class).stream()
                            .noneMatch(each -> "bench-spar joint".equals(each.getName())));
            assertThat(Hands.isThere("bench-fin joint")).isTrue();
        }
    }

    /** A clock that stands until it is moved on. */
    private static final class SetClock extends Clock {
        private final AtomicReference<Instant> now;

        SetClock(Instant now) {
            this.now = new AtomicReference<>(now);
        }

        void advance(Duration by) {
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
}
