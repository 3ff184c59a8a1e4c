package planewright.app.ui.parts;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.swing.table.AbstractTableModel;
import planewright.api.journal.JournalReader;
import planewright.api.journal.Planform;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.MeasurementRecord;
import planewright.app.journal.PartColumn;
import planewright.app.journal.PartRecord;
import planewright.app.ui.common.Amounts;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Times;
import planewright.app.ui.common.Workroom;
import planewright.app.ui.planform.Lengths;
import planewright.app.ui.planform.Sight;
import planewright.shared.mass.Centre;
import planewright.shared.quantity.QuantityProblem;
import planewright.shared.quantity.QuantityText;

/** The mass ledger of the build that is shown as a table, with what was weighed beside what is written. */
final class PartsModel extends AbstractTableModel {
    private static final long serialVersionUID = 1L;
    /** Where the newest weighing of a part stands; not written here. */
    private static final int WEIGHED = 3;

    private final transient Workroom room;
    private static final int COARSE = 5;

    /** The newest measurement of each name. */
    private final transient Map<String, JournalReader.Dated<MeasurementRecord>> weighings = new HashMap<>();

    private final transient Lengths lengths;
    private transient Optional<BuildRecord> build = Optional.empty();
    private transient Optional<Tried> tried = Optional.empty();
    private transient Optional<Range> range = Optional.empty();
    private transient List<DrawnPart> drawn = List.of();
    private int saving;

    /**
     * What is tried out.
     *
     * @param before the build as the journal has it
     * @param name of the part that is moved
     */
    private record Tried(BuildRecord before, String name) {}

    PartsModel(Workroom room) {
        this.room = room;
        this.lengths = new Lengths(room.units());
    }

    /** Takes in what the journal has, unless something is tried out or on its way into it. */
    void refresh() {
        var now = room.build();
        boolean other = !now.map(BuildRecord::id).equals(build.map(BuildRecord::id));
        if (other || tried.isEmpty() && saving == 0) {
            tried = Optional.empty();
            read(now);
            show(now);
        }
    }

    /** Reads the log once, so that a drag need not. */
    private void read(Optional<BuildRecord> now) {
        var log = now.map(each -> room.journal().log(each.id())).orElse(List.of());
        weighings.clear();
        for (var entry : log) {
            entry.measurements()
                    .forEach(each -> weighings.put(
                            each.name().strip().toLowerCase(Locale.ROOT), new JournalReader.Dated<>(each, entry)));
        }
        range = Range.of(log);
    }

    /** The parts as they are drawn, in the order of the rows. */
    List<DrawnPart> drawn() {
        return drawn;
    }

    /** The shape that they lie in. */
    Optional<Planform> shape() {
        return build.flatMap(BuildRecord::planform);
    }

    /** Where it should balance by its set-up. */
    Optional<Range> range() {
        return range;
    }

    /** How far a key moves a part, m; the finer one is what places are rounded to. */
    double step(boolean finer) {
        double unit = lengths.unit().equals(Units.INCH) ? 0.0254 / 16 : 0.001;
        return finer ? unit : COARSE * unit;
    }

    /** Shows a part elsewhere, in no file, until that is kept or dropped. */
    void tryOut(DrawnPart part, Sight sight, double across, double aft, double snap) {
        var shown = build.orElseThrow();
        tried = tried.or(() -> Optional.of(new Tried(shown, part.part().name())));
        var moved = drawn.get(part.row())
                .moved(sight, across, aft, snap, lengths.unit().asType(Length.class));
        show(Optional.of(shown.withParts(replaced(shown.parts(), part.row(), moved))));
    }

    /** Whether something is tried out and not kept. */
    boolean isTrying() {
        return tried.isPresent();
    }

    /** Forgets what was tried out. */
    void drop() {
        tried = Optional.empty();
        show(room.build());
    }

    /** Makes one edit of all that was tried out. */
    void keep() {
        tried.ifPresent(moved -> {
            tried = Optional.empty();
            var after = build.orElseThrow();
            if (!after.equals(moved.before())) {
                save(Texts.PART_MOVED_EDIT.text(moved.name()), moved.before(), after, () -> {});
            }
        });
    }

    /** What a part is and where, in words. */
    String words(DrawnPart part) {
        var name =
                part.part().name() + part.mass().map(mass -> ", " + read(mass)).orElse("");
        var place = part.place();
        return part.isPlaced()
                ? Texts.PART_PLACE.text(
                        name, lengths.shown(place.x()), lengths.shown(place.y()), lengths.shown(place.z()))
                : Texts.PART_NOT_PLACED.text(name);
    }

