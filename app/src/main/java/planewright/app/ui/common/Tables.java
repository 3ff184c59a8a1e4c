package planewright.app.ui.common;

import java.awt.Component;
import java.util.function.BiFunction;
import javax.swing.DefaultCellEditor;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.table.TableCellEditor;

/** What tables have in common. */
public final class Tables {
    private static final int EDGE = 14;
    private static final int LEAST = 48;
    private static final int MOST = 320;

    /** Rows that are looked at; more would keep the window waiting. */
    private static final int MOST_ROWS = 500;

    private Tables() {}

    /** A cell to type into; the first key replaces what stands there. */
    public static TableCellEditor editor() {
        return new DefaultCellEditor(new JTextField()) {
            private static final long serialVersionUID = 1L;

            @Override
            public Component getTableCellEditorComponent(
                    JTable table, Object value, boolean selected, int row, int column) {
                var field = super.getTableCellEditorComponent(table, value, selected, row, column);
                ((JTextField) field).selectAll();
                return field;
            }
        };
    }

    /** Gives each column the width that its heading and its cells need, within reason. */
    public static void fit(JTable table) {
        fit(table, (row, column) -> String.valueOf(table.getValueAt(row, column)));
    }

    /**
     * The same.
     *
     * @param shown what a cell shows, by row and column
     */
    public static void fit(JTable table, BiFunction<Integer, Integer, String> shown) {
        var cells = table.getFontMetrics(table.getFont());
        var headings = table.getFontMetrics(table.getTableHeader().getFont());
        for (int column = 0; column < table.getColumnCount(); column++) {
            int widest = headings.stringWidth(table.getColumnName(column));
            for (int row = 0; row < Math.min(MOST_ROWS, table.getRowCount()); row++) {
                widest = Math.max(widest, cells.stringWidth(shown.apply(row, column)));
            }
            table.getColumnModel().getColumn(column).setPreferredWidth(Math.max(LEAST, Math.min(MOST, widest + EDGE)));
        }
    }

    /** Where room is short the last column alone gives way, the others stay whole. */
    public static void fitButLast(JTable table) {
        fit(table);
        for (int column = 0; column < table.getColumnCount() - 1; column++) {
            var whole = table.getColumnModel().getColumn(column);
            whole.setMinWidth(whole.getPreferredWidth());
        }
        table.setAutoResizeMode(JTable.AUTO_RESIZE_LAST_COLUMN);
    }
}
