package planewright.app.ui.help;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import javax.swing.JPanel;
import planewright.app.ui.common.Look;

/** A picture of the window, as wide as there is room and no wider than it is. */
final class GuidePicture extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient BufferedImage image;

    GuidePicture(BufferedImage image, String words) {
        this.image = image;
        setName("guide-picture");
        setOpaque(false);
        getAccessibleContext().setAccessibleName(words);
    }

    @Override
    public Dimension getPreferredSize() {
        int width = getWidth() == 0 ? image.getWidth() : Math.min(getWidth(), image.getWidth());
        return new Dimension(width, (int) Math.ceil((double) width * image.getHeight() / image.getWidth()));
    }

    @Override
    protected void paintComponent(Graphics g) {
        var own = (Graphics2D) g.create();
        own.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        var size = getPreferredSize();
        own.drawImage(image, 0, 0, size.width, size.height, null);
        own.setColor(Look.colour("line"));
        own.drawRect(0, 0, size.width - 1, size.height - 1);
        own.dispose();
    }
}
