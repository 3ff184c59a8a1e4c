package planewright.app.ui.common;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import javax.swing.table.AbstractTableModel;
import planewright.shared.quantity.QuantityProblem;

/**
 * Rows of words under headings, narrowed by what is looked for. What is typed into a cell is carried out where it can be
 * understood, and told where it cannot.
 *
 * @param <R> what stands in a row
 */
public abstract class RowsModel<R> extends AbstractTableModel {
    private static final long serialVersionUID = 1L;

    private final transient List<Texts> headings;
    private final transient Consumer<String> say;
    private transient List<R> all = List.of();
    private transient List<R> shown = List.of();

    /**
     * @param say hears of what cannot be understood
     */
    protected RowsModel(Consumer<String> say, Texts... headings) {
        this.say = say;
        this.headings = List.of(headings);
    }

    /** What a cell shows. */
    protected abstract String cell(R row, int column);

    /** All that a row is looked for by. */
    protected abstract String said(R row);

    /**
     * What a text means that is typed into a cell.
     *
     * @return carries it out
     * @throws IllegalArgumentException where a name or the like will not do
     */
    protected abstract Runnable typed(R row, int column, String text) throws QuantityProblem;

    /** Shows those rows that bear all of the words. */
    protected final void fill(List<R> rows, String words) {
        all = rows;
        var wanted = words.strip().toLowerCase(Locale.ROOT).split("\\s+");
        shown = all.stream().filter(row -> bears(row, wanted)).toList();
        fireTableDataChanged();
    }

    private boolean bears(R row, String... wanted) {
        var said = said(row).toLowerCase(Locale.ROOT);
        return Arrays.stream(wanted).allMatch(said::contains);
    }

    /** Whether there are any rows, be they shown or not. */
    public final boolean hasAny() {
        return !all.isEmpty();
    }

    /** What stands in a row. */
    public final R row(int row) {
        return shown.get(row);
    }

    @Override
    public final int getRowCount() {
        return shown.size();
    }

    @Override
    public final int getColumnCount() {
        return headings.size();
    }

    @Override
    public final String getColumnName(int column) {
        return headings.get(column).text();
    }

    @Override
    public final Class<?> getColumnClass(int column) {
        return String.class;
    }

    @Override
    public final String getValueAt(int row, int column) {
        return cell(shown.get(row), column);
    }

    @Override
    public final void setValueAt(Object typed, int row, int column) {
        if (typed.equals(getValueAt(row, column))) {
            return;
        }
        try {
            typed(shown.get(row), column, (String) typed).run();
        } catch (QuantityProblem | IllegalArgumentException wrong) {
            say.accept(wrong.getLocalizedMessage());
        }
    }

    /** What is wrong with a text for a cell; empty where nothing is. */
    public final String problem(String typed, int row, int column) {
        if (typed.equals(getValueAt(row, column))) {
            return "";
        }
        try {
            typed(shown.get(row), column, typed);
            return "";
        } catch (QuantityProblem | IllegalArgumentException wrong) {
            return wrong.getLocalizedMessage();
        }
    }
}
