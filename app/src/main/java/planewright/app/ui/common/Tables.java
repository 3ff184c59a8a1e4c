package planewright.app.ui.common;

import javax.swing.JTable;

/** What tables have in common. */
public final class Tables {
    private static final int EDGE = 14;
    private static final int LEAST = 48;
    private static final int MOST = 320;

    private Tables() {}

    /** Gives each column the width that its heading and its cells need, within reason. */
    public static void fit(JTable table) {
        var cells = table.getFontMetrics(table.getFont());
        var headings = table.getFontMetrics(table.getTableHeader().getFont());
        for (int column = 0; column < table.getColumnCount(); column++) {
            int widest = headings.stringWidth(table.getColumnName(column));
            for (int row = 0; row < table.getRowCount(); row++) {
                widest = Math.max(widest, cells.stringWidth(String.valueOf(table.getValueAt(row, column))));
            }
            table.getColumnModel().getColumn(column).setPreferredWidth(Math.max(LEAST, Math.min(MOST, widest + EDGE)));
        }
    }
}
