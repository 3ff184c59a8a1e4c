package planewright.app.ui.common;

import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.JTable;

/** Offers, where the pointer is, what a page's buttons do. */
public final class ContextMenu extends JPopupMenu {
    private static final long serialVersionUID = 1L;

    private ContextMenu(List<? extends AbstractButton> buttons) {
        for (var button : buttons) {
            var item = new JMenuItem(words(button), button.getIcon());
            item.setName("menu-" + button.getName());
            item.setEnabled(button.isEnabled());
            item.addActionListener(event -> button.doClick(0));
            add(item);
        }
    }

    private static String words(AbstractButton button) {
        var text = button.getText();
        return text == null || text.isEmpty() ? button.getAccessibleContext().getAccessibleName() : text;
    }

    /** The row under the pointer is chosen before the menu opens, where it is not chosen already. */
    public static void on(JComponent component, AbstractButton... buttons) {
        component.setComponentPopupMenu(new JPopupMenu() {
            private static final long serialVersionUID = 1L;

            @Override
            public void show(java.awt.Component over, int x, int y) {
                choose(component, x, y);
                new ContextMenu(List.of(buttons)).show(over, x, y);
            }
        });
    }

    private static void choose(JComponent component, int x, int y) {
        var place = new java.awt.Point(x, y);
        if (component instanceof JTable table) {
            int row = table.rowAtPoint(place);
            if (row >= 0 && !table.isRowSelected(row)) {
                table.setRowSelectionInterval(row, row);
            }
        } else if (component instanceof JList<?> list) {
            int row = list.locationToIndex(place);
            if (row >= 0 && !list.isSelectedIndex(row)) {
                list.setSelectedIndex(row);
            }
        } else if (component instanceof Choosing choosing) {
            choosing.chooseAt(place);
        }
    }
}
