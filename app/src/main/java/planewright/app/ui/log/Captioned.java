package planewright.app.ui.log;

import java.awt.Dimension;
import java.awt.Font;
import javax.swing.JPanel;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.PictureTile;
import planewright.app.ui.common.Stack;
import planewright.app.ui.common.Words;

/** A picture with its caption under it, wrapped to the picture's width. */
final class Captioned extends JPanel {
    private static final long serialVersionUID = 1L;

    private final PictureTile tile;

    Captioned(PictureTile tile, String caption) {
        super(new Stack(3));
        this.tile = tile;
        setOpaque(false);
        add(tile);
        if (!caption.isEmpty()) {
            add(Look.sized(Words.quiet(caption), 0.88, Font.PLAIN));
        }
    }

    @Override
    public Dimension getPreferredSize() {
        int width = tile.getPreferredSize().width;
        if (getWidth() != width) {
            setSize(width, Math.max(1, getHeight()));
        }
        return new Dimension(width, super.getPreferredSize().height);
    }
}
