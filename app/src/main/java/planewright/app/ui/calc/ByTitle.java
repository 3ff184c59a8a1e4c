package planewright.app.ui.calc;

import javax.swing.ComboBoxModel;
import javax.swing.JComboBox;
import planewright.app.calc.Described;

/** A letter typed in the list of calculators chooses the next one whose title begins with it. */
final class ByTitle implements JComboBox.KeySelectionManager {
    @Override
    @SuppressWarnings("rawtypes") // as the interface has it
    public int selectionForKey(char key, ComboBoxModel model) {
        int size = model.getSize();
        int from = 0;
        for (int i = 0; i < size; i++) {
            if (model.getElementAt(i) == model.getSelectedItem()) {
                from = i + 1;
            }
        }
        for (int step = 0; step < size; step++) {
            int at = (from + step) % size;
            if (begins(((Described) model.getElementAt(at)).title(), key)) {
                return at;
            }
        }
        return -1;
    }

    private static boolean begins(String title, char key) {
        return Character.toLowerCase(title.charAt(0)) == Character.toLowerCase(key);
    }
}
