package planewright.app.ui.common;

import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JTextArea;
import planewright.app.journal.Edit;

/**
 * The saves of a form, one at a time, and none while something is still on its way into it. A form that was written on while
 * its save waited its turn stays, and goes on with what was saved.
 *
 * @param <T> what is written, all of it
 */
public final class Saves<T> {
    private final Workroom room;
    private final JTextArea problem;
    private final Supplier<T> written;
    private final Runnable save;
    private int held;
    private boolean wanted;

    /**
     * @param problem where failures are told
     * @param written what is written now
     * @param save checks what is written and makes its {@link #edit}
     */
    public Saves(Workroom room, JTextArea problem, Supplier<T> written, Runnable save) {
        this.room = room;
        this.problem = problem;
        this.written = written;
        this.save = save;
    }

    /** Saves now, or as soon as nothing is in the way. */
    public void ask() {
        wanted = true;
        if (isHeld()) {
            Words.show(problem, Texts.SAVE_WAITS.text());
        }
        saveIfWanted();
    }

    /** Whether a save waits its turn or something is still to come. */
    public boolean isHeld() {
        return held > 0;
    }

    /** Something is on its way into the form; every hold is followed by one {@link #release}. */
    public void hold() {
        held++;
    }

    /**
     * It is there.
     *
     * @param well without that, nothing is saved until it is asked for again
     */
    public void release(boolean well) {
        held--;
        wanted &= well;
        saveIfWanted();
    }

    /** What is asked for and not begun is not wanted any longer. */
    public void drop() {
        wanted = false;
    }

    /**
     * Makes the edit that saves the form.
     *
     * @param saved takes what was written as it was saved
     * @param close closes the form; runs after that if the same is written still
     */
    public void edit(Edit edit, Consumer<T> saved, Runnable close) {
        var sent = written.get();
        hold();
        room.edit(
                edit,
                () -> {
                    Words.show(problem, "");
                    saved.accept(sent);
                    end(sent, close);
                },
                failure -> {
                    release(false);
                    Words.show(problem, Words.reason(failure));
                });
    }

    private void end(T sent, Runnable close) {
        held--;
        if (!isHeld() && sent.equals(written.get())) {
            drop();
            close.run();
        } else {
            saveIfWanted();
        }
    }

    private void saveIfWanted() {
        if (wanted && !isHeld()) {
            wanted = false;
            save.run();
        }
    }
}
