package planewright.app.ui.exchange;

import java.util.List;
import java.util.Optional;
import javax.swing.JComboBox;
import planewright.app.journal.BuildRecord;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;

/** A build of the journal, the one that is shown unless another is chosen; or all of them where that is possible. */
final class BuildChoice extends JComboBox<Optional<BuildRecord>> {
    private static final long serialVersionUID = 1L;

    private final transient Workroom room;
    private final boolean all;
    private final transient Runnable chosen;
    private transient Optional<String> shown = Optional.empty();
    private transient List<BuildRecord> known = List.of();
    private boolean filling;

    /**
     * @param all whether all builds can be chosen, which they are at first
     * @param chosen runs when another is chosen, by whatever means
     */
    BuildChoice(Workroom room, boolean all, Runnable chosen) {
        this.room = room;
        this.all = all;
        this.chosen = chosen;
        setRenderer(Words.choice(each -> name((Optional<?>) each)));
        addActionListener(event -> tell());
        room.onChange(this::follow);
        fill();
    }

    /** The build; empty for all of them, or where there is none. */
    Optional<BuildRecord> chosen() {
        var selected = (Optional<?>) getSelectedItem();
        return selected == null ? Optional.empty() : selected.map(BuildRecord.class::cast);
    }

    private static String name(Optional<?> build) {
        return build == null
                ? ""
                : build.map(each -> ((BuildRecord) each).name()).orElseGet(Texts.TAKE_ALL::text);
    }

    private void tell() {
        if (!filling) {
            chosen.run();
        }
    }

    private void follow() {
        var before = chosen().map(BuildRecord::id);
        fill();
        if (!chosen().map(BuildRecord::id).equals(before)) {
            tell();
        }
    }

    private void fill() {
        var builds = room.journal().builds();
        var now = room.build().map(BuildRecord::id);
        if (builds.equals(known) && now.equals(shown)) {
            return;
        }
        filling = true;
        var wanted = all || now.equals(shown) ? chosen().map(BuildRecord::id) : now;
        removeAllItems();
        if (all) {
            addItem(Optional.empty());
        }
        builds.forEach(build -> addItem(Optional.of(build)));
        wanted.flatMap(id -> room.journal().build(id)).ifPresent(build -> setSelectedItem(Optional.of(build)));
        known = builds;
        shown = now;
        filling = false;
    }
}
