package planewright.app.ui.shelf;

import java.awt.Color;
import java.awt.Component;
import java.awt.Font;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import planewright.app.journal.BuildRecord;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.Markup;
import planewright.app.ui.common.PlanView;
import planewright.app.ui.common.Terms;

/** A row of the shelf. */
sealed interface ShelfRow {
    /** The build that the row stands for, if any. */
    Optional<String> build();

    /** What is drawn. */
    Component component(JList<?> list, boolean selected);

    /** Words over the rows that follow. */
    record Heading(String words) implements ShelfRow {
        @Override
        public Optional<String> build() {
            return Optional.empty();
        }

        @Override
        public Component component(JList<?> list, boolean selected) {
            var label = Look.sized(new JLabel("<html><b>" + Markup.escaped(words) + "</b></html>"), 0.92, Font.BOLD);
            label.setForeground(Look.colour("quiet"));
            label.setBorder(javax.swing.BorderFactory.createEmptyBorder(10, 8, 3, 8));
            return label;
        }

        @Override
        public String toString() {
            return words;
        }
    }

    /** A build with its plan view. */
    final class OfBuild implements ShelfRow {
        private static final int PLAN_WIDTH = 52;
        private static final int PLAN_HEIGHT = 42;

        private final BuildRecord record;
        private final Optional<String> lastEntry;
        private final JPanel panel = new JPanel(
                new MigLayout("insets 5 6 5 4, gap 0 1, wmin 0", "[]8[grow,fill]", "[grow,bottom][grow,top]"));
        private final PlanView plan;
        private final JLabel name;
        private final JLabel detail;

        OfBuild(BuildRecord record, Optional<String> lastEntry) {
            this.record = record;
            this.lastEntry = lastEntry;
            name = Look.sized(new JLabel(record.name()), 1, Font.BOLD);
            var layout = Terms.of(record.layout());
            detail = Look.sized(
                    new JLabel(Stream.concat(lastEntry.stream(), Stream.of(layout))
                            .filter(words -> !words.isEmpty())
                            .collect(Collectors.joining(" · "))),
                    0.88,
                    Font.PLAIN);
            plan = new PlanView(record.planform(), record.name(), PLAN_WIDTH, PLAN_HEIGHT);
            panel.add(plan, "spany 2, aligny center, w 52!, h 42!");
            panel.add(name, "wrap, wmin 0");
            panel.add(detail, "wmin 0");
            panel.setToolTipText(record.name() + ": " + detail.getText());
            // A list asks for the size of all its rows whenever one changes.
            panel.setPreferredSize(panel.getPreferredSize());
        }

        /** Whether it shows the same. */
        boolean shows(BuildRecord now, Optional<String> lastEntry) {
            return record.equals(now) && this.lastEntry.equals(lastEntry);
        }

        @Override
        public Optional<String> build() {
            return Optional.of(record.id());
        }

        @Override
        public Component component(JList<?> list, boolean selected) {
            panel.setBackground(selected ? list.getSelectionBackground() : list.getBackground());
            Color words = selected ? list.getSelectionForeground() : list.getForeground();
            plan.setInk(selected && list.isFocusOwner() ? Optional.of(words) : Optional.empty());
            name.setForeground(words);
            detail.setForeground(selected ? words : Look.colour("quiet"));
            return panel;
        }

        @Override
        public String toString() {
            return record.name();
        }
    }
}
