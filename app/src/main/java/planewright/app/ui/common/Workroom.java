package planewright.app.ui.common;

import java.awt.EventQueue;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import planewright.app.Program;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.OpenJournal;

/**
 * What pages have in common: the program, the build that is shown, edits and where they tell of themselves. All methods on
 * the event thread.
 */
public final class Workroom {
    private final Program program;
    private final Background background;
    private final Consumer<String> status;
    private final List<Runnable> changed = new CopyOnWriteArrayList<>();
    private final List<Consumer<String>> entryWanted = new CopyOnWriteArrayList<>();
    private final List<Consumer<String>> calculatorWanted = new CopyOnWriteArrayList<>();
    private Optional<String> build = Optional.empty();

    public Workroom(Program program, Background background, Consumer<String> status) {
        this.program = program;
        this.background = background;
        this.status = status;
        program.journal().listen(edit -> EventQueue.invokeLater(this::tellChanged));
    }

    public Program program() {
        return program;
    }

    public OpenJournal journal() {
        return program.journal();
    }

    public Background background() {
        return background;
    }

    public LocalDateTime now() {
        return LocalDateTime.now(program.clock()).truncatedTo(ChronoUnit.MINUTES);
    }

    /** The build that is shown. */
    public Optional<BuildRecord> build() {
        return build.flatMap(journal()::build);
    }

    /** Shows a build. */
    public void show(String buildId) {
        build = Optional.of(buildId);
        tellChanged();
    }

    /** Shows an entry in its log. */
    public void showEntry(String buildId, String entryId) {
        show(buildId);
        entryWanted.forEach(listener -> listener.accept(entryId));
    }

    /** Shows a calculator for the build that is shown. */
    public void showCalculator(String id) {
        calculatorWanted.forEach(listener -> listener.accept(id));
    }

    /** Makes an edit in the background and tells of it. */
    public void edit(Edit edit, Runnable done) {
        background.run(
                () -> {
                    journal().apply(edit);
                    return edit;
                },
                made -> {
                    say(Texts.SAVED.text(made.what()));
                    done.run();
                });
    }

    public void undo() {
        background.run(
                () -> journal().undo(),
                undone -> undone.ifPresent(edit -> say(Texts.UNDO.text() + ": " + edit.what())));
    }

    public void redo() {
        background.run(
                () -> journal().redo(),
                redone -> redone.ifPresent(edit -> say(Texts.REDO.text() + ": " + edit.what())));
    }

    /** Says something in the status strip. */
    public void say(String message) {
        status.accept(message);
    }

    /** Hears when the journal, or the build that is shown, has changed. */
    public void onChange(Runnable listener) {
        changed.add(listener);
    }

    /** Hears which entry somebody wants to see. */
    public void onEntryWanted(Consumer<String> listener) {
        entryWanted.add(listener);
    }

    /** Hears which calculator somebody wants to see. */
    public void onCalculatorWanted(Consumer<String> listener) {
        calculatorWanted.add(listener);
    }

    private void tellChanged() {
        changed.forEach(Runnable::run);
    }
}
