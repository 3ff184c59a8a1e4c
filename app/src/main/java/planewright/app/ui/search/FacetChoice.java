package planewright.app.ui.search;

import java.awt.Dimension;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JComboBox;
import planewright.app.index.Facet;
import planewright.app.index.Hits;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Words;

/** The values of a facet with their counts. Choosing one hands it over; the box then shows the facet's name again. */
final class FacetChoice extends JComboBox<Hits.Count> {
    private static final long serialVersionUID = 1L;
    private static final int ROWS = 16;

    private final String label;
    private boolean filling;

    FacetChoice(Facet facet, Texts label, Function<String, String> shown, Consumer<String> chosen) {
        setName("filter-" + facet.word());
        getAccessibleContext().setAccessibleName(label.text());
        this.label = label.text();
        setMaximumRowCount(ROWS);
        setRenderer(Words.choice(
                value -> value instanceof Hits.Count count && !count.value().isEmpty()
                        ? shown.apply(count.value()) + "   " + count.entries()
                        : label.text()));
        // arrow keys then move in the list, and only Enter or a click chooses
        putClientProperty("JComboBox.isTableCellEditor", Boolean.TRUE);
        addActionListener(event -> {
            if (!filling && getSelectedIndex() > 0) {
                var value = getItemAt(getSelectedIndex()).value();
                filling = true;
                setSelectedIndex(0);
                filling = false;
                chosen.accept(value);
            }
        });
        offer(List.of(), Set.of());
    }

    /** As wide as its name; the list below it is as wide as its values. */
    @Override
    public Dimension getPreferredSize() {
        var size = super.getPreferredSize();
        return label == null
                ? size
                : new Dimension(getFontMetrics(getFont()).stringWidth(label) + 2 * size.height, size.height);
    }

    /** Offers these counts but for the values chosen already. */
    void offer(List<Hits.Count> counts, Set<String> without) {
        if (isPopupVisible()) {
            return;
        }
        filling = true;
        var model = new DefaultComboBoxModel<Hits.Count>();
        model.addElement(new Hits.Count("", 0));
        counts.stream().filter(count -> !without.contains(count.value())).forEach(model::addElement);
        setModel(model);
        setEnabled(model.getSize() > 1);
        filling = false;
    }
}
