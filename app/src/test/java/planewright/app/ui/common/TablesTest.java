package planewright.app.ui.common;

import static org.assertj.core.api.Assertions.assertThat;

import javax.swing.JTable;
import org.junit.jupiter.api.Test;

class TablesTest {
    @Test
    void whereRoomIsShortTheLastColumnAloneGivesWay() {
        var table = new JTable(
                new Object[][] {{"Nov 26, 2026, 10:43 PM", "218.16 mm ± 0.68 mm", "kept result: ".repeat(20)}},
                new Object[] {"Set", "Value", "From"});
        Tables.fitButLast(table);
        table.setSize(480, 100);
        table.doLayout();
        assertThat(width(table, 0)).isGreaterThanOrEqualTo(needed(table, 0));
        assertThat(width(table, 1)).isGreaterThanOrEqualTo(needed(table, 1));
        assertThat(width(table, 0) + width(table, 1) + width(table, 2)).isEqualTo(480);
    }

    private static int width(JTable table, int column) {
        return table.getColumnModel().getColumn(column).getWidth();
    }

    private static int needed(JTable table, int column) {
        return table.getFontMetrics(table.getFont()).stringWidth((String) table.getValueAt(0, column));
    }
}
