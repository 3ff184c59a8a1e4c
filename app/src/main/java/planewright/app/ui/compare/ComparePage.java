package planewright.app.ui.compare;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.table.AbstractTableModel;
import net.miginfocom.swing.MigLayout;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Comparison;
import planewright.app.ui.common.Background;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.SteadyTable;
import planewright.app.ui.common.Tables;
import planewright.app.ui.common.Terms;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.WhenShown;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;

/** Two builds side by side: facts, set-up, parts and last measurements, with the difference. */
public final class ComparePage extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Workroom room;
    private final transient Background.Latest questions;
    private final JComboBox<BuildRecord> first = new JComboBox<>();
    private final JComboBox<BuildRecord> second = new JComboBox<>();
    private final JTextField filter = new JTextField();
    private final JCheckBox differing = new JCheckBox(Texts.COMPARE_DIFFERING.text());
    private final JTextArea nothing = Words.quiet(Texts.BESIDE_HINT.text());
    private final Rows model = new Rows();
    private final JTable table = new SteadyTable(model);
    private transient List<Comparison.Row> all = List.of();
    private boolean filling;

    /**
     * @param back leads to where the builder came from
     */
    public ComparePage(Workroom room, Runnable back) {
        super(new MigLayout("insets 10, gap 8, fill, wrap 1, hidemode 3", "[grow,fill]", "[][][grow,fill][][]"));
        this.room = room;
        this.questions = room.background().latest();
        setName("compare");
        add(Look.heading(Texts.BESIDE.text(), 1.3));
        add(bar(), "wmin 0");
        nothing.setName("compare-hint");
        add(new JScrollPane(table), "hmin 120, wmin 0");
        add(nothing, "wmin 0");
        add(Buttons.of("leave-compare", Texts.BACK.text(), back), "grow 0, align left");
        table.setName("compared");
        table.getAccessibleContext().setAccessibleName(Texts.BESIDE.text());
        table.getTableHeader().setReorderingAllowed(false);
        WhenShown.refresh(this, room, this::refresh);
    }

    private JPanel bar() {
        var bar = new JPanel(new MigLayout("insets 0, gap 6", "[][120:220:,fill][][120:220:,fill]14[100:200:,fill][]"));
        for (var box : List.of(first, second)) {
            box.setRenderer(Words.choice(each -> each == null ? "" : ((BuildRecord) each).name()));
            box.addActionListener(event -> {
                if (!filling) {
                    compare();
                }
            });
        }
        Words.labelled(bar, Texts.COMPARE_FIRST.text(), first, "compare-first");
        Words.labelled(bar, Texts.COMPARE_SECOND.text(), second, "compare-second");
        Words.named(filter, Texts.COMPARE_FILTER.text(), "compare-filter");
        filter.putClientProperty("JTextField.showClearButton", true);
        Buttons.onEdit(filter, this::narrow);
        differing.setName("compare-differing");
        differing.addActionListener(event -> narrow());
        bar.add(filter);
        bar.add(differing);
        return bar;
    }

    /** Sets a build beside the one that it was begun from, else beside another. */
    public void offer(Optional<BuildRecord> build) {
        fill();
        filling = true;
        build.ifPresent(wanted -> {
            select(second, wanted.id());
            wanted.begunFrom()
                    .map(day -> day.build())
                    .or(() -> room.journal().builds().stream()
                            .map(BuildRecord::id)
                            .filter(id -> !id.equals(wanted.id()))
                            .findFirst())
                    .ifPresent(id -> select(first, id));
        });
        filling = false;
        compare();
    }

    private void refresh() {
        fill();
        compare();
    }

    private void fill() {
        filling = true;
        for (var box : List.of(first, second)) {
            var before = Optional.ofNullable((BuildRecord) box.getSelectedItem());
            box.removeAllItems();
            room.journal().builds().forEach(box::addItem);
            before.ifPresent(build -> select(box, build.id()));
        }
        filling = false;
    }

    private void select(JComboBox<BuildRecord> box, String id) {
        room.journal().build(id).ifPresent(box::setSelectedItem);
    }

    private void compare() {
        var one = (BuildRecord) first.getSelectedItem();
        var other = (BuildRecord) second.getSelectedItem();
        if (one == null || other == null) {
            Words.show(nothing, Texts.BESIDE_HINT.text());
            return;
        }
        var units = room.units().asNow();
        questions.ask(() -> Comparison.of(room.journal(), one, other, units), rows -> {
            all = rows;
            model.name(one.name(), other.name());
            narrow();
        });
    }

    private void narrow() {
        var wanted = filter.getText().strip().toLowerCase(Locale.ROOT);
        var shown = all.stream()
                .filter(row -> !differing.isSelected() || !row.isAlike())
                .filter(row -> row.name().toLowerCase(Locale.ROOT).contains(wanted))
                .toList();
        model.show(shown);
        Tables.fit(table);
        Words.show(nothing, shown.isEmpty() ? Texts.COMPARE_NOTHING.text() : "");
    }

    /** What is shown of the two. */
    private static final class Rows extends AbstractTableModel {
        private static final long serialVersionUID = 1L;

        private transient List<Comparison.Row> rows = List.of();
        private String first = "";
        private String second = "";

        void name(String one, String other) {
            if (!one.equals(first) || !other.equals(second)) {
                first = one;
                second = other;
                fireTableStructureChanged();
            }
        }

        void show(List<Comparison.Row> shown) {
            rows = shown;
            fireTableDataChanged();
        }

        @Override
        public int getRowCount() {
            return rows.size();
        }

        @Override
        public int getColumnCount() {
            return 5;
        }

        @Override
        public String getColumnName(int column) {
            return switch (column) {
                case 0 -> Texts.CARRY_WHAT.text();
                case 1 -> Texts.NAME.text();
                case 2 -> first;
                case 3 -> second;
                default -> Texts.COMPARE_DIFFERENCE.text();
            };
        }

        @Override
        public String getValueAt(int row, int column) {
            var shown = rows.get(row);
            return switch (column) {
                case 0 -> Terms.of(shown.what().word());
                case 1 -> Terms.of(shown.name());
                case 2 -> said(shown.what(), shown.first());
                case 3 -> said(shown.what(), shown.second());
                default -> shown.difference();
            };
        }

        private static String said(Comparison.What what, Comparison.Side side) {
            return what == Comparison.What.FACT && !side.carried() ? Terms.of(side.text()) : side.words();
        }
    }
}
