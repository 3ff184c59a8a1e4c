package planewright.app.ui.common;

import java.awt.BasicStroke;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.LayoutManager;
import java.awt.RenderingHints;
import java.awt.geom.RoundRectangle2D;
import javax.swing.BorderFactory;
import javax.swing.JPanel;

/** A panel like a sheet of paper on the bench. */
public class Card extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final double ARC = 12;
    private static final int EDGE = 14;

    private boolean marked;

    public Card(LayoutManager layout) {
        super(layout);
        setOpaque(false);
        setBorder(BorderFactory.createEmptyBorder(EDGE, EDGE, EDGE, EDGE));
    }

    /** Draws the edge so that the eye finds it. */
    public final void setMarked(boolean marked) {
        this.marked = marked;
        repaint();
    }

    @Override
    protected void paintComponent(Graphics g) {
        var own = (Graphics2D) g.create();
        own.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        var edge = new RoundRectangle2D.Double(1, 1, getWidth() - 2.0, getHeight() - 2.0, ARC, ARC);
        own.setColor(Look.colour("card"));
        own.fill(edge);
        own.setColor(marked ? Look.colour("second") : Look.colour("line"));
        own.setStroke(new BasicStroke(marked ? 2f : 1f));
        own.draw(edge);
        own.dispose();
    }
}
