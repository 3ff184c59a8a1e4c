package planewright.app.ui.planform;

import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import planewright.api.journal.Planform;
import planewright.app.ui.common.Background;
import planewright.app.ui.common.Texts;
import planewright.shared.lattice.BalanceBand;
import planewright.shared.lattice.Overlap;
import planewright.shared.planform.MarginBand;

/**
 * Where a shape should balance, computed beside the event thread while it changes. One question is at work at a time; of those
 * that come meanwhile the newest is next, so that answers keep coming while a handle is dragged without end.
 */
final class LiveBalance {
    private final Background background;
    private final Consumer<Answer> answered;
    private final Consumer<Throwable> failed;
    private final AtomicReference<Question> newest = new AtomicReference<>();
    private boolean atWork;

    /**
     * Where a shape should balance.
     *
     * @param band empty where it cannot be told
     * @param why it cannot, for the builder; empty where it can
     */
    record Answer(Optional<BalanceBand> band, String why) {
        static Answer none(String why) {
            return new Answer(Optional.empty(), why);
        }
    }

    /**
     * @param answered hears of answers on the event thread; of none where the shape has none
     * @param failed hears there of what should not happen
     */
    LiveBalance(Background background, Consumer<Answer> answered, Consumer<Throwable> failed) {
        this.background = background;
        this.answered = answered;
        this.failed = failed;
    }

    /**
     * @param layout of the build, which tells the usual margin
     * @param quick from coarse lattices, for a shape that changes at once again
     */
    private record Question(Planform shape, String layout, boolean quick) {}

    /** On the event thread. */
    void ask(Planform shape, String layout, boolean quick) {
        var question = new Question(shape, layout, quick);
        if (!question.equals(newest.getAndSet(question)) && !atWork) {
            work();
        }
    }

    private void work() {
        var question = newest.get();
        atWork = true;
        background.run(() -> answer(question), answer -> done(question, answer), failure -> {
            failed.accept(failure);
            done(question, Answer.none(Texts.PLANFORM_NO_RANGE.text()));
        });
    }

    private void done(Question question, Answer answer) {
        atWork = false;
        boolean last = question.equals(newest.get());
        if (last || answer.band().isPresent()) {
            answered.accept(answer);
        }
        if (!last) {
            work();
        }
    }

    private Answer answer(Question question) {
        try {
            var overlap = Overlap.first(question.shape);
            if (overlap.isPresent()) {
                return Answer.none(Texts.PLANFORM_OVERLAP.text(
                        overlap.get().one(), overlap.get().other()));
            }
            if (!BalanceBand.isFeasible(question.shape)) {
                return Answer.none(Texts.PLANFORM_NO_RANGE.text());
            }
            var margin = MarginBand.usual(question.layout, question.shape);
            return new Answer(
                    Optional.of(
                            question.quick
                                    ? BalanceBand.first(question.shape, margin)
                                    : BalanceBand.settled(question.shape, margin, step -> giveWay(question))),
                    "");
        } catch (ArithmeticException | IllegalArgumentException | CancellationException none) {
            return Answer.none(Texts.PLANFORM_NO_RANGE.text());
        }
    }

    private void giveWay(Question question) {
        if (!question.equals(newest.get())) {
            throw new CancellationException();
        }
    }
}
