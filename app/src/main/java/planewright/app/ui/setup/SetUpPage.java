package planewright.app.ui.setup;

import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import planewright.api.figure.Chart;
import planewright.api.quantity.Units;
import planewright.app.figure.History;
import planewright.app.journal.SetUpNow.Value;
import planewright.app.print.SetUpSheet;
import planewright.app.ui.common.Amounts;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.CheckedCell;
import planewright.app.ui.common.ContextMenu;
import planewright.app.ui.common.FigureView;
import planewright.app.ui.common.Files;
import planewright.app.ui.common.FirstWide;
import planewright.app.ui.common.Icons;
import planewright.app.ui.common.OpenCells;
import planewright.app.ui.common.ShownUnits;
import planewright.app.ui.common.SteadyTable;
import planewright.app.ui.common.Tables;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Typing;
import planewright.app.ui.common.UnitBox;
import planewright.app.ui.common.WhenShown;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;
import planewright.shared.quantity.QuantityProblem;
import planewright.shared.quantity.QuantityText;

/** What a build flies with now, to be set anew in its cells; below it the history of the value that is chosen. */
public final class SetUpPage extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int MEMORABLE = 2;

    private final transient Workroom room;
    private final SetUpModel model;
    private final JTable table;
    private final transient OpenCells cells;
    private final JTextField filter = Words.named(new JTextField(), Texts.SET_UP_FILTER.text(), "set-up-filter");
    private final JTextField name = Words.named(new JTextField(16), Texts.SET_UP_NAME.text(), "set-up-name");
    private final JTextField quantity =
            Words.named(new JTextField(12), Texts.SET_UP_QUANTITY.text(), "set-up-quantity");
    private final UnitBox unit;
    private final JButton entry =
            Buttons.with(Icons.ENTRY, Buttons.plain("set-up-entry", Texts.SHOW_ENTRY.text(), this::showEntry));
    private final JButton copy = Buttons.with(Icons.COPY, Buttons.plain("copy-set-up", Texts.COPY.text(), this::copy));
    private final JButton print =
            Buttons.with(Icons.PRINT, Buttons.of("print-set-up", Texts.PRINT_SET_UP.text(), this::print));
    private final JTextArea nothing = Words.quiet("");
    private final JTextArea problem = Words.problem();
    private final JPanel chart = new JPanel(new MigLayout("insets 0, fill", "[grow,fill]", "[grow,fill]"));
    private transient Optional<String> chosen = Optional.empty();
    private boolean filling;

    public SetUpPage(Workroom room) {
        super(new MigLayout("insets 10, gap 8, fill, hidemode 3", "[grow,fill]", "[][][grow,fill][][][]"));
        this.room = room;
        this.model = new SetUpModel(room);
        this.table = new SteadyTable(model);
        this.cells = new OpenCells(room);
        this.unit = new UnitBox(room, "set-up-unit");
        setName("set-up-page");
        nothing.setName("no-set-up");
        add(bar(), "cell 0 0, wmin 0");
        add(nothing, "cell 0 1, wmin 0");
        add(new JScrollPane(table), "cell 0 2, hmin 90");
        add(problem, "cell 0 3, wmin 0");
        add(newValue(), "cell 0 4, wmin 0");
        add(chart, "cell 0 5, h 200!, wmin 0");
        prepareTable();
        Buttons.onEdit(filter, this::refresh);
        WhenShown.refresh(this, room, this::refresh);
    }

    private JPanel bar() {
        var bar = new JPanel(FirstWide.filter());
        filter.putClientProperty("JTextField.showClearButton", true);
        print.setToolTipText(Texts.PRINT_SET_UP_HINT.text());
        bar.add(filter);
        bar.add(unit);
        bar.add(entry);
        bar.add(copy);
        bar.add(print);
        return bar;
    }

    private JPanel newValue() {
        var row = new JPanel(new MigLayout("insets 0, gap 6", "[90:240:,fill][80:200:,fill][]"));
        row.add(name);
        row.add(quantity);
        row.add(Buttons.with(Icons.ADD, Buttons.of("add-set-up", Texts.SET_UP_ADD.text(), this::addValue)));
        name.addActionListener(event -> quantity.requestFocusInWindow());
        quantity.addActionListener(event -> addValue());
        return row;
    }

    private void prepareTable() {
        cells.add(table);
        table.setName("set-up");
        table.getAccessibleContext().setAccessibleName(Texts.SET_UP_PAGE.text());
        table.putClientProperty("terminateEditOnFocusLost", false);
        table.setDefaultEditor(
                String.class, new CheckedCell(Texts.SET_UP_PAGE.text(), "set-up-cell", model::problem, room::say));
        table.getTableHeader().setReorderingAllowed(false);
        table.setAutoResizeMode(JTable.AUTO_RESIZE_LAST_COLUMN);
        table.getSelectionModel().addListSelectionListener(event -> {
            if (!filling && !event.getValueIsAdjusting() && table.getSelectedRow() >= 0) {
                choose(model.row(table.getSelectedRow()));
            }
        });
        ContextMenu.on(table, entry, copy, print);
    }

    private void refresh() {
        if (!cells.giveWay()) {
            return;
        }
        filling = true;
        model.refresh(filter.getText());
        Tables.fit(table);
        filling = false;
        boolean some = model.getRowCount() > 0;
        Words.show(nothing, some ? "" : nothingThere());
        if (some) {
            int row = chosen.map(model::rowOf).orElse(0);
            filling = true;
            table.setRowSelectionInterval(row, row);
            filling = false;
            choose(model.row(row));
        } else {
            chart.removeAll();
            chart.revalidate();
            chart.repaint();
        }
        entry.setEnabled(some);
        copy.setEnabled(some);
        unit.setEnabled(some);
        print.setEnabled(model.hasAny());
    }

    private String nothingThere() {
        return model.hasAny() ? Texts.NO_SET_UP_BEARS.text(filter.getText().strip()) : Texts.NO_SET_UP.text();
    }

    /** Its history: a chart of what was set when, and once it has changed where each value came from. */
    private void choose(Value value) {
        chosen = Optional.of(value.name());
        unit.offer(value.now().what().quantity().unit());
        var shown = room.units().written(value.now().what().quantity()).unit();
        var alike = value.sets().stream()
                .filter(set -> Units.alike(set.what().quantity().unit(), shown))
                .toList();
        var readings = alike.stream()
                .map(set -> {
                    var numbers = ShownUnits.numbers(set.what().value(), shown);
                    return new History.Reading(set.entry().at(), numbers[0], numbers[1]);
                })
                .toList();
        chart.removeAll();
        chart.add(
                FigureView.of(new History(
                        Texts.SET_UP_HISTORY.text(value.name(), readings.size()),
                        new Chart.Axis("", Units.codeOf(shown)),
                        readings)),
                "w 50%, wmin 0");
        if (value.sets().size() >= MEMORABLE) {
            chart.add(new JScrollPane(history(value)), "w 50%, wmin 0");
        }
        chart.revalidate();
        chart.repaint();
    }

    private JTable history(Value value) {
        var rows = value.sets().stream()
                .map(set -> new Object[] {
                    SetUpModel.at(set.entry()),
                    Amounts.of(room.units().written(set.what().quantity())),
                    SetUpModel.from(set.entry())
                })
                .toArray(Object[][]::new);
        var newestFirst = new Object[rows.length][];
        for (int i = 0; i < rows.length; i++) {
            newestFirst[i] = rows[rows.length - 1 - i];
        }
        var history =
                new JTable(
                        newestFirst,
                        new Object[] {Texts.SET_UP_SINCE.text(), Texts.QUANTITY.text(), Texts.SET_UP_FROM.text()}) {
                    private static final long serialVersionUID = 1L;

                    @Override
                    public boolean isCellEditable(int row, int column) {
                        return false;
                    }
                };
        history.setName("set-up-history");
        history.getAccessibleContext().setAccessibleName(Texts.SET_UP_HISTORY.text(value.name(), rows.length));
        Tables.fitButLast(history);
        return history;
    }

    private Optional<Value> chosenValue() {
        return table.getSelectedRow() < 0 ? Optional.empty() : Optional.of(model.row(table.getSelectedRow()));
    }

    private void addValue() {
        if (name.getText().isBlank()) {
            refuse(name, Texts.SET_UP_NAME_NEEDED.text());
            return;
        }
        try {
            var written = QuantityText.parse(quantity.getText(), Units.NUMBER);
            Words.mark(name, "");
            Words.mark(quantity, "");
            Words.show(problem, "");
            chosen = Optional.of(name.getText().strip());
            room.build().ifPresent(build -> model.set(build.id(), name.getText().strip(), written));
            name.setText("");
            quantity.setText("");
            Typing.forget(name);
            Typing.forget(quantity);
            name.requestFocusInWindow();
        } catch (QuantityProblem wrong) {
            refuse(quantity, wrong.getLocalizedMessage());
        }
    }

    private void refuse(JTextField field, String words) {
        Words.mark(field, words);
        Words.show(problem, words);
        field.requestFocusInWindow();
    }

    private void showEntry() {
        chosenValue().map(value -> value.now().entry()).ifPresent(set -> room.showEntry(set.build(), set.id()));
    }

    private void print() {
        room.build()
                .ifPresent(build -> Files.print(
                        this, room, Texts.SET_UP_SHEET.text(build.name()), () -> SetUpSheet.of(room.journal(), build)));
    }

    /** Several chosen rows, else all that are shown; a line each, with tabs between the columns. */
    private void copy() {
        var rows = table.getSelectedRowCount() > 1
                ? Arrays.stream(table.getSelectedRows())
                : IntStream.range(0, model.getRowCount());
        var lines = rows.mapToObj(row -> IntStream.range(0, model.getColumnCount())
                        .mapToObj(column -> model.getValueAt(row, column))
                        .collect(Collectors.joining("\t")))
                .toList();
        Toolkit.getDefaultToolkit()
                .getSystemClipboard()
                .setContents(new StringSelection(String.join("\n", lines) + "\n"), null);
        room.say(Texts.SET_UP_COPIED.text(lines.size()));
    }
}
