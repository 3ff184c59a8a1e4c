package planewright.app.ui.planform;

import java.awt.Component;
import java.awt.Dimension;
import java.util.List;
import java.util.function.IntSupplier;
import javax.swing.DefaultCellEditor;
import javax.swing.JComboBox;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import planewright.api.journal.Planform.Role;
import planewright.app.ui.common.CheckedCell;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.SteadyTable;
import planewright.app.ui.common.Tables;
import planewright.app.ui.common.Terms;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;
import planewright.shared.quantity.QuantityProblem;

/** A list of a shape, edited in its cells: each cell is an edit; what cannot be is marked, says why and stays as it was typed. */
final class ShapeTable {
    private static final int LEAST_ROWS = 2;
    private static final int MOST_ROWS = 9;

    private final Workroom room;
    private final PlanformDraft draft;
    private final String title;
    private final String edit;
    private final List<ShapeColumn> columns;
    private final IntSupplier rows;
    private final Model model = new Model();
    private final JTable table;
    private final JScrollPane scroll;
    private int shown;

    /**
     * @param name for tests
     * @param edit what a change of a cell is called
     * @param rows how many there are now
     */
    ShapeTable(
            Workroom room,
            PlanformDraft draft,
            String title,
            String name,
            String edit,
            IntSupplier rows,
            List<ShapeColumn> columns) {
        this.room = room;
        this.draft = draft;
        this.title = title;
        this.edit = edit;
        this.rows = rows;
        this.columns = columns;
        table = new SteadyTable(model);
        scroll = new JScrollPane(table);
        table.setName(name);
        table.getAccessibleContext().setAccessibleName(title);
        table.putClientProperty("terminateEditOnFocusLost", false);
        table.getTableHeader().setReorderingAllowed(false);
        table.setAutoResizeMode(JTable.AUTO_RESIZE_OFF);
        table.setDefaultRenderer(String.class, new Cells());
        table.setDefaultRenderer(Role.class, new Cells());
        table.setDefaultEditor(String.class, new CheckedCell(title, name + "-cell", this::problem, room::say));
        var roles = new JComboBox<>(Role.values());
        roles.setRenderer(Words.choice(role -> Terms.of(((Role) role).word())));
        table.setDefaultEditor(Role.class, new DefaultCellEditor(roles));
        refresh();
    }

    JTable table() {
        return table;
    }

    JScrollPane scrolled() {
        return scroll;
    }

    /** Shows the shape as it is now, but leaves a cell alone that is being typed in. */
    void refresh() {
        if (table.isEditing()) {
            table.repaint();
            return;
        }
        int before = shown;
        shown = rows.getAsInt();
        if (shown != before) {
            model.fireTableDataChanged();
            table.setPreferredScrollableViewportSize(new Dimension(
                    table.getPreferredSize().width,
                    table.getRowHeight() * Math.max(LEAST_ROWS, Math.min(MOST_ROWS, shown))));
            scroll.revalidate();
        } else if (shown > 0) {
            model.fireTableRowsUpdated(0, shown - 1);
        }
        Tables.fit(table);
    }

    private String problem(String typed, int row, int column) {
        try {
            if (!typed.equals(model.getValueAt(row, column))) {
                columns.get(column).write().write(row, typed);
            }
            return "";
        } catch (QuantityProblem | IllegalArgumentException wrong) {
            return title + ", " + columns.get(column).title() + ": " + wrong.getLocalizedMessage();
        }
    }

    private final class Model extends AbstractTableModel {
        private static final long serialVersionUID = 1L;

        @Override
        public int getRowCount() {
            return shown;
        }

        @Override
        public int getColumnCount() {
            return columns.size();
        }

        @Override
        public String getColumnName(int column) {
            return columns.get(column).title();
        }

        @Override
        public Class<?> getColumnClass(int column) {
            return columns.get(column).type();
        }

        @Override
        public boolean isCellEditable(int row, int column) {
            return columns.get(column).isWritten();
        }

        @Override
        public Object getValueAt(int row, int column) {
            return row < rows.getAsInt() ? columns.get(column).read().apply(row) : "";
        }

        @Override
        public void setValueAt(Object typed, int row, int column) {
            if (typed.equals(getValueAt(row, column))) {
                return;
            }
            try {
                draft.change(edit, columns.get(column).write().write(row, typed));
            } catch (QuantityProblem | IllegalArgumentException wrong) {
                room.say(wrong.getLocalizedMessage());
            }
        }
    }

    /** Numbers to the right, what is only read in quiet. */
    private final class Cells extends DefaultTableCellRenderer {
        private static final long serialVersionUID = 1L;

        @Override
        public Component getTableCellRendererComponent(
                JTable owner, Object value, boolean selected, boolean focused, int row, int column) {
            var words = value instanceof Role role ? Terms.of(role.word()) : value;
            super.getTableCellRendererComponent(owner, words, selected, focused, row, column);
            boolean number =
                    value instanceof String text && !text.isEmpty() && "-−0123456789".indexOf(text.charAt(0)) >= 0;
            setHorizontalAlignment(number ? RIGHT : LEFT);
            setToolTipText(String.valueOf(words));
            if (!selected) {
                setForeground(columns.get(column).isWritten() ? owner.getForeground() : Look.colour("quiet"));
            }
            return this;
        }
    }
}
