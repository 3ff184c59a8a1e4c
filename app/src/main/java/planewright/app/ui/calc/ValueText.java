package planewright.app.ui.calc;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.List;
import javax.swing.JLabel;
import javax.swing.plaf.basic.BasicGraphicsUtils;

/** A quantity on one line, or with its ± below where what holds it is narrower than both. */
final class ValueText extends JLabel {
    private static final long serialVersionUID = 1L;

    ValueText(String text) {
        super(text);
    }

    private List<String> lines() {
        boolean held = getParent() != null && getParent().getWidth() > 0;
        return held
                ? Wrapping.QUANTITY.lines(
                        getText(), getFontMetrics(getFont()), getParent().getWidth())
                : List.of(getText());
    }

    @Override
    public Dimension getPreferredSize() {
        var lines = lines();
        if (lines.size() < 2) {
            return super.getPreferredSize();
        }
        var metrics = getFontMetrics(getFont());
        return new Dimension(
                lines.stream().mapToInt(metrics::stringWidth).max().orElse(0), lines.size() * metrics.getHeight());
    }

    @Override
    public int getBaseline(int width, int height) {
        return lines().size() < 2
                ? super.getBaseline(width, height)
                : getFontMetrics(getFont()).getAscent();
    }

    @Override
    protected void paintComponent(Graphics g) {
        var lines = lines();
        if (lines.size() < 2) {
            super.paintComponent(g);
            return;
        }
        var metrics = g.getFontMetrics(getFont());
        int y = metrics.getAscent();
        for (var line : lines) {
            BasicGraphicsUtils.drawString(this, (Graphics2D) g, line, 0, y);
            y += metrics.getHeight();
        }
    }
}
