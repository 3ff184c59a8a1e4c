package planewright.app.ui.shelf;

import java.awt.Insets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.DefaultListModel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import planewright.api.journal.Life;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.Terms;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Times;
import planewright.app.ui.common.Turn;
import planewright.app.ui.common.Typing;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;

/** All builds, grouped by life, filtered by typing; a new one is begun below. */
public final class ShelfPage extends JPanel {
    private static final long serialVersionUID = 1L;

    /** Edge of a button's words, px, so that two stand side by side on the narrowest shelf. */
    private static final int NARROW = 4;

    private final transient Workroom room;
    private final DefaultListModel<ShelfRow> rows = new DefaultListModel<>();
    private final transient Map<String, ShelfRow.OfBuild> ofBuilds = new HashMap<>();
    /** Builds whose rows have not followed the look yet. */
    private transient Deque<String> left = new ArrayDeque<>();

    private final JList<ShelfRow> list = new JList<>(rows) {
        private static final long serialVersionUID = 1L;

        @Override
        public boolean getScrollableTracksViewportWidth() {
            return true;
        }
    };
    private final JTextField filter = new JTextField();
    private final JTextField newName = new JTextField();
    private final JTextArea problem = Words.problem();
    /** Names of builds whose beginning waits its turn. */
    private final transient List<String> coming = new ArrayList<>();

    private boolean filling;

    /**
     * @param startFrom begins a build from another one or from templates
     */
    public ShelfPage(Workroom room, Runnable startFrom) {
        super(new MigLayout("insets 10 10 10 6, gap 6, wrap 2", "[grow,fill][grow,fill]", "[][grow,fill][][][]"));
        this.room = room;
        add(filter, "span 2, growx, wmin 0");
        add(new JScrollPane(list), "span 2, grow, wmin 0");
        add(newName, "span 2, growx, wmin 0");
        var begin = Buttons.of("new-build", Texts.NEW_BUILD.text(), this::begin);
        var from = Buttons.of("start-from", Texts.START_FROM_SHORT.text(), startFrom);
        for (var button : List.of(begin, Buttons.hint(from, Texts.START_FROM_HINT.text(), "ctrl B"))) {
            button.setMargin(new Insets(2, NARROW, 2, NARROW));
            add(button, "wmin 0");
        }
        add(problem, "span 2, growx, hidemode 3, wmin 0");
        name();
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer((all, row, index, selected, focused) -> row.component(all, selected));
        list.addListSelectionListener(event -> selected());
        Buttons.onEdit(filter, this::fill);
        Buttons.onEdit(newName, () -> Words.show(problem, ""));
        newName.addActionListener(event -> begin());
        room.onChange(this::fill);
        fill();
    }

    /** Puts the keyboard on the builds; where there are none, on the name of the first. */
    public void focusList() {
        (room.journal().builds().isEmpty() ? newName : list).requestFocusInWindow();
    }

    private void name() {
        setName("shelf");
        list.setName("builds");
        list.getAccessibleContext().setAccessibleName(Texts.BUILDS.text());
        filter.setName("builds-filter");
        filter.putClientProperty("JTextField.placeholderText", Texts.BUILDS_FILTER.text());
        filter.putClientProperty("JTextField.showClearButton", true);
        filter.getAccessibleContext().setAccessibleName(Texts.BUILDS_FILTER.text());
        newName.setName("new-build-name");
        newName.putClientProperty("JTextField.placeholderText", Texts.NEW_BUILD_NAME.text());
        newName.getAccessibleContext().setAccessibleName(Texts.NEW_BUILD_NAME.text());
        problem.setName("new-build-problem");
    }

    private void fill() {
        filling = true;
        var wanted = filter.getText().strip().toLowerCase(Locale.ROOT);
        var found = room.journal().builds().stream()
                .filter(build -> (build.name() + " " + build.layout())
                        .toLowerCase(Locale.ROOT)
                        .contains(wanted))
                .toList();
        var made = new ArrayList<ShelfRow>();
        for (var life : inOrder()) {
            var same = found.stream().filter(build -> build.life() == life).toList();
            if (!same.isEmpty()) {
                made.add(new ShelfRow.Heading(Terms.of(life.word())));
                same.forEach(build -> made.add(row(build)));
            }
        }
        if (made.isEmpty()) {
            made.add(new ShelfRow.Heading(
                    wanted.isEmpty() ? Texts.EMPTY_SHELF.text() : Texts.NO_SUCH_BUILD.text(filter.getText())));
        }
        if (!made.equals(Collections.list(rows.elements()))) {
            rows.clear();
            rows.addAll(made);
        }
        room.build().ifPresent(this::mark);
        filling = false;
    }

