package planewright.app.ui.common;

import java.awt.Component;
import java.util.function.Consumer;
import javax.swing.DefaultCellEditor;
import javax.swing.JTable;
import javax.swing.JTextField;

/** Lets no cell go that holds something not understood; Escape brings back what stood there. */
public final class CheckedCell extends DefaultCellEditor {
    private static final long serialVersionUID = 1L;

    private final transient Check check;
    private final transient Consumer<String> say;
    private int row;
    private int column;

    /** What is wrong with a text for a cell. */
    public interface Check {
        /** Empty where nothing is. */
        String problem(String typed, int row, int column);
    }

    /**
     * @param label the cell's name for people who cannot see it
     * @param name its name for tests
     * @param say hears of what is wrong
     */
    public CheckedCell(String label, String name, Check check, Consumer<String> say) {
        super(new JTextField());
        this.check = check;
        this.say = say;
        Words.named((JTextField) getComponent(), label, name);
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

    /**
     * Ends typing: where what was typed cannot be taken, what stood there before comes back, and that is said.
     *
     * @param against why nothing can be taken any more; empty where it can
     */
    void end(String against) {
        var problem = against.isEmpty() ? problem() : against;
        if (problem.isEmpty()) {
            super.stopCellEditing();
        } else {
            say.accept(Texts.CELL_DROPPED.text(typed(), problem));
            cancelCellEditing();
        }
    }

    private String typed() {
        return ((JTextField) getComponent()).getText();
    }

    private String problem() {
        return check.problem(typed(), row, column);
    }

    @Override
    public boolean stopCellEditing() {
        var problem = problem();
        Words.mark((JTextField) getComponent(), problem);
        if (!problem.isEmpty()) {
            say.accept(problem);
            return false;
        }
        return super.stopCellEditing();
    }
}
