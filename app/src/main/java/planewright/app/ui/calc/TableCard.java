package planewright.app.ui.calc;

import java.awt.Dimension;
import java.awt.FontMetrics;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.table.AbstractTableModel;
import planewright.app.calc.ResultView;
import planewright.app.ui.common.Card;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.Stack;

/** A table of a result, all of it to be seen: it wraps where it is narrow, and scrolls sideways where that is not enough. */
final class TableCard extends Card {
    private static final long serialVersionUID = 1L;

    TableCard(ResultView.Table shown) {
        super(new Stack(6));
        add(Look.heading(shown.title(), 1));
        add(new Pane(shown));
    }

    /** As high as its table is at the width that it has; turning the wheel goes on to the page. */
    private static final class Pane extends JScrollPane {
        private static final long serialVersionUID = 1L;
        private static final int EDGE = 14;
        private static final int ABOVE_AND_BELOW = 6;

        private final transient ResultView.Table shown;
        private final JTable table;
        private int fitted = -1;

        Pane(ResultView.Table shown) {
            super(VERTICAL_SCROLLBAR_NEVER, HORIZONTAL_SCROLLBAR_AS_NEEDED);
            this.shown = shown;
            table = new JTable(new Rows(shown));
            table.setName("table-" + shown.title());
            table.getAccessibleContext().setAccessibleName(shown.title());
            table.setDefaultRenderer(Object.class, new WrappedCell(this::wrapping));
            table.setFocusable(false);
            table.setRowSelectionAllowed(false);
            table.setAutoResizeMode(JTable.AUTO_RESIZE_OFF);
            table.getTableHeader().setReorderingAllowed(false);
            table.getTableHeader().setResizingAllowed(false);
            setViewportView(table);
        }

        @Override
        public void updateUI() {
            super.updateUI();
            for (var listener : getMouseWheelListeners()) {
                removeMouseWheelListener(listener);
            }
            fitted = -1;
        }

        @Override
        public Dimension getPreferredSize() {
            fit();
            var columns = table.getColumnModel().getTotalColumnWidth();
            int bar = columns > room() ? getHorizontalScrollBar().getPreferredSize().height : 0;
            var edge = getInsets();
            return new Dimension(
                    columns + edge.left + edge.right,
                    table.getTableHeader().getPreferredSize().height
                            + table.getPreferredSize().height
                            + bar
                            + edge.top
                            + edge.bottom);
        }

        private int room() {
            var edge = getInsets();
            return getWidth() - edge.left - edge.right;
        }

        @Override
        public void doLayout() {
            fit();
            super.doLayout();
        }

        private Wrapping wrapping(int column) {
            return shown.numeric().get(column) ? Wrapping.QUANTITY : Wrapping.WORDS;
        }

        private void fit() {
            if (fitted == room()) {
                return;
            }
            fitted = room();
            int columns = shown.headings().size();
            var full = IntStream.range(0, columns).map(this::full).toArray();
            var least = IntStream.range(0, columns).map(this::least).toArray();
            int wanted = IntStream.of(full).sum();
            int needed = IntStream.of(least).sum();
            double slack = wanted == needed ? 0 : Math.max(0, (fitted - needed) / (double) (wanted - needed));
            for (int column = 0; column < columns; column++) {
                int width = slack >= 1
                        ? full[column] + (fitted - wanted) / columns
                        : (int) (least[column] + slack * (full[column] - least[column]));
                var each = table.getColumnModel().getColumn(column);
                each.setMinWidth(width);
                each.setMaxWidth(width);
                each.setPreferredWidth(width);
                each.setWidth(width);
            }
            for (int row = 0; row < table.getRowCount(); row++) {
                table.setRowHeight(row, height(row));
            }
            fitHeadings();
        }

        private void fitHeadings() {
            var header = table.getTableHeader();
            var metrics = header.getFontMetrics(header.getFont());
            int most = 1;
            for (int column = 0; column < shown.headings().size(); column++) {
                var each = table.getColumnModel().getColumn(column);
                var lines =
                        Wrapping.WORDS.lines(shown.headings().get(column), metrics, each.getPreferredWidth() - EDGE);
                most = Math.max(most, lines.size());
                each.setHeaderValue(
                        lines.size() == 1
                                ? lines.get(0)
                                : lines.stream().collect(Collectors.joining("<br>", "<html>", "</html>")));
            }
            header.setPreferredSize(new Dimension(
                    table.getColumnModel().getTotalColumnWidth(), most * metrics.getHeight() + 2 * ABOVE_AND_BELOW));
        }

        private int full(int column) {
            var cells = table.getFontMetrics(table.getFont());
            return EDGE
                    + Math.max(
                            headings().stringWidth(shown.headings().get(column)),
                            shown.rows().stream()
                                    .mapToInt(row -> cells.stringWidth(row.get(column)))
                                    .max()
                                    .orElse(0));
        }

        private int least(int column) {
            var cells = table.getFontMetrics(table.getFont());
            return EDGE
                    + Math.max(
                            Wrapping.WORDS.least(shown.headings().get(column), headings()),
                            shown.rows().stream()
                                    .mapToInt(row -> wrapping(column).least(row.get(column), cells))
                                    .max()
                                    .orElse(0));
        }

        private int height(int row) {
            var metrics = table.getFontMetrics(table.getFont());
            int lines = IntStream.range(0, shown.headings().size())
                    .map(column -> wrapping(column)
                            .lines(
                                    shown.rows().get(row).get(column),
                                    metrics,
                                    table.getColumnModel().getColumn(column).getPreferredWidth() - EDGE)
                            .size())
                    .max()
                    .orElse(1);
            return lines * metrics.getHeight() + ABOVE_AND_BELOW;
        }

        private FontMetrics headings() {
            var header = table.getTableHeader();
            return header.getFontMetrics(header.getFont());
        }
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
}
