package planewright.app.ui.log;

import java.util.List;
import java.util.Locale;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import planewright.app.calc.ChartUnits;
import planewright.app.calc.KeptFigures;
import planewright.app.calc.KeptValues;
import planewright.app.calc.Staleness;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.KeptResult;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.FigureView;
import planewright.app.ui.common.Stack;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;
import planewright.shared.quantity.UnitChoice;

/** A kept result: its figures, whether it is stale, and the way back to its calculator. */
final class KeptPanel extends JPanel {
    private static final long serialVersionUID = 1L;

    KeptPanel(Workroom room, EntryRecord entry, KeptResult kept) {
        super(new Stack(6));
        setOpaque(false);
        setName("kept-" + entry.id());
        var figures = new JPanel(new MigLayout("insets 0, gap 10, fillx, hidemode 3", "[grow,fill,sg][grow,fill,sg]"));
        figures.setOpaque(false);
        KeptFigures.drawings(kept.results()).stream()
                .limit(1)
                .forEach(drawing -> figures.add(FigureView.of(drawing), "wmin 0"));
        KeptFigures.charts(kept.results()).stream()
                .limit(1)
                .forEach(chart -> figures.add(FigureView.of(ChartUnits.in(chart, room.units())), "wmin 0, aligny top"));
        if (figures.getComponentCount() > 0) {
            add(figures);
        }
        var values = Words.quiet("");
        values.setName("kept-values-" + entry.id());
        values.setVisible(false);
        add(values);
        var stale = Words.coloured("", "warn");
        stale.setName("stale-" + entry.id());
        stale.setVisible(false);
        add(stale);
        var again = new JPanel(new MigLayout("insets 0"));
        again.setOpaque(false);
        again.add(Buttons.plain(
                "compute-again", Texts.OPEN_IN_CALCULATOR.text(), () -> room.showCalculator(kept.calculator())));
        add(again);
        var units = room.units().asNow();
        room.background().run(() -> told(room, entry, kept, units), told -> {
            if (!told.values().isEmpty()) {
                Words.show(values, Texts.KEPT_IN_UNITS.text(String.join(", ", told.values())));
            }
            if (!told.changes().isEmpty()) {
                Words.show(stale, Texts.STALE.text(String.join("; ", told.changes())));
            }
        });
    }

    /** Its values in preferred units, and what has changed since. */
    private record Told(List<String> values, List<String> changes) {}

    private static Told told(Workroom room, EntryRecord entry, KeptResult kept, UnitChoice units) {
        return room.program()
                .plugins()
                .join()
                .calculator(kept.calculator())
                .map(described -> described.in(Locale.getDefault()))
                .map(described -> new Told(
                        KeptValues.texts(kept, described, units),
                        Staleness.changes(kept, described, room.journal(), entry.build(), units)))
                .orElseGet(() -> new Told(List.of(), List.of(Texts.CALCULATOR_GONE.text(kept.calculator()))));
    }
}
