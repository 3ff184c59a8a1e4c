package planewright.app.ui.setup;

import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.List;
import planewright.app.journal.Carried;
import planewright.app.journal.CarryOver;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.SetUpNow;
import planewright.app.journal.SetUpNow.Value;
import planewright.app.ui.common.Amounts;
import planewright.app.ui.common.RowsModel;
import planewright.app.ui.common.Terms;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Workroom;
import planewright.shared.quantity.QuantityProblem;
import planewright.shared.quantity.QuantityText;
import planewright.shared.quantity.Written;

/** The values that hold now, by name, narrowed by words. A value that is written over is set today; what it was stays in the log. */
final class SetUpModel extends RowsModel<Value> {
    private static final long serialVersionUID = 1L;
    static final int NAME = 0;
    static final int VALUE = 1;
    static final int SINCE = 2;
    private static final DateTimeFormatter DATE =
            DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT);

    private final transient Workroom room;

    SetUpModel(Workroom room) {
        super(room::say, Texts.SET_UP_WHAT, Texts.QUANTITY, Texts.SET_UP_SINCE, Texts.SET_UP_FROM);
        this.room = room;
    }

    /** Reads the log anew and shows what bears all of the words. */
    void refresh(String words) {
        fill(
                room.build()
                        .map(build -> SetUpNow.of(room.journal().log(build.id())))
                        .orElse(List.of()),
                words);
    }

    /** The row of a value; the first where it is not shown. */
    int rowOf(String name) {
        for (int row = 0; row < getRowCount(); row++) {
            if (row(row).name().equalsIgnoreCase(name)) {
                return row;
            }
        }
        return 0;
    }

    /** When something was set. */
    static String at(EntryRecord entry) {
        return DATE.format(entry.at());
    }

    /** What has set it: a kept result or another entry. */
    static String from(EntryRecord entry) {
        var kind = Terms.of(Carried.isIn(entry) ? CarryOver.TAG : entry.kind().word());
        return entry.title().isEmpty() ? kind : kind + ": " + entry.title();
    }

    @Override
    public boolean isCellEditable(int row, int column) {
        return column == VALUE;
    }

    @Override
    protected String said(Value value) {
        return value.name() + " " + from(value.now().entry());
    }

    @Override
    protected String cell(Value value, int column) {
        var now = value.now();
        return switch (column) {
            case NAME -> value.name();
            case VALUE -> Amounts.of(room.units().written(now.what().quantity()));
            case SINCE -> at(now.entry());
            default -> from(now.entry());
        };
    }

    /** A number alone is taken in the unit that the cell shows; a value goes on measuring what it did. */
    @Override
    protected Runnable typed(Value value, int column, String text) throws QuantityProblem {
        var before = value.now().what().quantity();
        var written = QuantityText.parseLike(text, room.units().written(before).unit());
        return () -> set(value.now().entry().build(), value.name(), written);
    }

    /** Sets a value of a build in its entry of today. */
    void set(String build, String name, Written quantity) {
        var what = Texts.SET_UP_EDIT.text(name);
        room.edit(() -> SetUpNow.setting(room.journal(), build, room.now(), what, name, quantity), () -> {});
    }
}
