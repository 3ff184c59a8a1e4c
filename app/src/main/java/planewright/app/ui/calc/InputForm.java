package planewright.app.ui.calc;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import planewright.api.calculator.InputProblem;
import planewright.app.calc.Described;
import planewright.app.calc.Field;
import planewright.app.calc.Filled;
import planewright.app.calc.InputTexts;
import planewright.app.calc.Kind;
import planewright.app.calc.Origin;
import planewright.app.ui.common.Card;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.Stack;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;

/** The form of a calculator's inputs, made from its description; each tells where its value came from. */
final class InputForm extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Workroom room;
    private final transient ObjectNode inputs;
    private final transient Map<String, Origin> origins;
    private final transient Map<String, InputField> fields = new LinkedHashMap<>();
    private final transient Runnable edited;
    private boolean untouched = true;

    InputForm(Workroom room, Described described, Filled filled, Runnable edited) {
        super(new Stack(10));
        this.room = room;
        this.inputs = filled.inputs().deepCopy();
        this.origins = new LinkedHashMap<>(filled.origins());
        this.edited = edited;
        setOpaque(false);
        setName("inputs");
        InputTexts.byHeading(described.inputs()).forEach(this::group);
    }

    /** What is given, as typed. */
    ObjectNode inputs() {
        return inputs.deepCopy();
    }

    /** Where what is still as the journal had it came from. */
    Map<String, Origin> origins() {
        return Map.copyOf(origins);
    }

    boolean isUntouched() {
        return untouched;
    }

    /** Marks inputs that cannot be computed with, and all others as right. */
    void mark(List<InputProblem> problems) {
        fields.forEach((name, field) -> field.mark(problems.stream()
                .filter(problem -> problem.input().equals(name)
                        || problem.input().startsWith(name + "[")
                        || problem.input().startsWith(name + "."))
                .toList()));
    }

    private void group(String heading, List<Field> members) {
        var card =
                new Card(new MigLayout("insets 0, gap 8 6, fillx, wrap 2", "[:pref:60%,shrinkprio 50][60:,grow,fill]"));
        if (!heading.isEmpty()) {
            card.add(Look.heading(heading, 1), "span 2");
        }
        members.forEach(field -> row(card, field));
        add(card);
    }

    private void row(JPanel card, Field field) {
        var origin = new JLabel();
        var input = InputField.of(room, field, inputs.get(field.name()), origins, node -> {
            untouched = false;
            if (node.isNull()) {
                inputs.remove(field.name());
            } else {
                inputs.set(field.name(), node);
            }
            if (field.kind() != Kind.ROWS) {
                origins.remove(field.name());
                tell(origin, field);
            }
            edited.run();
        });
        fields.put(field.name(), input);
        input.component().getAccessibleContext().setAccessibleName(field.label());
        if (!field.help().isEmpty()) {
            input.component().getAccessibleContext().setAccessibleDescription(field.help());
        }
        if (field.kind() == Kind.ROWS) {
            card.add(Look.heading(field.label(), 0.95), "span 2");
            help(card, field);
            card.add(input.component(), "span 2, growx, wmin 0");
            return;
        }
        var label = new JLabel(field.label());
        label.setToolTipText(field.help().isEmpty() ? field.label() : field.label() + ": " + field.help());
        label.setLabelFor(input.component());
        card.add(label, "wmin 0");
        card.add(input.component(), "wmin 60");
        Look.sized(origin, 0.85, java.awt.Font.PLAIN).setName("origin-" + field.name());
        card.add(origin, "skip 1, hidemode 3, wmin 0");
        tell(origin, field);
    }

    private static void help(JPanel card, Field field) {
        if (!field.help().isEmpty()) {
            card.add(Words.quiet(field.help()), "span 2, growx, wmin 0");
        }
    }

    private void tell(JLabel place, Field field) {
        var said = Optional.ofNullable(origins.get(field.name()))
                .map(Origin::said)
                .or(() -> field.from().isPresent() && inputs.has(field.name())
                        ? Optional.of(Texts.TYPED_HERE.text())
                        : Optional.empty());
        place.setText(said.orElse(""));
        place.setForeground(Look.colour("quiet"));
        place.setVisible(said.isPresent());
    }
}
