package planewright.app.ui.common;

import java.awt.EventQueue;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import planewright.app.Program;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.Kept;
import planewright.app.journal.OpenJournal;
import planewright.app.journal.PictureRecord;

/**
 * What pages have in common: the program, the build that is shown, edits and where they tell of themselves. All methods on
 * the event thread.
 */
public final class Workroom {
    private static final int THREADS = 3;

    private final Program program;
    private final WindowMemory memory;
    private final ShownUnits units;
    private final Background background = new Background(THREADS, this::failed);
    /** Edits in the order in which they were made: each is made on what the one before has left. */
    private final Background edits = new Background(1, this::failed);

    private final Background drafts = new Background(1, this::failed);
    private final ThumbnailsAhead thumbnails;
    private final Consumer<String> status;
    private final List<Runnable> changed = new CopyOnWriteArrayList<>();
    private final List<Consumer<String>> buildWanted = new CopyOnWriteArrayList<>();
    private final List<Consumer<String>> entryWanted = new CopyOnWriteArrayList<>();
    private final List<PictureWanted> pictureWanted = new CopyOnWriteArrayList<>();
    private final List<BiConsumer<String, String>> measurementWanted = new CopyOnWriteArrayList<>();
    private final List<Consumer<String>> calculatorWanted = new CopyOnWriteArrayList<>();
    private final List<Runnable> begun = new CopyOnWriteArrayList<>();
    private final List<String> failures = new ArrayList<>();
    private final AtomicBoolean told = new AtomicBoolean(true);
    private final Background.Latest wanted = background.latest();
    private final Background.Latest looks = background.latest();
    private Optional<String> build = Optional.empty();
    /** What was shown before, the last one last. */
    private final Deque<String> earlier = new ArrayDeque<>();

