package planewright.app.ui.planform;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import planewright.api.journal.Planform;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.ui.common.OpenCells;
import planewright.app.ui.common.Workroom;

/**
 * The shape of the build that is shown, as it is being changed. What is tried out is seen everywhere on the page and in no file;
 * keeping it makes one edit of it, however long it was tried.
 */
final class PlanformDraft {
    private final Workroom room;
    private final List<Runnable> listeners = new ArrayList<>();
    private final OpenCells cells;
    private final OpenCells cellsOfChosen;
    private Optional<BuildRecord> build = Optional.empty();
    private Optional<Planform> tried = Optional.empty();
    private int saving;
    private int chosen;

    PlanformDraft(Workroom room) {
        this.room = room;
        cells = new OpenCells(room);
        cellsOfChosen = new OpenCells(room);
    }

    /** Hears of every change of what is shown. */
    void onChange(Runnable listener) {
        listeners.add(listener);
    }

    /** The cells in which the shape is typed. */
    OpenCells cells() {
        return cells;
    }

    /** Of these, the cells in which the surface is typed that is chosen. */
    OpenCells cellsOfChosen() {
        return cellsOfChosen;
    }

    /** Takes in what the journal has, unless something is tried out or on its way into it. */
    void refresh() {
        boolean other = isLeft();
        if (other) {
            cells.end(build.map(BuildRecord::id));
            tried = Optional.empty();
            chosen = 0;
        }
        if (other || tried.isEmpty() && saving == 0) {
            build = room.build();
            tell();
        }
    }

    /** Whether another build is to be shown. */
    private boolean isLeft() {
        return !room.build().map(BuildRecord::id).equals(build.map(BuildRecord::id));
    }

    Optional<BuildRecord> build() {
        return build;
    }

    /** The shape as it is shown; empty while there is none. */
    Optional<Planform> shape() {
        return tried.or(() -> build.flatMap(BuildRecord::planform))
                .filter(shape -> !shape.surfaces().isEmpty());
    }

    /** Whether something is tried out and not kept. */
    boolean isTrying() {
        return tried.isPresent();
    }

    /** The surface whose handles and sections are shown, from 0. */
    int chosen() {
        return shape().map(shape -> Math.min(chosen, shape.surfaces().size() - 1))
                .orElse(0);
    }

    /** The surface stays where a cell of it holds what cannot be understood. */
    void choose(int surface) {
        if (surface != chosen) {
            if (cellsOfChosen.stop()) {
                chosen = surface;
            }
            tell();
        }
    }

    void tryOut(Planform shape) {
        tried = Optional.of(shape);
        tell();
    }

    /** Forgets what was tried out. */
    void drop() {
        tried = Optional.empty();
        refresh();
    }

    /** Makes an edit of what was tried out. */
    void keep(String what) {
        tried.ifPresent(shape -> {
            tried = Optional.empty();
            change(what, build.orElseThrow().withPlanform(shape));
        });
    }

    /** Tries out and keeps. */
    void change(String what, Planform shape) {
        tryOut(shape);
        keep(what);
    }

    /** Makes an edit of the build. */
    void change(String what, BuildRecord after) {
        var before = build.orElseThrow();
        build = Optional.of(after);
        if (before.equals(after)) {
            tell();
            return;
        }
        saving++;
        tell();
        room.edit(
                Edit.change(what, before, after),
                () -> {
                    saving--;
                    refresh();
                },
                failure -> {
                    saving--;
                    refresh();
                    room.failed(failure);
                });
    }

    /** What is still written of a build that is shown no longer is nowhere seen. */
    private void tell() {
        if (!isLeft()) {
            listeners.forEach(Runnable::run);
        }
    }
}
