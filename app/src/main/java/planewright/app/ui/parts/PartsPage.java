package planewright.app.ui.parts;

import java.awt.Font;
import java.awt.Point;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTable;
import javax.swing.JViewport;
import net.miginfocom.swing.MigLayout;
import planewright.app.journal.BuildRecord;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.CheckedCell;
import planewright.app.ui.common.ContextMenu;
import planewright.app.ui.common.Icons;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.OpenCells;
import planewright.app.ui.common.SteadyTable;
import planewright.app.ui.common.Tables;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.UnitsMenu;
import planewright.app.ui.common.WhenShown;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;
import planewright.app.ui.planform.Tall;

/** The mass ledger, dragged on a drawing and edited in its cells; every drag and every cell is an edit that can be undone. */
public final class PartsPage extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int MASS = 2;
    private static final int LEAST = 520;
    private static final double DRAWING_SHARE = 0.45;

    private final transient Workroom room;
    private final PartsModel model;
    private final JTable table;
    private final transient OpenCells cells;
    private final PartsDrawing drawing;
    private final JLabel sum = Look.sized(new JLabel(), 1, Font.BOLD);
    private transient Optional<String> shown = Optional.empty();

    public PartsPage(Workroom room) {
        super(new MigLayout("insets 0, fill", "[grow,fill]", "[grow,fill]"));
        this.room = room;
        this.model = new PartsModel(room);
        this.table = new SteadyTable(model);
        this.cells = new OpenCells(room);
        this.drawing = new PartsDrawing(model, new Chosen());
        setName("parts-page");
        var page = new Tall(new MigLayout("insets 10, gap 8, fill", "[grow,fill]", "[][grow,fill][]"));
        page.setLeast(LEAST);
        page.add(Words.quiet(Texts.PARTS_HINT.text()), "wmin 0, wrap");
        var split = new JSplitPane(JSplitPane.VERTICAL_SPLIT, drawing, new JScrollPane(table));
        split.setResizeWeight(DRAWING_SHARE);
        split.setContinuousLayout(true);
        split.setBorder(BorderFactory.createEmptyBorder());
        page.add(split, "wmin 0, hmin 0, wrap");
        page.add(bar(), "wmin 0");
        add(page.scrolled(), "wmin 0");
        prepareTable();
        model.addTableModelListener(event -> {
            drawing.refresh();
            sum.setText(model.sum());
        });
        WhenShown.refresh(this, room, this::refresh);
    }

    private JPanel bar() {
        var bar = new JPanel(new MigLayout("insets 0", "[][][][grow,right]"));
        var more = Buttons.with(Icons.ADD, Buttons.of("add-part", Texts.ADD_PART.text(), this::addPart));
        var fewer = Buttons.with(Icons.REMOVE, Buttons.of("remove-part", Texts.REMOVE.text(), this::removePart));
        bar.add(more);
        bar.add(fewer);
        bar.add(UnitsMenu.button(room, "parts-units"));
        ContextMenu.on(table, more, fewer);
        sum.setName("parts-sum");
        bar.add(sum);
        return bar;
    }

    private void prepareTable() {
        cells.add(table);
        table.setName("parts");
        table.getAccessibleContext().setAccessibleName(Texts.PARTS.text());
        table.putClientProperty("terminateEditOnFocusLost", false);
        table.setDefaultEditor(
                String.class, new CheckedCell(Texts.PARTS.text(), "part-cell", model::problem, room::say));
        table.getTableHeader().setReorderingAllowed(false);
        table.setAutoResizeMode(JTable.AUTO_RESIZE_OFF);
        table.setDefaultRenderer(String.class, new PartCells());
        table.getSelectionModel().addListSelectionListener(event -> drawing.refresh());
    }

    private void refresh() {
        if (cells.giveWay()) {
            model.refresh();
            Tables.fit(table);
        }
        var build = room.build().map(BuildRecord::id);
        if (!build.equals(shown)) {
            shown = build;
            drawing.fit();
        }
        drawing.refresh();
        sum.setText(model.sum());
    }

    private void addPart() {
        model.add(row -> edit(row, 0));
    }

    private void edit(int row, int column) {
        table.changeSelection(row, column, false, false);
        table.editCellAt(row, column);
        table.transferFocus();
    }

    /** Scrolls the table alone, so that the drawing stays under the pointer. */
    private void reveal(int row) {
        if (table.getParent() instanceof JViewport view) {
            var cell = table.getCellRect(row, 0, true);
            var seen = view.getViewRect();
            if (cell.y < seen.y || cell.y + cell.height > seen.y + seen.height) {
                view.setViewPosition(new Point(seen.x, Math.max(0, Math.min(cell.y, table.getHeight() - seen.height))));
            }
        }
    }

    /** What is typed is taken first, so that it is there again once the part is brought back. */
    private void removePart() {
        cells.end();
        int row = table.getSelectedRow();
        if (row >= 0) {
            model.remove(row);
        } else {
            room.say(Texts.PICK_PART.text());
        }
    }

    /** A part that is chosen on a drawing is chosen in the table. */
    private final class Chosen implements PartsView.Choice {
        @Override
        public int row() {
            return table.getSelectedRow();
        }

        @Override
        public void choose(int row) {
            table.setRowSelectionInterval(row, row);
            reveal(row);
        }

        @Override
        public void edit(int row, boolean name) {
            PartsPage.this.edit(row, name ? 0 : MASS);
        }

        @Override
        public boolean stopTyping() {
            return cells.stop();
        }

        @Override
        public void remove(int row) {
            removePart();
        }
    }
}
