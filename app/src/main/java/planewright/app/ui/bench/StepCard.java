package planewright.app.ui.bench;

import java.awt.Font;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.function.Function;
import javax.swing.JPanel;
import planewright.api.quantity.Units;
import planewright.app.journal.Edit;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.Card;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.Stack;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Times;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;
import planewright.app.ui.common.Wrapping;

/** The next step of a procedure: what to do, with what, what to mind, and the way to note it as done. */
final class StepCard extends Card {
    private static final long serialVersionUID = 1L;

    StepCard(Workroom room, NextStep next, LocalDateTime now) {
        super(new Stack(4));
        setName("step-" + next.procedure().name());
        var step = next.step();
        add(Look.sized(
                Words.quiet(
                        Texts.STEP_OF.text(next.build().name(), next.procedure().name(), next.number(), next.steps())),
                0.92,
                Font.PLAIN));
        add(Words.of(step.text()));
        var facts = new ArrayList<>(step.materials());
        step.handsOn()
                .map(time -> Duration.ofSeconds(Math.round(time.in(Units.SECOND))))
                .ifPresent(time -> facts.add(Texts.STEP_HANDS_ON.text(Times.span(time))));
        if (!facts.isEmpty()) {
            add(Look.sized(Words.quiet(String.join(" · ", facts)), 0.92, Font.PLAIN));
        }
        next.notBefore()
                .filter(now::isBefore)
                .ifPresent(until -> add(Look.sized(
                        Words.of(Texts.STEP_NOT_BEFORE.text(Times.clock(until, now.toLocalDate()))), 1, Font.BOLD)));
        step.cautions().forEach(caution -> add(Words.coloured(caution, "warn")));
        var actions = new JPanel(new Wrapping(6));
        actions.setOpaque(false);
        actions.add(Buttons.of(
                "step-done", Texts.STEP_DONE.text(), () -> note(room, at -> next.done(room.journal(), at))));
        if (next.number() < next.steps()) {
            actions.add(Buttons.plain(
                    "steps-all-done",
                    Texts.STEPS_ALL_DONE.text(),
                    () -> note(room, at -> next.allDone(room.journal(), at))));
        }
        add(actions);
    }

    private static void note(Workroom room, Function<LocalDateTime, Edit> edit) {
        var now = room.now();
        room.edit(() -> edit.apply(now), () -> {});
    }
}
