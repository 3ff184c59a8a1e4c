package planewright.app.ui.search;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.Timer;
import net.miginfocom.swing.MigLayout;
import planewright.app.index.Days;
import planewright.app.index.Facet;
import planewright.app.index.Filter;
import planewright.app.index.Hits;
import planewright.app.index.MeasuredRange;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.Stack;
import planewright.app.ui.common.Terms;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Wrapping;
import planewright.shared.quantity.QuantityProblem;

/** The filters of a search: what can be chosen, with counts, and below it what is chosen, each to be taken away again. */
final class FilterBar extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int GAP = 6;

    /** A number is rarely finished at its first digit. */
    private static final int REST_MILLIS = 250;

    private final transient Function<String, String> buildNames;
    private final transient Runnable changed;
    private final transient Map<Facet, FacetChoice> choices = new EnumMap<>(Facet.class);
    private final JTextField from = field(Texts.FILTER_FROM, "filter-from", 9);
    private final JTextField to = field(Texts.FILTER_TO, "filter-to", 9);
    private final JTextField measured = field(Texts.FILTER_MEASURED, "filter-measured", 15);
    private final JTextField atLeast = field(Texts.FILTER_AT_LEAST, "filter-at-least", 10);
    private final JTextField atMost = field(Texts.FILTER_AT_MOST, "filter-at-most", 10);
    private final JTextArea problem = Words.problem();
    private final JPanel chosen = new JPanel(new Wrapping(GAP));
    private transient Filter filter = Filter.NONE;

    /**
     * @param buildNames the name of a build by its id
     * @param changed hears that another filter is wanted
     */
    FilterBar(Function<String, String> buildNames, Runnable changed) {
        super(new Stack(GAP));
        this.buildNames = buildNames;
        this.changed = changed;
        setName("filters");
        var offered = new JPanel(new Wrapping(GAP));
        for (var facet : Facet.values()) {
            var choice = new FacetChoice(facet, label(facet), value -> shown(facet, value), value -> {
                set(kept -> kept.with(facet, value));
            });
            choices.put(facet, choice);
            offered.add(choice);
        }
        var rest = new Timer(REST_MILLIS, event -> typed());
        rest.setRepeats(false);
        for (var field : new JTextField[] {from, to, measured, atLeast, atMost}) {
            field.addActionListener(event -> typed());
            Buttons.onEdit(field, rest::restart);
        }
        offered.add(together(from, to));
        offered.add(together(measured, atLeast, atMost));
        chosen.setName("filters-chosen");
        chosen.setVisible(false);
        problem.setName("filter-problem");
        add(offered);
        add(problem);
        add(chosen);
    }

    /** What is kept to. */
    Filter filter() {
        return filter;
    }

    /** Offers what a search found. */
    void show(Hits hits) {
        choices.forEach((facet, choice) -> choice.offer(hits.of(facet), filter.of(facet)));
    }

    private void set(UnaryOperator<Filter> change) {
        filter = change.apply(filter);
        showChosen();
        changed.run();
    }

    private void typed() {
        var before = filter;
        for (var field : new JTextField[] {from, to, measured, atLeast, atMost}) {
            Words.mark(field, "");
        }
        Words.show(problem, "");
        var days = days();
        var range = range();
        if (days.isPresent()) {
            filter = filter.between(days.get().first(), days.get().last());
        }
        if (range.isPresent()) {
            filter = filter.withMeasured(range.get().range());
        }
        if (!filter.equals(before)) {
            changed.run();
        }
    }

    private record Span(Optional<LocalDate> first, Optional<LocalDate> last) {}

    private record Measuring(Optional<MeasuredRange> range) {}

    /** Empty while a day is not right. */
    private Optional<Span> days() {
        var first = day(from, Days::first);
        var last = day(to, Days::last);
        if (first.isEmpty() || last.isEmpty()) {
            return Optional.empty();
        }
        var span = new Span(first.get(), last.get());
        try {
            Filter.NONE.between(span.first(), span.last());
            return Optional.of(span);
        } catch (IllegalArgumentException refusal) {
            return wrong(to, refusal);
        }
    }

    private Optional<Optional<LocalDate>> day(JTextField field, Function<String, LocalDate> reading) {
        try {
            return Optional.of(text(field).map(reading));
        } catch (IllegalArgumentException refusal) {
            return wrong(field, refusal);
        }
    }

    /** Empty while a bound is not right. */
    private Optional<Measuring> range() {
        var least = text(atLeast);
        var most = text(atMost);
        if (text(measured).isEmpty() && least.isEmpty() && most.isEmpty()) {
            return Optional.of(new Measuring(Optional.empty()));
        }
        try {
            return Optional.of(new Measuring(Optional.of(MeasuredRange.parse(measured.getText(), least, most))));
        } catch (QuantityProblem refusal) {
            return wrong(least.isPresent() ? atLeast : most.isPresent() ? atMost : measured, refusal);
        }
    }

    private <T> Optional<T> wrong(JTextField field, Exception refusal) {
        Words.mark(field, refusal.getLocalizedMessage());
        Words.show(problem, refusal.getLocalizedMessage());
        return Optional.empty();
    }

    private static Optional<String> text(JTextField field) {
        return Optional.of(field.getText().strip()).filter(text -> !text.isEmpty());
    }

    private void showChosen() {
        chosen.removeAll();
        for (var facet : Facet.values()) {
            filter.of(facet).stream().sorted().forEach(value -> chosen.add(chip(facet, value)));
        }
        if (chosen.getComponentCount() > 1) {
            chosen.add(Buttons.plain("filters-clear", Texts.FILTERS_CLEAR.text(), () -> set(this::cleared)));
        }
        chosen.setVisible(chosen.getComponentCount() > 0);
        revalidate();
        repaint();
    }

    private Filter cleared(Filter kept) {
        return Filter.NONE.between(kept.from(), kept.to()).withMeasured(kept.measured());
    }

    private JButton chip(Facet facet, String value) {
        var words = label(facet).text() + ": " + shown(facet, value);
        var chip = Buttons.of("filter-" + facet.word() + "-" + value, words + "  ×", () -> {
            set(kept -> kept.without(facet, value));
        });
        chip.putClientProperty("JButton.buttonType", "roundRect");
        chip.getAccessibleContext().setAccessibleName(Texts.FILTER_REMOVE.text(words));
        return chip;
    }

    private String shown(Facet facet, String value) {
        return switch (facet) {
            case BUILD -> buildNames.apply(value);
            case KIND, LIFE -> Terms.of(value);
            case TAG, MATERIAL -> value;
        };
    }

    private static Texts label(Facet facet) {
        return switch (facet) {
            case BUILD -> Texts.BUILD;
            case TAG -> Texts.TAG;
            case KIND -> Texts.KIND;
            case MATERIAL -> Texts.MATERIAL;
            case LIFE -> Texts.LIFE;
        };
    }

    /** Fields that stay in one line. */
    private static JPanel together(JTextField... fields) {
        var line = new JPanel(new MigLayout("insets 0, gap " + GAP));
        for (var field : fields) {
            line.add(field);
        }
        return line;
    }

    private static JTextField field(Texts label, String name, int columns) {
        return Words.named(new JTextField(columns), label.text(), name);
    }
}
