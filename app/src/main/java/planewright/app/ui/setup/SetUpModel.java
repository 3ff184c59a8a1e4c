package planewright.app.ui.setup;

import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import javax.swing.table.AbstractTableModel;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.SetUpNow;
import planewright.app.journal.SetUpNow.Value;
import planewright.app.ui.common.Terms;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Workroom;
import planewright.shared.quantity.QuantityProblem;
import planewright.shared.quantity.QuantityText;
import planewright.shared.quantity.Written;

/** The values that hold now, by name, narrowed by words. A value that is written over is set today; what it was stays in the log. */
final class SetUpModel extends AbstractTableModel {
    private static final long serialVersionUID = 1L;
    static final int NAME = 0;
    static final int VALUE = 1;
    static final int SINCE = 2;
    private static final Texts[] HEADINGS = {
        Texts.SET_UP_WHAT, Texts.QUANTITY, Texts.SET_UP_SINCE, Texts.SET_UP_FROM,
    };
    private static final DateTimeFormatter DATE =
            DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT);

    private final transient Workroom room;
    private transient List<Value> all = List.of();
    private transient List<Value> shown = List.of();

    SetUpModel(Workroom room) {
        this.room = room;
    }

    /** Reads the log anew and shows what bears all of the words. */
    void refresh(String words) {
        all = room.build()
                .map(build -> SetUpNow.of(room.journal().log(build.id())))
                .orElse(List.of());
        var wanted = words.strip().toLowerCase(Locale.ROOT).split("\\s+");
        shown = all.stream().filter(value -> bears(value, wanted)).toList();
        fireTableDataChanged();
    }

    private static boolean bears(Value value, String... wanted) {
        var said = (value.name() + " " + from(value.now().entry())).toLowerCase(Locale.ROOT);
        return Arrays.stream(wanted).allMatch(said::contains);
    }

    boolean hasAny() {
        return !all.isEmpty();
    }

    Value value(int row) {
        return shown.get(row);
    }

    /** The row of a value; the first where it is not shown. */
    int rowOf(String name) {
        for (int row = 0; row < shown.size(); row++) {
            if (shown.get(row).name().equalsIgnoreCase(name)) {
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
        var kind = Terms.of(entry.kind().word());
        return entry.title().isEmpty() ? kind : kind + ": " + entry.title();
    }

    @Override
    public int getRowCount() {
        return shown.size();
    }

    @Override
    public int getColumnCount() {
        return HEADINGS.length;
    }

    @Override
    public String getColumnName(int column) {
        return HEADINGS[column].text();
    }

    @Override
    public Class<?> getColumnClass(int column) {
        return String.class;
    }

    @Override
    public boolean isCellEditable(int row, int column) {
        return column == VALUE;
    }

    @Override
    public String getValueAt(int row, int column) {
        var now = shown.get(row).now();
        return switch (column) {
            case NAME -> shown.get(row).name();
            case VALUE -> room.units().written(now.what().quantity()).text();
            case SINCE -> at(now.entry());
            default -> from(now.entry());
        };
    }

    @Override
    public void setValueAt(Object typed, int row, int column) {
        if (typed.equals(getValueAt(row, column))) {
            return;
        }
        try {
            set(shown.get(row).name(), written((String) typed, row));
        } catch (QuantityProblem wrong) {
            room.say(wrong.getMessage());
        }
    }

    /** Sets a value in the entry of today. */
    void set(String name, Written quantity) {
        var what = Texts.SET_UP_EDIT.text(name);
        room.build()
                .ifPresent(build -> room.edit(
                        () -> SetUpNow.setting(room.journal(), build.id(), room.now(), what, name, quantity),
                        () -> {}));
    }

    /** What is wrong with a text for a cell; empty where nothing is. */
    String problem(String typed, int row, int column) {
        if (typed.equals(getValueAt(row, column))) {
            return "";
        }
        try {
            written(typed, row);
            return "";
        } catch (QuantityProblem wrong) {
            return wrong.getMessage();
        }
    }

    /** A number alone is taken in the unit that the cell shows; a value goes on measuring what it did. */
    private Written written(String typed, int row) throws QuantityProblem {
        var before = shown.get(row).now().what().quantity();
        return QuantityText.parseLike(typed, room.units().written(before).unit());
    }
}
