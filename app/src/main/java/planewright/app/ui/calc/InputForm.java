package planewright.app.ui.calc;

import com.fasterxml.jackson.databind.node.ObjectNode;
import com.formdev.flatlaf.util.UIScale;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import planewright.api.calculator.InputProblem;
import planewright.api.quantity.Units;
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
import planewright.shared.quantity.UnitChoice;

/** The form of a calculator's inputs, made from its description; each tells where its value came from. */
final class InputForm extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final String BESIDE = "[pref!][60:,grow,fill]";
    private static final String ABOVE = "[60:,grow,fill]";
    /** A quantity with its ± takes this much of a field. */
    private static final int LEAST_FIELD = 150;
    /** Edges of the table, its card and the form, and the bar to scroll it. */
    private static final int AROUND_A_TABLE = 66;

    private final transient Workroom room;
    private final transient ObjectNode inputs;
    private final transient Map<String, Origin> origins;
    private final transient Map<String, InputField> fields = new LinkedHashMap<>();
    private final transient Runnable edited;
    private final transient UnitChoice units;
    private boolean untouched = true;

    InputForm(Workroom room, Described described, Filled filled, Runnable edited) {
        super(new Stack(10));
        this.room = room;
        this.inputs = filled.inputs().deepCopy();
        this.origins = new LinkedHashMap<>(filled.origins());
        this.edited = edited;
        this.units = room.units().asNow();
        setOpaque(false);
        setName("inputs");
        InputTexts.byHeading(described.inputs()).forEach(this::group);
    }

    /** How wide it is to be, so that its widest table is in sight as a whole, px. */
    int wanted() {
        return fields.values().stream().mapToInt(InputField::wanted).max().orElse(0) + UIScale.scale(AROUND_A_TABLE);
    }

    /** What is given, as typed. */
    ObjectNode inputs() {
        return inputs.deepCopy();
    }

    /** Where what is still as the journal had it came from. */
    Map<String, Origin> origins() {
        return Map.copyOf(origins);
    }

    /** In which its quantities are read, and numbers alone are taken. */
    UnitChoice units() {
        return units;
    }

    /** One that has what this has, in the units that are preferred now. */
    InputForm again(Described described) {
        var made = new InputForm(room, described, new Filled(inputs(), origins()), edited);
        made.untouched = untouched;
        return made;
    }

    /** Whether nobody has typed or begun anything. */
    boolean isUntouched() {
        return untouched && fields.values().stream().noneMatch(InputField::isBegun);
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
        var layout = new MigLayout("insets 0, gap 8 6, fillx, wrap 2", BESIDE);
        var card = new Card(layout);
        card.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                lay(card, layout);
            }
        });
        if (!heading.isEmpty()) {
            card.add(Look.heading(heading, 1), "spanx");
        }
        members.forEach(field -> row(card, field));
        add(card);
    }

    /** Words stand above their fields where they would be cut beside them. */
    private static void lay(JPanel card, MigLayout layout) {
        int widest = Arrays.stream(card.getComponents())
                .filter(each -> each instanceof JLabel label && label.getLabelFor() != null)
                .mapToInt(each -> each.getPreferredSize().width)
                .max()
                .orElse(0);
        var inside = card.getInsets();
        int room = card.getWidth() - inside.left - inside.right - widest;
        var wanted = room < UIScale.scale(LEAST_FIELD) ? ABOVE : BESIDE;
        if (!wanted.equals(layout.getColumnConstraints())) {
            layout.setLayoutConstraints("insets 0, gap 8 6, fillx, hidemode 3, wrap " + (wanted.equals(ABOVE) ? 1 : 2));
            layout.setColumnConstraints(wanted);
            for (var each : card.getComponents()) {
                if (layout.getComponentConstraints(each) instanceof String told) {
                    layout.setComponentConstraints(
                            each,
                            wanted.equals(ABOVE) ? told.replace("skip 1", "skip 0") : told.replace("skip 0", "skip 1"));
                }
            }
            card.revalidate();
        }
    }

    private void row(JPanel card, Field field) {
        var origin = new JLabel();
        var input = InputField.of(room, units, field, inputs.get(field.name()), origins, node -> {
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
            card.add(Look.heading(field.label(), 0.95), "spanx");
            help(card, field);
            card.add(input.component(), "spanx, growx, wmin 0");
            return;
        }
        var unit = field.unit().map(units::shown).map(Units::symbolOf).orElse("");
        var label = new JLabel(unit.isEmpty() ? field.label() : field.label() + " (" + unit + ")");
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
            card.add(Words.quiet(field.help()), "spanx, growx, wmin 0");
        }
    }

    private void tell(JLabel place, Field field) {
        var said = Optional.ofNullable(origins.get(field.name()))
                .map(Origin::said)
                .or(() -> field.from().isPresent() && inputs.has(field.name())
                        ? Optional.of(Texts.TYPED_HERE.text())
                        : Optional.empty());
        place.setText(said.orElse(""));
        place.setToolTipText(said.orElse(null));
        place.setForeground(Look.colour("quiet"));
        place.setVisible(said.isPresent());
    }
}
