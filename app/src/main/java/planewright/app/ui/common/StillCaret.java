package planewright.app.ui.common;

import java.awt.Rectangle;
import javax.swing.text.DefaultCaret;

/** A caret for text that is only read: it scrolls nothing into view. */
final class StillCaret extends DefaultCaret {
    private static final long serialVersionUID = 1L;

    @Override
    protected void adjustVisibility(Rectangle place) {
        // whoever reads decides what is in view
    }
}
