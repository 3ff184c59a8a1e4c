package planewright.app.ui.common;

import java.awt.Color;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.RoundRectangle2D;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;

/** A short fact in a rounded frame: a measurement, a set-up value, a tag. */
public final class Chip extends JLabel {
    private static final long serialVersionUID = 1L;

    private final String use;

    /**
     * @param use the colour of its frame, as {@link Look#colour} knows it
     */
    public Chip(String text, String use) {
        super(text);
        this.use = use;
        setBorder(BorderFactory.createEmptyBorder(3, 10, 3, 10));
    }

    @Override
    protected void paintComponent(Graphics g) {
        frame(this, g, Look.colour(use));
        super.paintComponent(g);
    }

    /** Draws the rounded frame of whatever looks like a chip. */
    static void frame(JComponent chip, Graphics g, Color colour) {
        var own = (Graphics2D) g.create();
        own.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        own.setColor(colour);
        double height = chip.getHeight() - 1.0;
        own.draw(new RoundRectangle2D.Double(0.5, 0.5, chip.getWidth() - 1.0, height, height, height));
        own.dispose();
    }
}
