package planewright.app.ui.calc;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.event.MouseEvent;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javax.swing.DefaultCellEditor;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.JTableHeader;
import javax.swing.table.TableColumnModel;
import net.miginfocom.swing.MigLayout;
import planewright.api.calculator.InputProblem;
import planewright.api.quantity.Units;
import planewright.app.calc.Field;
import planewright.app.calc.InputTexts;
import planewright.app.calc.Kind;
import planewright.app.calc.Origin;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.ContextMenu;
import planewright.app.ui.common.Icons;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.Tables;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Wrapping;
import planewright.shared.quantity.UnitChoice;

/** Rows of inputs as a table. The pointer on a cell tells where its value came from, or what is wrong with it. */
final class RowsField implements InputField {
    private static final int MOST_SHOWN = 14;
    private static final int LEAST_WIDTH = 240;
    /** Between a value and its ±. */
    private static final String BOTH_SIDES = " ± ";

    private final Field field;
    private final UnitChoice units;
    private final List<Field> columns;
    private final ArrayNode rows = JsonNodeFactory.instance.arrayNode();
    private final Map<String, Origin> origins;
    private final Map<String, String> problems = new HashMap<>();
    private final Consumer<JsonNode> edited;
    private final Model model;
    private final JTable table;
    private final JPanel panel = new JPanel(new MigLayout("insets 0, gap 4, fill", "[grow,fill]", "[grow,fill][]"));
    private boolean grown;

    RowsField(Field field, UnitChoice units, JsonNode value, Map<String, Origin> origins, Consumer<JsonNode> edited) {
        this.field = field;
        this.units = units;
        this.columns = field.row().orElseThrow().fields();
        this.origins = origins;
        this.edited = edited;
        if (value != null) {
            value.forEach(row -> rows.add(row.deepCopy()));
        }
        model = new Model();
        table = new JTable(model);
        panel.setOpaque(false);
        panel.setName("input-" + field.name());
        table.setName("rows-" + field.name());
        table.getAccessibleContext().setAccessibleName(field.label());
        table.setDefaultRenderer(Object.class, new Cells());
        table.setDefaultEditor(Object.class, Tables.editor());
        table.putClientProperty("terminateEditOnFocusLost", true);
        table.setTableHeader(new Headings(table.getColumnModel()));
        table.getTableHeader().setReorderingAllowed(false);
        offerChoices();
        table.setAutoResizeMode(JTable.AUTO_RESIZE_OFF);
        Tables.fit(table, this::shown);
        panel.add(new JScrollPane(table), "wrap, wmin 0");
        var more = Buttons.with(Icons.ADD, Buttons.of("add-row-" + field.name(), Texts.ADD_ROW.text(), this::addRow));
        var fewer = Buttons.with(
                Icons.REMOVE, Buttons.of("remove-row-" + field.name(), Texts.REMOVE.text(), this::removeRow));
        var buttons = new JPanel(new Wrapping(6));
        buttons.setOpaque(false);
        buttons.add(more);
        buttons.add(fewer);
        panel.add(buttons, "wmin 0");
        ContextMenu.on(table, more, fewer);
        size();
    }

    @Override
    public JComponent component() {
        return panel;
    }

    @Override
    public int wanted() {
        return table.getPreferredSize().width;
    }

    /** A row that was added tells nothing until there is something in it. */
    @Override
    public boolean isBegun() {
        return grown || table.isEditing();
    }

    @Override
    public void mark(List<InputProblem> found) {
        problems.clear();
        found.forEach(problem -> problems.put(problem.input(), Problems.text(problem)));
        table.repaint();
    }

