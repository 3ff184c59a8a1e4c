package planewright.app.ui.bench;

import java.awt.Font;
import java.time.Duration;
import java.time.LocalDateTime;
import javax.swing.JProgressBar;
import javax.swing.SwingConstants;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.Card;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.Stack;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Times;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;

/** A joint on the bench: how far it is, in a bar and in words. */
final class JointCard extends Card {
    private static final long serialVersionUID = 1L;
    private static final int WHOLE = 1000;

    JointCard(Workroom room, BenchJoint bench, LocalDateTime now) {
        super(new Stack(4));
        var joint = bench.joint();
        setName("bench-" + joint.name());
        var name = Buttons.plain(
                "bench-show-" + joint.name(),
                joint.name(),
                () -> room.showEntry(bench.build().id(), bench.entry()));
        name.setHorizontalAlignment(SwingConstants.LEADING);
        name.setToolTipText(Texts.SHOW_ENTRY.text());
        name.setMargin(new java.awt.Insets(0, 0, 0, 0));
        add(name);
        add(Look.sized(Words.quiet(where(bench)), 0.92, Font.PLAIN));
        if (bench.end().isPresent() && bench.state(now) != BenchJoint.State.PAST) {
            add(bar(bench, now));
        }
        add(Look.sized(Words.of(words(bench, now)), 1, Font.BOLD));
    }

    private static String where(BenchJoint bench) {
        var material = bench.joint().material();
        return bench.build().name() + (material.isEmpty() ? "" : " · " + material);
    }

    private static JProgressBar bar(BenchJoint bench, LocalDateTime now) {
        var bar = new JProgressBar(0, WHOLE);
        bar.setValue((int) (WHOLE * bench.share(now)));
        bar.getAccessibleContext().setAccessibleName(bench.joint().name());
        if (bench.state(now) != BenchJoint.State.HANDS_OFF) {
            bar.setForeground(Look.colour("fine"));
        } else {
            bar.setForeground(Look.colour("second"));
        }
        return bar;
    }

    private static String words(BenchJoint bench, LocalDateTime now) {
        var next = bench.next(now);
        var clock = Times.clock(next, now.toLocalDate());
        var left = Texts.TIME_LEFT.text(Times.span(Duration.between(now, next)));
        return switch (bench.state(now)) {
            case HANDS_OFF -> Texts.HANDS_OFF.text(clock) + " " + left;
            case CURING -> Texts.BENCH_CURING.text(clock) + " " + left;
            case NO_END -> Texts.BENCH_NO_END.text(clock);
            case PAST -> bench.end().isEmpty() ? Texts.BENCH_NO_END.text(clock) : Texts.BENCH_READY.text(clock);
            default -> Texts.BENCH_READY.text(clock);
        };
    }
}
