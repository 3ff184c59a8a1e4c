package planewright.app.ui.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import javax.swing.table.AbstractTableModel;
import planewright.api.quantity.Units;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.PartColumn;
import planewright.app.journal.PartRecord;
import planewright.app.ui.common.Amounts;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Times;
import planewright.app.ui.common.Workroom;
import planewright.shared.quantity.QuantityProblem;

/** The mass ledger of the build that is shown as a table, with what was weighed beside what is written. */
final class PartsModel extends AbstractTableModel {
    private static final long serialVersionUID = 1L;
    /** Where the newest weighing of a part stands; not written here. */
    private static final int WEIGHED = 3;

    private final transient Workroom room;
    private transient Optional<BuildRecord> build = Optional.empty();

    PartsModel(Workroom room) {
        this.room = room;
    }

    void refresh() {
        show(room.build());
    }

    /** Rows of the same build keep the selection, so that whoever types goes on where they are. */
    private void show(Optional<BuildRecord> now) {
        boolean same = now.map(BuildRecord::id).equals(build.map(BuildRecord::id));
        int before = getRowCount();
        build = now;
        int after = getRowCount();
        if (!same) {
            fireTableDataChanged();
            return;
        }
        if (after > before) {
            fireTableRowsInserted(before, after - 1);
        } else if (after < before) {
            fireTableRowsDeleted(after, before - 1);
        }
        if (after > 0) {
            fireTableRowsUpdated(0, after - 1);
        }
    }

    @Override
    public int getRowCount() {
        return build.map(shown -> shown.parts().size()).orElse(0);
    }

    @Override
    public int getColumnCount() {
        return PartColumn.values().length + 1;
    }

    @Override
    public String getColumnName(int column) {
        return column == WEIGHED ? Texts.WEIGHED.text() : column(column).label();
    }

    @Override
    public Class<?> getColumnClass(int column) {
        return String.class;
    }

    @Override
    public boolean isCellEditable(int row, int column) {
        return column != WEIGHED;
    }

    @Override
    public String getValueAt(int row, int column) {
        var part = build.orElseThrow().parts().get(row);
        return column == WEIGHED ? weighed(part) : column(column).text(part);
    }

    @Override
    public void setValueAt(Object typed, int row, int column) {
        var part = build.orElseThrow().parts().get(row);
        if (typed.equals(column(column).text(part))) {
            return;
        }
        try {
            var changed = column(column).write(part, (String) typed);
            change(
                    Texts.PART_EDIT.text(changed.name()),
                    parts -> IntStream.range(0, parts.size())
                            .mapToObj(i -> i == row ? changed : parts.get(i))
                            .toList());
        } catch (QuantityProblem | IllegalArgumentException wrong) {
            room.say(wrong.getLocalizedMessage());
        }
    }

    /** What is wrong with a text for a cell; empty where nothing is. */
    String problem(String typed, int row, int column) {
        try {
            var written = column(column).write(build.orElseThrow().parts().get(row), typed);
            return isTaken(written.name(), row) ? Texts.PART_TAKEN.text(written.name()) : "";
        } catch (QuantityProblem | IllegalArgumentException wrong) {
            return wrong.getLocalizedMessage();
        }
    }

    /** Weighings find their part by its name, so that two parts of one name would both weigh what one does. */
    private boolean isTaken(String name, int row) {
        var parts = build.orElseThrow().parts();
        return !parts.get(row).name().equals(name)
                && IntStream.range(0, parts.size())
                        .anyMatch(i -> i != row && parts.get(i).name().equalsIgnoreCase(name));
    }

    void add(IntConsumer done) {
        if (build.isEmpty()) {
            return;
        }
        var names = build.get().parts().stream().map(PartRecord::name).toList();
        var name = IntStream.iterate(1, i -> i + 1)
                .mapToObj(i -> Texts.NEW_PART.text() + (i == 1 ? "" : " " + i))
                .filter(free -> !names.contains(free))
                .findFirst()
                .orElseThrow();
        change(
                Texts.ADD_PART_EDIT.text(),
                parts -> {
                    var more = new ArrayList<>(parts);
                    more.add(PartRecord.named(name));
                    return more;
                },
                () -> done.accept(getRowCount() - 1));
    }

    void remove(int row) {
        change(Texts.REMOVE_PART_EDIT.text(getValueAt(row, 0)), parts -> {
            var fewer = new ArrayList<>(parts);
            fewer.remove(row);
            return fewer;
        });
    }

    /** How many parts there are and what they weigh together, weighings first. */
    String sum() {
        var parts = room.build().map(BuildRecord::parts).orElse(List.of());
        double grams =
                parts.stream().mapToDouble(part -> grams(part).orElse(0.0)).sum();
        long unknown = parts.stream().filter(part -> grams(part).isEmpty()).count();
        return parts.isEmpty()
                ? Texts.NO_PARTS.text()
                : Texts.PARTS_SUM.text(parts.size(), String.format("%.1f", grams))
                        + (unknown == 0 ? "" : " · " + Texts.PARTS_UNKNOWN.text(unknown));
    }

    private Optional<Double> grams(PartRecord part) {
        return weighing(part).or(() -> part.mass().map(mass -> mass.in(Units.GRAM)));
    }

    private Optional<Double> weighing(PartRecord part) {
        return build.flatMap(shown -> room.journal().latestMeasurement(shown.id(), part.name()))
                .filter(dated -> Units.alike(dated.what().value().value().getUnit(), Units.GRAM))
                .map(dated -> dated.what()
                        .value()
                        .asType(javax.measure.quantity.Mass.class)
                        .in(Units.GRAM));
    }

    private String weighed(PartRecord part) {
        return build.flatMap(shown -> room.journal().latestMeasurement(shown.id(), part.name()))
                .filter(dated -> Units.alike(dated.what().value().value().getUnit(), Units.GRAM))
                .map(dated -> Amounts.of(dated.what().value()) + " · "
                        + Times.date(dated.entry().at().toLocalDate()))
                .orElseGet(() -> part.carried() ? Texts.CARRIED_MASS.text() : "");
    }

    private void change(String what, UnaryOperator<List<PartRecord>> change) {
        change(what, change, () -> {});
    }

    private void change(String what, UnaryOperator<List<PartRecord>> change, Runnable done) {
        build.ifPresent(before -> {
            var after = before.withParts(change.apply(before.parts()));
            show(Optional.of(after));
            room.edit(Edit.change(what, before, after), done, failure -> {
                show(room.build());
                room.failed(failure);
            });
        });
    }

    private static PartColumn column(int column) {
        return PartColumn.values()[column < WEIGHED ? column : column - 1];
    }
}
