package planewright.app.ui.bench;

import java.awt.Font;
import java.time.LocalDateTime;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import planewright.app.ui.common.Card;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.Stack;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Times;
import planewright.app.ui.common.Words;

/** The session that goes on or comes next, and what of the joints may be touched in it. */
final class SessionCard extends Card {
    private static final long serialVersionUID = 1L;

    SessionCard(NextSession session, List<BenchJoint> joints, LocalDateTime now) {
        super(new Stack(4));
        setName("bench-session");
        var today = now.toLocalDate();
        boolean goesOn = !session.from().isAfter(now);
        add(Look.sized(
                Words.of(
                        goesOn
                                ? Texts.SESSION_NOW.text(Times.clock(session.to(), today))
                                : Texts.SESSION_NEXT.text(
                                        Times.day(session.day()),
                                        Times.clock(session.from(), session.day()),
                                        Times.clock(session.to(), session.to().toLocalDate()))),
                1,
                Font.BOLD));
        tell(Texts.SESSION_READY, joints, joint -> !joint.isHeldAt(session.from(), now), "fine");
        tell(
                Texts.SESSION_DURING,
                joints,
                joint -> joint.isHeldAt(session.from(), now) && !joint.isHeldAt(session.to(), now),
                "second");
        tell(Texts.SESSION_HELD, joints, joint -> joint.isHeldAt(session.to(), now), "quiet");
    }

    private void tell(Texts words, List<BenchJoint> joints, Predicate<BenchJoint> which, String colour) {
        var names = joints.stream()
                .filter(which)
                .map(joint -> joint.joint().name() + " (" + joint.build().name() + ")")
                .collect(Collectors.joining(", "));
        if (!names.isEmpty()) {
            add(Words.coloured(words.text(names), colour));
        }
    }
}