    /** A row that shows the same is kept: each has a drawing, and there may be hundreds. */
    private ShelfRow row(BuildRecord build) {
        var last = lastEntry(build);
        return ofBuilds.compute(
                build.id(),
                (id, kept) -> kept != null && kept.shows(build, last) ? kept : new ShelfRow.OfBuild(build, last));
    }

    /** Rows are made anew in another look: they lie in the list, not in the window. Until all are, the old ones are shown. */
    @Override
    public void updateUI() {
        super.updateUI();
        if (ofBuilds != null) {
            var stale = new ArrayDeque<>(ofBuilds.keySet());
            left = stale;
            SwingUtilities.invokeLater(() -> renew(stale));
        }
    }

    private void renew(Deque<String> stale) {
        var turn = new Turn();
        turn.begin();
        while (left == stale && !stale.isEmpty() && turn.goesOn()) {
            var id = stale.remove();
            ofBuilds.remove(id);
            room.journal().build(id).ifPresent(this::row);
        }
        if (left == stale && !stale.isEmpty()) {
            SwingUtilities.invokeLater(() -> renew(stale));
        } else if (left == stale) {
            fill();
        }
    }

    /** What is at work comes first. */
    private static List<Life> inOrder() {
        return List.of(Life.ON_THE_BENCH, Life.READY, Life.FLYING, Life.SKETCHED, Life.RESTING, Life.GONE);
    }

    private Optional<String> lastEntry(BuildRecord build) {
        var log = room.journal().lines(build.id());
        return log.isEmpty()
                ? Optional.empty()
                : Optional.of(Times.date(log.get(log.size() - 1).at().toLocalDate()));
    }

    private void mark(BuildRecord build) {
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).build().filter(build.id()::equals).isPresent()) {
                if (list.getSelectedIndex() != i) {
                    list.setSelectedIndex(i);
                    list.ensureIndexIsVisible(i);
                }
            }
        }
    }

    private void selected() {
        int index = list.getSelectedIndex();
        if (filling || index < 0 || list.getValueIsAdjusting()) {
            return;
        }
        var chosen = rows.get(index).build();
        if (chosen.isPresent()) {
            if (room.build().map(BuildRecord::id).filter(chosen.get()::equals).isEmpty()) {
                room.show(chosen.get());
            }
        } else {
            passOver(index);
        }
    }

    /** A heading cannot be chosen: the selection goes on past it, the way it came. */
    private void passOver(int heading) {
        int before = room.build().map(this::position).orElse(-1);
        int next = before > heading && heading > 0 ? heading - 1 : heading + 1;
        if (next < rows.size() && rows.get(next).build().isPresent()) {
            list.setSelectedIndex(next);
        } else {
            list.clearSelection();
        }
    }

    private int position(BuildRecord build) {
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).build().filter(build.id()::equals).isPresent()) {
                return i;
            }
        }
        return -1;
    }

    private void begin() {
        var name = newName.getText().strip();
        if (coming.contains(name)) {
            return;
        }
        var taken = Stream.concat(room.journal().builds().stream().map(BuildRecord::name), coming.stream())
                .anyMatch(name::equalsIgnoreCase);
        if (name.isEmpty() || taken) {
            Words.show(problem, name.isEmpty() ? Texts.NAME_NEEDED.text() : Texts.NAME_TAKEN.text(name));
            return;
        }
        var build = BuildRecord.begin(name, room.now().toLocalDate());
        coming.add(name);
        room.edit(Edit.add(Texts.NEW_BUILD_EDIT.text(name), build), () -> begun(build, name), failure -> {
            coming.remove(name);
            room.failed(failure);
        });
    }

    /** Whoever writes another name by now goes on with that. */
    private void begun(BuildRecord build, String name) {
        coming.remove(name);
        if (newName.getText().strip().equals(name)) {
            newName.setText("");
            filter.setText("");
            Typing.forget(newName);
            Typing.forget(filter);
            room.showBegun(build.id());
        }
    }
}
