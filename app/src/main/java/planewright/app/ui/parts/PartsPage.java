package planewright.app.ui.parts;

import java.awt.Font;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import net.miginfocom.swing.MigLayout;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.CheckedCell;
import planewright.app.ui.common.ContextMenu;
import planewright.app.ui.common.Icons;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.SteadyTable;
import planewright.app.ui.common.Tables;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.WhenShown;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;

/** The mass ledger, edited in its cells; every cell is an edit that can be undone. */
public final class PartsPage extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Workroom room;
    private final PartsModel model;
    private final JTable table;
    private final JLabel sum = Look.sized(new JLabel(), 1, Font.BOLD);

    public PartsPage(Workroom room) {
        super(new MigLayout("insets 10, gap 8, fill", "[grow,fill]", "[][grow,fill][]"));
        this.room = room;
        this.model = new PartsModel(room);
        this.table = new SteadyTable(model);
        setName("parts-page");
        add(Words.quiet(Texts.PARTS_HINT.text()), "wmin 0, wrap");
        add(new JScrollPane(table), "wrap");
        var bar = new JPanel(new MigLayout("insets 0", "[][][grow,right]"));
        var more = Buttons.with(Icons.ADD, Buttons.of("add-part", Texts.ADD_PART.text(), this::addPart));
        var fewer = Buttons.with(Icons.REMOVE, Buttons.of("remove-part", Texts.REMOVE.text(), this::removePart));
        bar.add(more);
        bar.add(fewer);
        ContextMenu.on(table, more, fewer);
        bar.add(sum);
        add(bar);
        table.setName("parts");
        table.getAccessibleContext().setAccessibleName(Texts.PARTS.text());
        table.putClientProperty("terminateEditOnFocusLost", false);
        table.setDefaultEditor(
                String.class, new CheckedCell(Texts.PARTS.text(), "part-cell", model::problem, room::say));
        table.getTableHeader().setReorderingAllowed(false);
        table.setAutoResizeMode(JTable.AUTO_RESIZE_OFF);
        table.setDefaultRenderer(String.class, new PartCells());
        sum.setName("parts-sum");
        WhenShown.refresh(this, room, this::refresh);
    }

    private void refresh() {
        if (!table.isEditing()) {
            model.refresh();
            Tables.fit(table);
        }
        sum.setText(model.sum());
    }

    private void addPart() {
        model.add(row -> {
            table.changeSelection(row, 0, false, false);
            table.editCellAt(row, 0);
            table.transferFocus();
        });
    }

    private void removePart() {
        if (table.isEditing()) {
            table.getCellEditor().cancelCellEditing();
        }
        int row = table.getSelectedRow();
        if (row >= 0) {
            model.remove(row);
        } else {
            room.say(Texts.PICK_PART.text());
        }
    }
}