    /** A column of words of which one is chosen offers them. */
    private void offerChoices() {
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).kind() == Kind.CHOICE) {
                var column = columns.get(i);
                var choices = new JComboBox<>(columns.get(i).choices().toArray(new String[0]));
                choices.getAccessibleContext().setAccessibleName(columns.get(i).label());
                choices.setRenderer(Words.choice(each -> column.told((String) each)));
                table.getColumnModel().getColumn(i).setCellEditor(new DefaultCellEditor(choices));
            }
        }
    }

    private void size() {
        int shown = Math.max(2, Math.min(MOST_SHOWN, rows.size()));
        table.setPreferredScrollableViewportSize(new Dimension(LEAST_WIDTH, table.getRowHeight() * shown));
        panel.revalidate();
    }

    private void addRow() {
        rows.addObject();
        grown = true;
        model.fireTableDataChanged();
        size();
        table.changeSelection(rows.size() - 1, 0, false, false);
        table.requestFocusInWindow();
    }

    private void removeRow() {
        if (table.isEditing()) {
            table.getCellEditor().cancelCellEditing();
        }
        int at = table.getSelectedRow();
        if (at >= 0) {
            rows.remove(at);
            shiftOrigins(at);
            model.fireTableDataChanged();
            size();
            edited.accept(rows.deepCopy());
        }
    }

    /** Origins of rows behind a removed one move up with them. */
    private void shiftOrigins(int removed) {
        for (int i = removed; i <= rows.size(); i++) {
            for (var column : columns) {
                origins.remove(path(i, column));
                var next = origins.remove(path(i + 1, column));
                if (next != null) {
                    origins.put(path(i, column), next);
                }
            }
        }
    }

    private Optional<String> unit(int column) {
        return columns.get(column).unit().map(units::shown).map(Units::symbolOf).filter(symbol -> !symbol.isEmpty());
    }

    /** What a cell shows: the unit of its heading is not said again. */
    private String shown(int row, int column) {
        var text = columns.get(column).told((String) table.getValueAt(row, column));
        var ending = unit(column).map(unit -> " " + unit);
        var numbers = List.of(text.split(BOTH_SIDES));
        return ending.filter(unit -> numbers.stream().allMatch(number -> number.endsWith(unit)))
                .map(unit -> numbers.stream()
                        .map(number -> number.substring(0, number.length() - unit.length()))
                        .collect(Collectors.joining(BOTH_SIDES)))
                .orElse(text);
    }

    private String path(int row, Field column) {
        return field.name() + "[" + row + "]." + column.name();
    }

    /** The pointer on a heading tells what belongs under it. */
    private final class Headings extends JTableHeader {
        private static final long serialVersionUID = 1L;

        Headings(TableColumnModel shown) {
            super(shown);
        }

        @Override
        public String getToolTipText(MouseEvent event) {
            int column = columnAtPoint(event.getPoint());
            return column < 0 ? null : columns.get(column).help();
        }
    }

    /** The rows as a table of texts. */
    private final class Model extends AbstractTableModel {
        private static final long serialVersionUID = 1L;

        @Override
        public int getRowCount() {
            return rows.size();
        }

        @Override
        public int getColumnCount() {
            return columns.size();
        }

        @Override
        public String getColumnName(int column) {
            var label = columns.get(column).label();
            return unit(column).map(unit -> label + " (" + unit + ")").orElse(label);
        }

        @Override
        public boolean isCellEditable(int row, int column) {
            return true;
        }

        @Override
        public Object getValueAt(int row, int column) {
            return InputTexts.shown(
                    columns.get(column), rows.get(row).get(columns.get(column).name()), units);
        }

        @Override
        public void setValueAt(Object typed, int row, int column) {
            if (typed.equals(getValueAt(row, column))) {
                return;
            }
            var name = columns.get(column).name();
            var node = InputTexts.node(columns.get(column), (String) typed, units);
            if (node.isNull()) {
                ((ObjectNode) rows.get(row)).remove(name);
            } else {
                ((ObjectNode) rows.get(row)).set(name, node);
            }
            origins.remove(path(row, columns.get(column)));
            edited.accept(rows.deepCopy());
            table.repaint();
        }
    }

    /** Quantities to the right; what is wrong in the colour for it. */
    private final class Cells extends DefaultTableCellRenderer {
        private static final long serialVersionUID = 1L;

        @Override
        public Component getTableCellRendererComponent(
                JTable shown, Object value, boolean selected, boolean focused, int row, int column) {
            super.getTableCellRendererComponent(shown, shown(row, column), selected, focused, row, column);
            var path = path(row, columns.get(column));
            var problem = problems.get(path);
            var origin = origins.get(path);
            setHorizontalAlignment(columns.get(column).kind() == Kind.QUANTITY ? RIGHT : LEFT);
            setToolTipText(
                    problem != null
                            ? problem
                            : origin != null
                                    ? origin.said()
                                    : columns.get(column).help());
            boolean wrong = problem != null;
            if (selected) {
                setBackground(wrong ? Look.colour("stop") : shown.getSelectionBackground());
            } else {
                setForeground(wrong ? Look.colour("stop") : shown.getForeground());
                setBackground(shown.getBackground());
            }
            return this;
        }
    }
}
