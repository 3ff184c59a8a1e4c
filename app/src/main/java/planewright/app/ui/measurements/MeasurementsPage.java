package planewright.app.ui.measurements;

import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import planewright.app.exchange.MeasurementTable;
import planewright.app.journal.Reading;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.CheckedCell;
import planewright.app.ui.common.ContextMenu;
import planewright.app.ui.common.FigureView;
import planewright.app.ui.common.FirstWide;
import planewright.app.ui.common.Icons;
import planewright.app.ui.common.MeasuredHistory;
import planewright.app.ui.common.OpenCells;
import planewright.app.ui.common.SteadyTable;
import planewright.app.ui.common.Tables;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.UnitBox;
import planewright.app.ui.common.WhenShown;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;

/** All measurements of a build in a table whose cells can be edited; below it the history of the one that is chosen. */
public final class MeasurementsPage extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Workroom room;
    private final MeasurementsModel model;
    private final JTable table;
    private final transient OpenCells cells;
    private final JTextField filter = new JTextField();
    private final UnitBox unit;
    private final JButton copy =
            Buttons.with(Icons.COPY, Buttons.of("copy-measurements", Texts.COPY_CSV.text(), this::copy));
    private final JButton entry =
            Buttons.with(Icons.ENTRY, Buttons.plain("show-entry", Texts.SHOW_ENTRY.text(), this::showEntry));
    private final JTextArea nothing = Words.quiet("");
    private final JPanel chart = new JPanel(new MigLayout("insets 0, fill", "[grow,fill]", "[grow,fill]"));
    private transient Optional<Reading> chosen = Optional.empty();
    private boolean filling;

    public MeasurementsPage(Workroom room) {
        super(new MigLayout("insets 10, gap 8, fill, hidemode 3", "[grow,fill]", "[][][grow,fill][]"));
        this.room = room;
        this.model = new MeasurementsModel(room);
        this.table = new SteadyTable(model);
        this.cells = new OpenCells(room);
        this.unit = new UnitBox(room, "shown-unit");
        setName("measurements-page");
        add(bar(), "wrap, wmin 0");
        nothing.setName("no-measurements");
        add(nothing, "wrap, wmin 0");
        add(new JScrollPane(table), "wrap, hmin 120");
        add(chart, "h 220!, wmin 0");
        prepareTable();
        Buttons.onEdit(filter, this::refresh);
        WhenShown.refresh(this, room, this::refresh);
    }

    private JPanel bar() {
        var bar = new JPanel(FirstWide.filter());
        Words.named(filter, Texts.MEASUREMENTS_FILTER.text(), "measurements-filter");
        filter.putClientProperty("JTextField.showClearButton", true);
        bar.add(filter);
        bar.add(unit);
        bar.add(entry);
        bar.add(copy);
        return bar;
    }

    private void prepareTable() {
        cells.add(table);
        table.setName("measurements");
        table.getAccessibleContext().setAccessibleName(Texts.MEASUREMENTS.text());
        table.putClientProperty("terminateEditOnFocusLost", false);
        table.setDefaultEditor(
                String.class,
                new CheckedCell(Texts.MEASUREMENTS.text(), "measurement-cell", model::problem, room::say));
        table.getTableHeader().setReorderingAllowed(false);
        table.setAutoResizeMode(JTable.AUTO_RESIZE_LAST_COLUMN);
        table.getSelectionModel().addListSelectionListener(event -> {
            if (!filling && !event.getValueIsAdjusting() && table.getSelectedRow() >= 0) {
                choose(model.row(table.getSelectedRow()));
            }
        });
        ContextMenu.on(table, entry, copy);
    }

    private void refresh() {
        if (!cells.giveWay()) {
            return;
        }
        filling = true;
        model.refresh(filter.getText());
        Tables.fit(table);
        filling = false;
        Words.show(nothing, model.getRowCount() > 0 ? "" : nothingThere());
        if (model.getRowCount() > 0) {
            int row = chosen.map(model::rowOf).orElse(0);
            filling = true;
            table.setRowSelectionInterval(row, row);
            filling = false;
            choose(model.row(row));
        } else {
            chart.removeAll();
            chart.repaint();
        }
        entry.setEnabled(model.getRowCount() > 0);
        copy.setEnabled(model.getRowCount() > 0);
        unit.setEnabled(model.getRowCount() > 0);
    }

    /** Chooses a measurement, whatever the table was narrowed to. */
    public void choose(String entryId, String measurementId) {
        room.build().stream()
                .flatMap(build -> Reading.of(room.journal().log(build.id())).stream())
                .filter(each -> each.entry().id().equals(entryId)
                        && each.measurement().id().equals(measurementId))
                .findFirst()
                .ifPresent(reading -> {
                    filter.setText("");
                    chosen = Optional.of(reading);
                    refresh();
                    table.scrollRectToVisible(table.getCellRect(table.getSelectedRow(), 0, true));
                    table.requestFocusInWindow();
                });
    }

    private String nothingThere() {
        return model.hasAny()
                ? Texts.NO_MEASUREMENT_BEARS.text(filter.getText().strip())
                : Texts.NO_MEASUREMENTS.text();
    }

    private void choose(Reading line) {
        chosen = Optional.of(line);
        unit.offer(line.measurement().quantity().unit());
        chart.removeAll();
        chart.add(FigureView.of(MeasuredHistory.of(room, line)));
        chart.revalidate();
        chart.repaint();
    }

    private void showEntry() {
        chosen.ifPresent(
                line -> room.showEntry(line.entry().build(), line.entry().id()));
    }

    /** Several chosen rows, else all that are shown. */
    private void copy() {
        var rows = table.getSelectedRowCount() > 1
                ? Arrays.stream(table.getSelectedRows())
                : IntStream.range(0, model.getRowCount());
        var lines = rows.mapToObj(model::row).toList();
        room.build().ifPresent(build -> {
            var text = new StringSelection(MeasurementTable.text(build, lines));
            Toolkit.getDefaultToolkit().getSystemClipboard().setContents(text, null);
            room.say(Texts.COPIED.text(lines.size()));
        });
    }
}
