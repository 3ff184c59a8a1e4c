package planewright.app.ui.calc;

import java.awt.BorderLayout;
import java.awt.Component;
import java.util.List;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import planewright.app.calc.ResultView;
import planewright.app.ui.common.Card;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.Stack;
import planewright.app.ui.common.Tables;

/** A table of a result, all of it to be seen. */
final class TableCard extends Card {
    private static final long serialVersionUID = 1L;

    TableCard(ResultView.Table shown) {
        super(new Stack(6));
        add(Look.heading(shown.title(), 1));
        var table = new JTable(new Rows(shown));
        table.setName("table-" + shown.title());
        table.getAccessibleContext().setAccessibleName(shown.title());
        table.setDefaultRenderer(Object.class, new Aligned(shown.numeric()));
        table.setFocusable(false);
        table.setRowSelectionAllowed(false);
        table.getTableHeader().setReorderingAllowed(false);
        Tables.fit(table);
        var panel = new JPanel(new BorderLayout());
        panel.add(table.getTableHeader(), BorderLayout.NORTH);
        panel.add(table, BorderLayout.CENTER);
        add(panel);
    }

    /** Texts that nobody edits. */
    private static final class Rows extends AbstractTableModel {
        private static final long serialVersionUID = 1L;

        private final transient ResultView.Table shown;

        Rows(ResultView.Table shown) {
            this.shown = shown;
        }

        @Override
        public int getRowCount() {
            return shown.rows().size();
        }

        @Override
        public int getColumnCount() {
            return shown.headings().size();
        }

        @Override
        public String getColumnName(int column) {
            return shown.headings().get(column);
        }

        @Override
        public Object getValueAt(int row, int column) {
            return shown.rows().get(row).get(column);
        }
    }

    /** Quantities to the right. */
    private static final class Aligned extends DefaultTableCellRenderer {
        private static final long serialVersionUID = 1L;

        private final transient List<Boolean> numeric;

        Aligned(List<Boolean> numeric) {
            this.numeric = numeric;
        }

        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean selected, boolean focused, int row, int column) {
            super.getTableCellRendererComponent(table, value, selected, focused, row, column);
            setHorizontalAlignment(numeric.get(column) ? RIGHT : LEFT);
            setToolTipText((String) value);
            return this;
        }
    }
}
