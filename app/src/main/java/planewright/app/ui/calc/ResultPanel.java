package planewright.app.ui.calc;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.Font;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import planewright.api.calculator.Finding;
import planewright.api.calculator.Proposal;
import planewright.api.figure.Drawing;
import planewright.api.figure.Outline;
import planewright.api.quantity.Measured;
import planewright.app.calc.ClockText;
import planewright.app.calc.Described;
import planewright.app.calc.Keeping;
import planewright.app.calc.Origin;
import planewright.app.calc.Outcome;
import planewright.app.calc.ResultView;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.PictureRecord;
import planewright.app.print.CutLines;
import planewright.app.print.Sheets;
import planewright.app.ui.common.Amounts;
import planewright.app.ui.common.Beside;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.Card;
import planewright.app.ui.common.FigureView;
import planewright.app.ui.common.Files;
import planewright.app.ui.common.Icons;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.Pairs;
import planewright.app.ui.common.PictureTile;
import planewright.app.ui.common.Stack;
import planewright.app.ui.common.Terms;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;
import planewright.app.ui.common.Wrapping;

/** A calculator's answer: values, findings, figures, tables; to keep and to print. */
final class ResultPanel extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int GRADE_WIDTH = 82;
    private static final int PICTURE_HEIGHT = 150;

    private final transient Workroom room;
    private final transient Described described;
    private final transient BuildRecord build;
    private final transient Outcome.Answered answered;
    private final transient Map<String, Origin> origins;
    private static final double MAIN = 1.5;
    private static final double OTHERS = 1.05;

    private final transient Map<Proposal, JCheckBox> proposals = new LinkedHashMap<>();

    ResultPanel(
            Workroom room,
            Described described,
            BuildRecord build,
            Outcome.Answered answered,
            Map<String, Origin> origins) {
        super(new Stack(10));
        this.room = room;
        this.described = described;
        this.build = build;
        this.answered = answered;
        this.origins = origins;
        setOpaque(false);
        setName("result");
        var view = ResultView.of(described, answered);
        add(answer(view));
        view.drawings().forEach(drawing -> add(framed(FigureView.of(drawing))));
        if (!view.pictures().isEmpty()) {
            add(pictures(view.pictures()));
        }
        view.charts().forEach(chart -> add(framed(FigureView.of(chart))));
        view.tables().stream().filter(table -> !table.rows().isEmpty()).forEach(table -> add(new TableCard(table)));
        view.byHeading().forEach((heading, values) -> {
            if (!heading.isEmpty()) {
                add(aside(heading, values));
            }
        });
        add(about());
    }

    private Card answer(ResultView view) {
        var card = new Card(new Stack(10));
        card.add(values(view.byHeading().get(""), MAIN));
        view.findings().forEach(finding -> card.add(finding(finding)));
        if (!view.proposals().isEmpty()) {
            card.add(Look.quiet(Texts.PROPOSED.text()));
            view.proposals().forEach(proposal -> card.add(proposal(proposal)));
        }
        var actions = new JPanel(new Wrapping(8));
        actions.setOpaque(false);
        actions.add(Buttons.with(Icons.LOG, Buttons.of("keep", Texts.KEEP.text(), this::keep)));
        actions.add(Buttons.with(Icons.PRINT, Buttons.of("print-result", Texts.PRINT.text(), this::print)));
        if (view.drawings().stream().anyMatch(CutLines::in)) {
            actions.add(told(
                    Buttons.of("print-true-size", Texts.PRINT_TRUE_SIZE.text(), this::printTrueSize),
                    Texts.TRUE_SIZE_HINT));
            actions.add(told(
                    Buttons.of("save-cut-lines", Texts.CUT_LINES.text(), () -> saveCutLines(view.drawings())),
                    Texts.CUT_LINES_HINT));
        }
        card.add(actions);
        return card;
    }

    private Card pictures(List<PictureRecord> pictures) {
        var card = new Card(new MigLayout("insets 10, gap 8", "", ""));
        pictures.forEach(picture -> card.add(PictureTile.of(room, picture, PICTURE_HEIGHT)));
        return card;
    }

    private static Card aside(String heading, List<ResultView.Value> values) {
        var card = new Card(new Stack(6));
        card.add(Look.heading(heading, 1));
        card.add(values(values, 1));
        return card;
    }

    private static JPanel values(List<ResultView.Value> values, double size) {
        var grid = new JPanel(new Pairs(3));
        grid.setOpaque(false);
        double shown = size;
        for (var value : values) {
            var label = Words.quiet(value.label());
            var text = Look.sized(new ValueText(value.text()), shown, Font.BOLD);
            text.setName("value-" + value.label());
            text.getAccessibleContext().setAccessibleName(value.label() + " " + value.text());
            text.setToolTipText(value.exact().orElse(value.help().isEmpty() ? null : value.help()));
            label.setToolTipText(value.help().isEmpty() ? null : value.help());
            grid.add(label);
            grid.add(text);
            shown = Math.min(shown, OTHERS);
        }
        return grid;
    }

    /** The grade is told by its word; the colour only helps. */
    private static JPanel finding(Finding finding) {
        var row = new JPanel(new Beside(8, 1));
        row.setOpaque(false);
        var grade = Look.sized(new JLabel(Terms.of(finding.grade().word())), 1, Font.BOLD);
        grade.setPreferredSize(new Dimension(UIScale.scale(GRADE_WIDTH), grade.getPreferredSize().height));
        grade.setForeground(Look.colour(
                switch (finding.grade()) {
                    case FINE -> "fine";
                    case LOOK_AGAIN -> "warn";
                    case STOP -> "stop";
                }));
        row.add(grade);
        row.add(Words.of(finding.text()));
        return row;
    }

    private JCheckBox proposal(Proposal proposal) {
        var box = new JCheckBox(words(proposal));
        box.setName((proposal instanceof Proposal.NewSetUpValue ? "proposal-set-" : "proposal-") + proposal.name());
        box.setToolTipText(box.getText());
        if (proposal instanceof Proposal.NewJoint joint) {
            box.setToolTipText(Texts.PROPOSED_TIMES.text(
                    ClockText.show(joint.handsOffUntil(), described.language().locale()),
                    ClockText.show(joint.fullyCured(), described.language().locale())));
        } else if (proposal instanceof Proposal.NewText text) {
            box.setToolTipText(String.join(" ", text.text()));
        }
        box.setOpaque(false);
        proposals.put(proposal, box);
        return box;
    }

    private String words(Proposal proposal) {
        if (proposal instanceof Proposal.NewJoint joint) {
            return Texts.PROPOSED_JOINT.text(joint.name(), joint.material());
        }
        if (proposal instanceof Proposal.NewTask task) {
            return Texts.PROPOSED_TASK.text(task.name())
                    + task.handsOn().map(time -> "  " + read(time)).orElse("");
        }
        if (proposal instanceof Proposal.NewOutline outline) {
            return Texts.PROPOSED_OUTLINE.text(outline.name(), size(outline.outline()));
        }
        if (proposal instanceof Proposal.NewPlanform) {
            return Texts.PROPOSED_SHAPE.text(proposal.name());
        }
        if (proposal instanceof Proposal.NewText) {
            return Texts.PROPOSED_TEXT.text(proposal.name());
        }
        return proposal instanceof Proposal.NewMeasurement measurement
                ? Texts.MEASURED.text() + ": " + proposal.name() + "  " + read(measurement.value())
                : Texts.SET_UP.text() + ": " + proposal.name() + "  "
                        + read(((Proposal.NewSetUpValue) proposal).value());
    }

    private String read(Measured<?> value) {
        return Amounts.of(answered.units().written(value));
    }

    private static String size(Outline outline) {
        return Math.round(outline.width()) + " × " + Math.round(outline.height()) + " mm";
    }

    private void keep() {
        var accepted = proposals.entrySet().stream()
                .filter(each -> each.getValue().isSelected())
                .map(Map.Entry::getKey)
                .toList();
        var entry = Keeping.entry(described, build.id(), answered, origins, accepted, room.now());
        room.inOrder(
                () -> {
                    var edit = Keeping.edit(
                            Texts.KEEP_EDIT.text(described.title()),
                            entry,
                            accepted,
                            room.journal(),
                            room.program().folder().outlines());
                    room.journal().apply(edit);
                    return edit;
                },
                kept -> room.say(Texts.KEPT.text(build.name())));
    }

    private static JButton told(JButton button, Texts hint) {
        button.setToolTipText(hint.text());
        return button;
    }

    private void print() {
        Files.print(
                this,
                room,
                fileName(),
                () -> Sheets.result(
                        described,
                        build.name(),
                        answered,
                        origins,
                        Optional.of(room.program().pictures())));
    }

    private void printTrueSize() {
        Files.print(this, room, fileName(), () -> Sheets.trueSize(described, build.name(), answered));
    }

    private void saveCutLines(List<Drawing> drawings) {
        Files.saveCutLines(this, room, fileName(), drawings);
    }

    private String fileName() {
        return described.title() + " " + build.name();
    }

    private static Card framed(FigureView figure) {
        var card = new Card(new MigLayout("insets 10, fill", "[grow,fill]", "[grow,fill]"));
        card.add(figure);
        return card;
    }

    private Card about() {
        var card = new Card(new Stack(5));
        lines(card, Texts.CAUTIONS.text(), described.cautions());
        lines(card, Texts.SOURCES.text(), List.of(described.about().sources()));
        card.add(Words.quiet(
                Texts.COMPUTED_BY.text(described.id(), described.about().version(), described.plugin())));
        return card;
    }

    private static void lines(Card card, String heading, List<String> lines) {
        if (!lines.isEmpty()) {
            card.add(Look.heading(heading, 0.95));
            for (var line : lines) {
                card.add(Words.of(line));
            }
        }
    }
}
