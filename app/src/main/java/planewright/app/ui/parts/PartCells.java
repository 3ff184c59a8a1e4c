package planewright.app.ui.parts;

import java.awt.Component;
import javax.swing.JTable;
import javax.swing.table.DefaultTableCellRenderer;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.Terms;

/** Names to the left, quantities to the right, what is not written here in quiet. */
final class PartCells extends DefaultTableCellRenderer {
    private static final long serialVersionUID = 1L;
    private static final int GROUP = 1;
    private static final int FIRST_QUANTITY = 2;

    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean selected, boolean focused, int row, int column) {
        var shown = column == GROUP ? Terms.of((String) value) : value;
        super.getTableCellRendererComponent(table, shown, selected, focused, row, column);
        setHorizontalAlignment(column < FIRST_QUANTITY ? LEFT : RIGHT);
        if (!selected) {
            setForeground(table.isCellEditable(row, column) ? table.getForeground() : Look.colour("quiet"));
        }
        return this;
    }
}
