package planewright.app.ui.start;

import java.util.List;
import java.util.Optional;
import javax.swing.table.AbstractTableModel;
import planewright.api.quantity.Units;
import planewright.app.journal.CarryOver;
import planewright.app.journal.CarryOver.Item;
import planewright.app.journal.CarryOver.Scaling;
import planewright.app.ui.common.Amounts;
import planewright.app.ui.common.Terms;
import planewright.app.ui.common.Texts;
import planewright.shared.quantity.QuantityProblem;
import planewright.shared.quantity.QuantityText;
import planewright.shared.quantity.UnitChoice;

/** What is carried over as a table: each row can be left out, and most values changed. */
final class CarriedModel extends AbstractTableModel {
    private static final long serialVersionUID = 1L;
    static final int WANTED = 0;
    static final int VALUE = 3;
    private static final List<Texts> HEADINGS =
            List.of(Texts.CARRY, Texts.CARRY_WHAT, Texts.NAME, Texts.CARRY_VALUE, Texts.CARRY_HOW, Texts.CARRY_FROM);

    private final transient UnitChoice units;
    private transient Optional<CarryOver> offered = Optional.empty();
    private transient Optional<CarryOver> shown = Optional.empty();

    /**
     * @param units in which values are read
     */
    CarriedModel(UnitChoice units) {
        this.units = units;
    }

    /** What was left out or changed stays so where the same things are shown again. */
    void show(CarryOver carried) {
        var before = shown;
        shown = Optional.of(
                before.map(each -> carried.as(each, offered.orElseThrow())).orElse(carried));
        offered = Optional.of(carried);
        fireTableDataChanged();
    }

    /** Nothing is left out or changed any more. */
    void forget() {
        shown = offered;
        fireTableDataChanged();
    }

    Optional<CarryOver> carried() {
        return shown;
    }

    @Override
    public int getRowCount() {
        return shown.map(all -> all.items().size()).orElse(0);
    }

    @Override
    public int getColumnCount() {
        return HEADINGS.size();
    }

    @Override
    public String getColumnName(int column) {
        return HEADINGS.get(column).text();
    }

    @Override
    public Class<?> getColumnClass(int column) {
        return column == WANTED ? Boolean.class : String.class;
    }

    @Override
    public boolean isCellEditable(int row, int column) {
        return column == WANTED || column == VALUE && item(row).isEditable();
    }

    @Override
    public Object getValueAt(int row, int column) {
        var item = item(row);
        return switch (column) {
            case WANTED -> item.wanted();
            case 1 -> Terms.of(item.what().word());
            case 2 -> Terms.of(item.name());
            case VALUE -> read(item);
            case 4 ->
                item.scaling() == Scaling.STAYS || shown.orElseThrow().size() == 1
                        ? ""
                        : Terms.of(item.scaling().word());
            default -> item.origin();
        };
    }

    @Override
    public void setValueAt(Object typed, int row, int column) {
        if (typed.equals(getValueAt(row, column))) {
            return;
        }
        var item = item(row);
        var changed = column == WANTED ? item.wanted((Boolean) typed) : item.withValue((String) typed);
        shown = Optional.of(shown.orElseThrow().with(row, changed));
        fireTableRowsUpdated(row, row);
    }

    /** What is wrong with a text for a cell; empty where nothing is. */
    String problem(String typed, int row, int column) {
        return column == VALUE ? item(row).withValue(typed).problem() : "";
    }

    private String read(Item item) {
        return switch (item.what()) {
            case TEMPLATE, LAYOUT -> Terms.of(item.value());
            case DATUM -> item.value();
            default -> quantity(item.value());
        };
    }

    private String quantity(String value) {
        try {
            return Amounts.of(units.written(QuantityText.parse(value, Units.NUMBER)));
        } catch (QuantityProblem none) {
            return value;
        }
    }

    private Item item(int row) {
        return shown.orElseThrow().items().get(row);
    }
}
