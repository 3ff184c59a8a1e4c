package planewright.app.ui.across;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import javax.swing.table.AbstractTableModel;
import planewright.app.across.BuildValue;
import planewright.app.across.Pairs;
import planewright.app.across.View;
import planewright.app.ui.common.Amounts;
import planewright.app.ui.common.ShownUnits;
import planewright.app.ui.common.Terms;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Times;

/** What builds have, a row each; the tick tells whether the line goes by a build. */
final class AcrossModel extends AbstractTableModel {
    private static final long serialVersionUID = 1L;
    static final int COUNTS = 0;
    private static final int BUILD = 1;
    private static final int WHEN = 2;
    private static final int VALUE = 3;
    private static final int SOURCE = 4;
    private static final int AGAINST = 5;

    /** Hears that a build is to count, or not. */
    interface Ticking {
        void tick(Pairs.Pair pair, boolean counts);
    }

    private final transient ShownUnits units;
    private final transient Ticking ticking;
    private transient Optional<View> view = Optional.empty();
    private transient List<Pairs.Pair> pairs = List.of();
    private int[] columns = {};

    AcrossModel(ShownUnits units, Ticking ticking) {
        this.units = units;
        this.ticking = ticking;
    }

    void show(View shown) {
        var before = view.map(View::pairs);
        view = Optional.of(shown);
        pairs = shown.pairs().pairs();
        columns = shown.pairs().against().isPresent()
                ? new int[] {COUNTS, BUILD, VALUE, AGAINST, WHEN, SOURCE}
                : new int[] {BUILD, VALUE, WHEN, SOURCE};
        boolean same = before.filter(old -> old.value().equals(shown.pairs().value())
                        && old.against().equals(shown.pairs().against()))
                .isPresent();
        if (same) {
            fireTableDataChanged();
        } else {
            fireTableStructureChanged();
        }
    }

    Pairs.Pair pair(int row) {
        return pairs.get(row);
    }

    /** The first row of a build; empty where it has none. */
    Optional<Integer> rowOf(String build) {
        for (int row = 0; row < pairs.size(); row++) {
            if (pairs.get(row).value().build().id().equals(build)) {
                return Optional.of(row);
            }
        }
        return Optional.empty();
    }

    @Override
    public int getRowCount() {
        return pairs.size();
    }

    @Override
    public int getColumnCount() {
        return columns.length;
    }

    @Override
    public String getColumnName(int column) {
        return switch (columns[column]) {
            case COUNTS -> Texts.ACROSS_COUNTS.text();
            case BUILD -> Texts.ACROSS_BUILD.text();
            case WHEN -> Texts.MEASURED_WHEN.text();
            case VALUE -> Terms.of(view.orElseThrow().pairs().value().name());
            case SOURCE -> Texts.ACROSS_SOURCE.text();
            default ->
                Terms.of(view.orElseThrow().pairs().against().orElseThrow().name());
        };
    }

    @Override
    public Class<?> getColumnClass(int column) {
        return columns[column] == COUNTS ? Boolean.class : String.class;
    }

    @Override
    public boolean isCellEditable(int row, int column) {
        return columns[column] == COUNTS && pairs.get(row).against().isPresent();
    }

    @Override
    public Object getValueAt(int row, int column) {
        var pair = pairs.get(row);
        return switch (columns[column]) {
            case COUNTS -> pair.against().isPresent() && view.orElseThrow().counts(pair);
            case BUILD -> pair.value().build().name();
            case WHEN ->
                pair.value()
                        .at()
                        .map(LocalDateTime::toLocalDate)
                        .map(Times::date)
                        .orElse("");
            case VALUE -> shown(pair.value());
            case SOURCE -> Terms.of(pair.value().source().word());
            default -> pair.against().map(this::shown).orElse("");
        };
    }

    private String shown(BuildValue value) {
        return Amounts.of(units.written(value.quantity()));
    }

    @Override
    public void setValueAt(Object ticked, int row, int column) {
        ticking.tick(pairs.get(row), Boolean.TRUE.equals(ticked));
    }
}