    /**
     * @param memory what the window remembers
     * @param status shows what has just happened
     */
    public Workroom(Program program, WindowMemory memory, Consumer<String> status) {
        this.program = program;
        this.memory = memory;
        units = new ShownUnits(memory);
        this.status = status;
        thumbnails = new ThumbnailsAhead(program.pictures());
        program.journal().listen(thumbnails::hear);
        program.journal().listen(news -> tellSoon());
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

    /** What is half-written is kept in an order of its own, so that it need not wait for long work among the edits. */
    public Background drafts() {
        return drafts;
    }

    /** The units of the builder's choice. */
    public ShownUnits units() {
        return units;
    }

    /** What the window remembers. */
    public WindowMemory memory() {
        return memory;
    }

    /** Something that the window remembers has changed: every page shows it, and it is kept on disk. */
    public void remembered() {
        tellChanged();
        background.run(
                () -> {
                    memory.write();
                    return memory;
                },
                written -> {});
    }

    /** The builder's clock, to the minute. */
    public LocalDateTime now() {
        return LocalDateTime.now(program.clock()).truncatedTo(ChronoUnit.MINUTES);
    }

    /** The build that is shown. */
    public Optional<BuildRecord> build() {
        return build.flatMap(journal()::build);
    }

    /** Shows a build as soon as its log is at hand. */
    public void show(String buildId) {
        show(buildId, () -> {});
    }

    /** Shows a build that was just begun. */
    public void showBegun(String buildId) {
        show(buildId, () -> begun.forEach(Runnable::run));
    }

    /** Shows an entry in its log. */
    public void showEntry(String buildId, String entryId) {
        show(buildId, () -> entryWanted.forEach(listener -> listener.accept(entryId)));
    }

    /** Shows a picture of an entry large, among the others of the build. */
    public void showPicture(String buildId, String entryId, PictureRecord picture) {
        show(buildId, () -> pictureWanted.forEach(listener -> listener.show(entryId, picture, Optional.empty())));
    }

    /** Shows a picture large in the build that is shown, whichever entry it is of, if any. */
    public void showPicture(PictureRecord picture) {
        build().ifPresent(shown -> showPicture(shown.id(), "", picture));
    }

    /**
     * Shows a picture of an entry that is being written.
     *
     * @param captioned takes its caption
     */
    public void showPicture(PictureRecord picture, Consumer<String> captioned) {
        pictureWanted.forEach(listener -> listener.show("", picture, Optional.of(captioned)));
    }

    /** Shows a measurement of an entry in the table of all, with its history. */
    public void showMeasurement(String buildId, String entryId, String measurementId) {
        show(buildId, () -> measurementWanted.forEach(listener -> listener.accept(entryId, measurementId)));
    }

    private void show(String buildId, Runnable then) {
        bring(buildId, () -> {
            buildWanted.forEach(listener -> listener.accept(buildId));
            then.run();
        });
    }

    private void bring(String buildId, Runnable then) {
        journal().keepAtHand(Stream.concat(build.stream(), Stream.of(buildId)).collect(Collectors.toSet()));
        if (journal().isAtHand(buildId)) {
            wanted.drop();
            bringNow(buildId, then);
        } else {
            wanted.ask(() -> journal().log(buildId), log -> bringNow(buildId, then));
        }
    }

    private void bringNow(String buildId, Runnable then) {
        build.filter(shown -> !shown.equals(buildId)).ifPresent(earlier::addLast);
        build = Optional.of(buildId);
        journal().keepAtHand(Set.of(buildId));
        tellChanged();
        then.run();
    }

    /** Where the build that was shown is gone, the one that was shown before it is shown again. */
    private void comeBack() {
        if (build.isPresent() && build().isEmpty()) {
            earlier.removeIf(id -> journal().build(id).isEmpty());
            Optional.ofNullable(earlier.pollLast()).ifPresent(id -> bring(id, () -> {}));
        }
    }

    /** Takes in what other programs do to the journal's files from now on. */
    public void watch() {
        background.run(
                () -> {
                    program.watch();
                    return program;
                },
                watched -> {});
    }

    /** Takes in what other programs have done to the journal's files. */
    public void lookAround() {
        looks.ask(
                () -> {
                    program.look();
                    return program.folder().setAside();
                },
                setAside -> tellChanged());
    }

    /** Shows a calculator for the build that is shown. */
    public void showCalculator(String id) {
        calculatorWanted.forEach(listener -> listener.accept(id));
    }

    /** Makes an edit in the background and tells of it. */
    public void edit(Edit edit, Runnable done) {
        edit(edit, done, this::failed);
    }

    /** As {@link #edit(Edit, Runnable)}, with a place of its own for failures. */
    public void edit(Edit edit, Runnable done, Consumer<Throwable> otherwise) {
        edit(() -> edit, done, otherwise);
    }

    /** Works an edit out from what the journal holds once all edits before it are made, and makes it. */
    public void edit(Supplier<Edit> edit, Runnable done) {
        edit(edit, done, this::failed);
    }

    /** As {@link #edit(Supplier, Runnable)}, with a place of its own for failures. */
    public void edit(Supplier<Edit> edit, Runnable done, Consumer<Throwable> otherwise) {
        edits.run(
                () -> {
                    var made = edit.get();
                    journal().apply(made);
                    return made;
                },
                made -> {
                    say(Texts.SAVED.text(made.what()));
                    done.run();
                },
                otherwise);
    }

    /** Does something in its turn among the edits: after those made before it, before those made after. */
    public <T> void inOrder(Callable<T> work, Consumer<T> done) {
        inOrder(work, done, this::failed);
    }

    /** As {@link #inOrder(Callable, Consumer)}, with a place of its own for failures. */
    public <T> void inOrder(Callable<T> work, Consumer<T> done, Consumer<Throwable> otherwise) {
        edits.run(work, done, otherwise);
    }

    /** Takes the last edit back. */
    public void undo() {
        edits.run(
                () -> journal().undo(),
                undone ->
                        say(undone.map(edit -> Texts.UNDONE.text(edit.what())).orElseGet(Texts.NOTHING_TO_UNDO::text)));
    }

    /** Takes an edit back that was the last when it was offered; if another was made since, nothing is taken back. */
    public void undo(Edit offered) {
        edits.run(
                () -> journal().lastDone().filter(offered::equals).isPresent()
                        ? journal().undo()
                        : Optional.<Edit>empty(),
                undone -> say(undone.map(edit -> Texts.UNDONE.text(edit.what()))
                        .orElseGet(() -> Texts.UNDO_OVERTAKEN.text(offered.what()))));
    }

    /** Makes the edit again that was taken back last. */
    public void redo() {
        edits.run(() -> journal().redo(), redone -> {
            say(redone.map(edit -> Texts.REDONE.text(edit.what())).orElseGet(Texts.NOTHING_TO_REDO::text));
            redone.flatMap(Workroom::begun).ifPresent(this::show);
        });
    }

    private static Optional<String> begun(Edit edit) {
        return edit.changes().stream()
                .filter(change -> change.before().isEmpty())
                .flatMap(change -> change.after().stream())
                .filter(BuildRecord.class::isInstance)
                .map(Kept::id)
                .findFirst();
    }

    /** Ends background work: edits that were made are saved first. Not on the event thread. */
    public void close() {
        thumbnails.stop();
        edits.stop();
        drafts.stop();
        background.stop();
    }

    /** Says something in the status strip. */
    public void say(String message) {
        status.accept(message);
    }

    /** Says that something went wrong, and notes it. */
    public void failed(Throwable failure) {
        var words = Words.reason(failure);
        failures.add(words);
        say(words);
        tellChanged();
    }

    /** What went wrong since the window was opened. */
    public List<String> failures() {
        return List.copyOf(failures);
    }

    /** Hears when the journal, the build that is shown, or the look has changed. */
    public void onChange(Runnable listener) {
        changed.add(listener);
    }

    /** Hears which build somebody wants to see. */
    public void onBuildWanted(Consumer<String> listener) {
        buildWanted.add(listener);
    }

    /** Hears when a build that was just begun is shown. */
    public void onBegun(Runnable listener) {
        begun.add(listener);
    }

    /** Hears which entry somebody wants to see. */
    public void onEntryWanted(Consumer<String> listener) {
        entryWanted.add(listener);
    }

    /** Hears which picture somebody wants to see. */
    public interface PictureWanted {
        /**
         * Shows it.
         *
         * @param entryId whose picture it is; empty for whichever entry has it, if any has
         * @param captioned takes the caption of a picture that is in no entry yet
         */
        void show(String entryId, PictureRecord picture, Optional<Consumer<String>> captioned);
    }

    /** Hears which picture of which entry somebody wants to see. */
    public void onPictureWanted(PictureWanted listener) {
        pictureWanted.add(listener);
    }

    /** Hears which measurement of which entry somebody wants to see among the others. */
    public void onMeasurementWanted(BiConsumer<String, String> listener) {
        measurementWanted.add(listener);
    }

    /** Hears which calculator somebody wants to see. */
    public void onCalculatorWanted(Consumer<String> listener) {
        calculatorWanted.add(listener);
    }

    /** Many changes in a row are told once. */
    private void tellSoon() {
        if (told.getAndSet(false)) {
            EventQueue.invokeLater(() -> {
                told.set(true);
                comeBack();
                tellChanged();
            });
        }
    }

    /** Lets every page show anew what it shows. */
    public void tellChanged() {
        changed.forEach(Runnable::run);
    }
}
