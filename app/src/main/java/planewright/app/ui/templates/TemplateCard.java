package planewright.app.ui.templates;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Font;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.JPanel;
import planewright.api.figure.Drawing;
import planewright.app.journal.StepRecord;
import planewright.app.journal.TemplateRecord;
import planewright.app.ui.common.Amounts;
import planewright.app.ui.common.Beside;
import planewright.app.ui.common.Card;
import planewright.app.ui.common.FigureView;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.Proof;
import planewright.app.ui.common.Stack;
import planewright.app.ui.common.Terms;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Words;
import planewright.shared.material.Cautions;
import planewright.shared.quantity.UnitChoice;

/** A template with what it says, where it came from and what has flown with it. */
final class TemplateCard extends Card {
    private static final long serialVersionUID = 1L;
    private static final Dimension FIGURE = new Dimension(250, 170);

    /**
     * @param drawing of an outline, once it has been read
     * @param named the name of another template by its id
     * @param units in which its values are read
     * @param actions what can be done with it
     */
    TemplateCard(
            TemplateRecord template,
            Optional<Drawing> drawing,
            Function<String, Optional<String>> named,
            UnitChoice units,
            JPanel actions) {
        super(new Beside(14, 0));
        setName("template-" + template.name());
        getAccessibleContext()
                .setAccessibleName(
                        template.name() + ", " + Terms.of(template.kind().word()));
        var words = new JPanel(new Stack(4));
        words.setOpaque(false);
        words.add(Look.sized(Words.of(template.name()), 1.1, Font.BOLD));
        words.add(Words.quiet(Terms.of(template.kind().word()) + " · " + Texts.TEMPLATE_MADE.text(template.made())
                + (template.tags().isEmpty() ? "" : " · " + String.join(", ", template.tags()))));
        lineage(template, named).forEach(line -> words.add(Words.quiet(line)));
        template.notes().forEach(note -> words.add(Words.of(note)));
        if (!template.values().isEmpty()) {
            words.add(Words.of(template.values().stream()
                    .map(each -> each.name() + " " + Amounts.of(units.written(each.quantity())))
                    .collect(Collectors.joining("  ·  "))));
        }
        for (int i = 0; i < template.steps().size(); i++) {
            step(i + 1, template.steps().get(i), words);
        }
        add(words);
        add(drawing.map(FigureView::of).map(view -> under(actions, view)).orElse(actions));
    }

    private static JPanel under(JPanel actions, FigureView drawing) {
        drawing.setPreferredSize(FIGURE);
        var side = new JPanel(new BorderLayout(0, 6));
        side.setOpaque(false);
        side.add(actions, BorderLayout.NORTH);
        side.add(drawing);
        return side;
    }

    private static List<String> lineage(TemplateRecord template, Function<String, Optional<String>> named) {
        var lines = new ArrayList<String>();
        template.cameFrom().ifPresent(each -> lines.add(Texts.TEMPLATE_CAME_FROM.text(each.name(), each.date())));
        template.derivedFrom()
                .ifPresent(id ->
                        lines.add(Texts.TEMPLATE_MADE_FROM.text(named.apply(id).orElseGet(Texts.TEMPLATE_GONE::text))));
        if (!template.wentTo().isEmpty()) {
            lines.add(Texts.TEMPLATE_WENT_TO.text(Proof.names(template.wentTo())));
        }
        lines.add(Proof.of(template));
        return lines;
    }

    private static void step(int number, StepRecord step, JPanel words) {
        var times = Stream.of(
                        step.handsOn().map(time -> Texts.STEP_HANDS_ON_FOR.text(Amounts.of(time))),
                        step.waiting().map(time -> Texts.STEP_THEN_WAIT.text(Amounts.of(time))))
                .flatMap(Optional::stream)
                .collect(Collectors.joining(", "));
        words.add(Words.of(number + ".  " + step.text() + (times.isEmpty() ? "" : "  (" + times + ")")));
        if (!step.materials().isEmpty()) {
            words.add(Words.quiet("     " + String.join(", ", step.materials())));
        }
        var said = new ArrayList<>(step.materials());
        said.add(step.text());
        Stream.concat(step.cautions().stream(), Cautions.usual(said, Locale.getDefault()).stream())
                .distinct()
                .forEach(caution -> words.add(Words.coloured(caution, "warn")));
    }
}
