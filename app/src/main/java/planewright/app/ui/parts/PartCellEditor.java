package planewright.app.ui.parts;

import java.awt.Component;
import java.util.function.Consumer;
import javax.swing.DefaultCellEditor;
import javax.swing.JTable;
import javax.swing.JTextField;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Words;

/** Lets no cell go that holds something not understood; Escape brings back what stood there. */
final class PartCellEditor extends DefaultCellEditor {
    private static final long serialVersionUID = 1L;

    private final PartsModel model;
    private final transient Consumer<String> say;
    private int row;
    private int column;

    PartCellEditor(PartsModel model, Consumer<String> say) {
        super(new JTextField());
        this.model = model;
        this.say = say;
        Words.named((JTextField) getComponent(), Texts.PARTS.text(), "part-cell");
    }

    @Override
    public Component getTableCellEditorComponent(
            JTable table, Object value, boolean selected, int editedRow, int editedColumn) {
        row = editedRow;
        column = editedColumn;
        Words.mark((JTextField) getComponent(), "");
        var field = super.getTableCellEditorComponent(table, value, selected, editedRow, editedColumn);
        ((JTextField) field).selectAll();
        return field;
    }

    @Override
    public boolean stopCellEditing() {
        var problem = model.problem(((JTextField) getComponent()).getText(), row, column);
        Words.mark((JTextField) getComponent(), problem);
        if (!problem.isEmpty()) {
            say.accept(problem);
            return false;
        }
        return super.stopCellEditing();
    }
}
