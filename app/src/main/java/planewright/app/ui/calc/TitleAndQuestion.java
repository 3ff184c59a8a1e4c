package planewright.app.ui.calc;

import java.awt.Component;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JList;
import planewright.app.calc.Described;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.Markup;

/** A calculator in the list of all, with the question that it answers under its title; once chosen its title alone. */
final class TitleAndQuestion extends DefaultListCellRenderer {
    private static final long serialVersionUID = 1L;

    @Override
    public Component getListCellRendererComponent(
            JList<?> list, Object value, int index, boolean selected, boolean focused) {
        var calculator = (Described) value;
        var title = calculator == null ? "" : calculator.title();
        super.getListCellRendererComponent(list, title, index, selected, focused);
        if (calculator != null && index >= 0) {
            setText("<html>" + Markup.escaped(title) + "<br>"
                    + Markup.inColour(
                            selected ? list.getSelectionForeground() : Look.colour("quiet"), calculator.question()));
            getAccessibleContext().setAccessibleName(title + ": " + calculator.question());
        }
        return this;
    }
}
