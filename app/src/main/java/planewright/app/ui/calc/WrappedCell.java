package planewright.app.ui.calc;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.List;
import java.util.function.IntFunction;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.plaf.basic.BasicGraphicsUtils;
import javax.swing.table.TableCellRenderer;

/** A cell in as many lines as its column is narrow; quantities to the right. */
final class WrappedCell extends JLabel implements TableCellRenderer {
    private static final long serialVersionUID = 1L;
    private static final int BESIDE = 7;
    private static final int ABOVE = 3;

    private final transient IntFunction<Wrapping> wrapping;
    private transient List<String> lines = List.of();
    private boolean toTheRight;

    /**
     * @param wrapping of each column
     */
    WrappedCell(IntFunction<Wrapping> wrapping) {
        this.wrapping = wrapping;
    }

    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean selected, boolean focused, int row, int column) {
        setFont(table.getFont());
        setForeground(table.getForeground());
        var text = (String) value;
        setText(text);
        toTheRight = wrapping.apply(column) == Wrapping.QUANTITY;
        int width = table.getColumnModel().getColumn(column).getWidth() - 2 * BESIDE;
        lines = wrapping.apply(column).lines(text, getFontMetrics(getFont()), width);
        return this;
    }

    @Override
    public Dimension getPreferredSize() {
        var metrics = getFontMetrics(getFont());
        int width = lines.stream().mapToInt(metrics::stringWidth).max().orElse(0);
        return new Dimension(width + 2 * BESIDE, lines.size() * metrics.getHeight() + 2 * ABOVE);
    }

    @Override
    protected void paintComponent(Graphics g) {
        var metrics = g.getFontMetrics(getFont());
        int y = ABOVE + metrics.getAscent();
        for (var line : lines) {
            int x = toTheRight ? getWidth() - BESIDE - metrics.stringWidth(line) : BESIDE;
            BasicGraphicsUtils.drawString(this, (Graphics2D) g, line, x, y);
            y += metrics.getHeight();
        }
    }
}