    /** Where all of it balances, in words. */
    String balanceWords() {
        var balance = Balance.of(drawn);
        if (balance.isEmpty()) {
            return Texts.PARTS_BALANCE_UNKNOWN.text();
        }
        var now = balance.get();
        var words = Texts.PARTS_BALANCE.text(shown(now.x()), shown(now.y()), shown(now.z()));
        var left = drawn.size() - now.counted();
        return words
                + range.map(wanted ->
                                " " + Texts.PARTS_RANGE.text(lengths.shown(wanted.from()), lengths.shown(wanted.to())))
                        .orElse("")
                + (left > 0 ? " " + Texts.PARTS_LEFT_OUT.text(left) : "");
    }

    private String shown(Centre centre) {
        return centre.spread() > 0 ? lengths.shown(centre.station(), centre.spread()) : lengths.shown(centre.station());
    }

    private static List<PartRecord> replaced(List<PartRecord> parts, int row, PartRecord changed) {
        return IntStream.range(0, parts.size())
                .mapToObj(i -> i == row ? changed : parts.get(i))
                .toList();
    }

    /** Rows of the same build keep the selection, so that whoever types goes on where they are. */
    private void show(Optional<BuildRecord> now) {
        boolean same = now.map(BuildRecord::id).equals(build.map(BuildRecord::id));
        int before = getRowCount();
        build = now;
        drawn = IntStream.range(0, getRowCount()).mapToObj(this::drawn).toList();
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
        return column == WEIGHED ? weighed(part) : column(column).text(part, room.units());
    }

    @Override
    public void setValueAt(Object typed, int row, int column) {
        var part = build.orElseThrow().parts().get(row);
        if (typed.equals(column(column).text(part, room.units()))) {
            return;
        }
        try {
            var changed = column(column).write(part, (String) typed, room.units());
            change(Texts.PART_EDIT.text(changed.name()), parts -> replaced(parts, row, changed));
        } catch (QuantityProblem | IllegalArgumentException wrong) {
            room.say(wrong.getLocalizedMessage());
        }
    }

    /** What is wrong with a text for a cell; empty where nothing is. */
    String problem(String typed, int row, int column) {
        try {
            var written = column(column).write(build.orElseThrow().parts().get(row), typed, room.units());
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
        add(part -> part, done);
    }

    /** A new part at a place of a drawing, m. */
    void add(Sight sight, double across, double aft, IntConsumer done) {
        add(
                part -> new DrawnPart(0, part, Optional.empty())
                        .moved(sight, across, aft, step(true), lengths.unit().asType(Length.class)),
                done);
    }

    private void add(UnaryOperator<PartRecord> place, IntConsumer done) {
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
                    more.add(place.apply(PartRecord.named(name)));
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
        double grams = drawn.stream().mapToDouble(DrawnPart::grams).sum();
        long unknown = drawn.stream().filter(part -> part.mass().isEmpty()).count();
        return drawn.isEmpty()
                ? Texts.NO_PARTS.text()
                : Texts.PARTS_SUM.text(drawn.size(), sum(grams))
                        + (unknown == 0 ? "" : " · " + Texts.PARTS_UNKNOWN.text(unknown));
    }

    private String sum(double grams) {
        return QuantityText.result(
                Measured.of(grams, Units.GRAM),
                room.units().shown(Units.GRAM),
                Locale.getDefault(Locale.Category.FORMAT));
    }

    private String read(Measured<?> value) {
        return Amounts.of(room.units().written(value));
    }

    private DrawnPart drawn(int row) {
        var part = build.orElseThrow().parts().get(row);
        return new DrawnPart(
                row,
                part,
                weighing(part)
                        .map(dated -> dated.what().value().asType(Mass.class))
                        .or(part::mass));
    }

    private Optional<JournalReader.Dated<MeasurementRecord>> weighing(PartRecord part) {
        return Optional.ofNullable(weighings.get(part.name().strip().toLowerCase(Locale.ROOT)))
                .filter(dated -> Units.alike(dated.what().value().value().getUnit(), Units.GRAM));
    }

    private String weighed(PartRecord part) {
        return weighing(part)
                .map(dated -> read(dated.what().value()) + " · "
                        + Times.date(dated.entry().at().toLocalDate()))
                .orElseGet(() -> part.carried() ? Texts.CARRIED_MASS.text() : "");
    }

    private void change(String what, UnaryOperator<List<PartRecord>> change) {
        change(what, change, () -> {});
    }

    private void change(String what, UnaryOperator<List<PartRecord>> change, Runnable done) {
        keep();
        build.ifPresent(before -> save(what, before, before.withParts(change.apply(before.parts())), done));
    }

    private void save(String what, BuildRecord before, BuildRecord after, Runnable done) {
        show(Optional.of(after));
        saving++;
        room.edit(
                Edit.change(what, before, after),
                () -> {
                    saving--;
                    refresh();
                    done.run();
                },
                failure -> {
                    saving--;
                    refresh();
                    room.failed(failure);
                });
    }

    private static PartColumn column(int column) {
        return PartColumn.values()[column < WEIGHED ? column : column - 1];
    }
}
