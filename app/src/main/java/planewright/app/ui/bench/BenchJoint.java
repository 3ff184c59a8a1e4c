package planewright.app.ui.bench;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Optional;
import planewright.api.journal.Joint;
import planewright.app.journal.BuildRecord;

/**
 * A joint on the bench and where it is written.
 *
 * @param build the build it holds together
 * @param entry the id of its entry
 * @param joint the joint
 */
record BenchJoint(BuildRecord build, String entry, Joint joint) {
    /** For so long a joint that is ready stays to be seen. */
    private static final Duration READY_SHOWN = Duration.ofHours(24);

    /** How far it is. */
    enum State {
        HANDS_OFF,
        CURING,
        READY,
        /** Nobody has written when it may be touched. */
        NO_END,
        PAST
    }

    State state(LocalDateTime now) {
        if (end().isEmpty()) {
            return now.isBefore(joint.start().plus(READY_SHOWN)) ? State.NO_END : State.PAST;
        }
        if (now.isBefore(touchable())) {
            return State.HANDS_OFF;
        }
        var end = end().get();
        if (now.isBefore(end)) {
            return State.CURING;
        }
        return now.isBefore(end.plus(READY_SHOWN)) ? State.READY : State.PAST;
    }

    /** What is waited for next: until it may be touched, then until it is fully cured. */
    LocalDateTime next(LocalDateTime now) {
        return state(now) == State.HANDS_OFF ? touchable() : end().orElse(joint.start());
    }

    /** Whether it may not be touched at a later time; one of which nobody wrote an end counts as held while it is new. */
    boolean isHeldAt(LocalDateTime later, LocalDateTime now) {
        return end().isEmpty() ? state(now) == State.NO_END : later.isBefore(touchable());
    }

    /** How much of the whole wait is over, 0 to 1. */
    double share(LocalDateTime now) {
        long whole =
                Duration.between(joint.start(), end().orElse(joint.start())).toSeconds();
        long gone = Duration.between(joint.start(), now).toSeconds();
        return whole <= 0 ? 1 : Math.max(0, Math.min(1, (double) gone / whole));
    }

    /** Whether it came to be touchable, or fully cured, after one time and by another. */
    boolean becameReady(LocalDateTime after, LocalDateTime by) {
        return joint.handsOffUntil().filter(at -> isWithin(at, after, by)).isPresent()
                || joint.fullyCured().filter(at -> isWithin(at, after, by)).isPresent();
    }

    private static boolean isWithin(LocalDateTime at, LocalDateTime after, LocalDateTime by) {
        return at.isAfter(after) && !at.isAfter(by);
    }

    private LocalDateTime touchable() {
        return joint.handsOffUntil().or(joint::fullyCured).orElse(joint.start());
    }

    /** When it is through; empty where nobody has written it. */
    Optional<LocalDateTime> end() {
        return joint.fullyCured().or(joint::handsOffUntil);
    }
}
