package planewright.app.ui.measurements;

import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import planewright.app.journal.Edit;
import planewright.app.journal.MeasurementRecord;
import planewright.app.journal.Reading;
import planewright.app.ui.common.Amounts;
import planewright.app.ui.common.RowsModel;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Workroom;
import planewright.shared.quantity.QuantityProblem;
import planewright.shared.quantity.QuantityText;

/** The measurements of the build that is shown, the newest on top, narrowed by words. */
final class MeasurementsModel extends RowsModel<Reading> {
    private static final long serialVersionUID = 1L;
    static final int WHEN = 0;
    static final int NAME = 1;
    static final int VALUE = 2;
    private static final DateTimeFormatter DATE =
            DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT);

    private final transient Workroom room;

    MeasurementsModel(Workroom room) {
        super(room::say, Texts.MEASURED_WHEN, Texts.MEASURED_WHAT, Texts.QUANTITY, Texts.METHOD);
        this.room = room;
    }

    /** Reads the log anew and shows what bears all of the words. */
    void refresh(String words) {
        var lines = new ArrayList<>(room.build()
                .map(build -> Reading.of(room.journal().log(build.id())))
                .orElse(List.of()));
        Collections.reverse(lines);
        fill(List.copyOf(lines), words);
    }

    /** The row of a measurement that is shown; the first where it is not. */
    int rowOf(Reading wanted) {
        for (int row = 0; row < getRowCount(); row++) {
            if (row(row).isSame(wanted)) {
                return row;
            }
        }
        return 0;
    }

    @Override
    public boolean isCellEditable(int row, int column) {
        return column != WHEN;
    }

    @Override
    protected String said(Reading line) {
        return line.measurement().name() + " " + line.measurement().method() + " "
                + line.entry().at().toLocalDate();
    }

    @Override
    protected String cell(Reading line, int column) {
        return switch (column) {
            case WHEN -> DATE.format(line.entry().at());
            case NAME -> line.measurement().name();
            case VALUE -> Amounts.of(room.units().written(line.measurement().quantity()));
            default -> line.measurement().method();
        };
    }

    @Override
    protected Runnable typed(Reading line, int column, String text) throws QuantityProblem {
        var changed = written(line.measurement(), text, column);
        var measurements = line.entry().measurements().stream()
                .map(each -> each.id().equals(changed.id()) ? changed : each)
                .toList();
        var edit = Edit.change(
                Texts.MEASUREMENT_EDIT.text(changed.name()),
                line.entry(),
                line.entry().withMeasurements(measurements));
        return () -> room.edit(edit, () -> {});
    }

    /** A number alone is taken in the unit that the cell shows. */
    private MeasurementRecord written(MeasurementRecord before, String typed, int column) throws QuantityProblem {
        return switch (column) {
            case NAME -> new MeasurementRecord(before.id(), typed.strip(), before.quantity(), before.method());
            case VALUE ->
                new MeasurementRecord(
                        before.id(),
                        before.name(),
                        QuantityText.parse(
                                typed, room.units().written(before.quantity()).unit()),
                        before.method());
            default -> new MeasurementRecord(before.id(), before.name(), before.quantity(), typed.strip());
        };
    }
}
