package planewright.app.ui.calc;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import javax.swing.JComboBox;
import javax.swing.plaf.basic.ComboPopup;

/** A box whose list is as wide as what stands in it, also where the box is narrower. */
final class WideListBox<E> extends JComboBox<E> {
    private static final long serialVersionUID = 1L;
    private static final int BAR = 14;

    /** The look asks for it where it places the list, and nowhere else. */
    @Override
    public Dimension getSize() {
        var own = super.getSize();
        if (getUI() != null && getUI().getAccessibleChild(this, 0) instanceof ComboPopup popup) {
            own.width = Math.max(own.width, popup.getList().getPreferredSize().width + UIScale.scale(BAR));
        }
        return own;
    }
}
