package planewright.app.ui.calc;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JTextField;
import planewright.api.calculator.InputProblem;
import planewright.app.calc.Field;
import planewright.app.calc.InputTexts;
import planewright.app.calc.Origin;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;
import planewright.shared.quantity.UnitChoice;

/** The component of one input. */
interface InputField {
    JComponent component();

    /** How wide it is to be at most, so that all of it is in sight; 0 where any width will do. */
    default int wanted() {
        return 0;
    }

    /** Whether something is begun in it that it has not told yet. */
    default boolean isBegun() {
        return false;
    }

    /** Shows what is wrong; nothing where the list is empty. */
    void mark(List<InputProblem> problems);

    /**
     * The field for an input.
     *
     * @param room the journal, whose templates and pictures are offered
     * @param units in which quantities are read, and numbers alone are taken
     * @param value what it holds at first; null for nothing
     * @param origins where values came from; a table takes away what is typed over
     * @param edited gets what is typed; a null node for nothing
     */
    static InputField of(
            Workroom room,
            UnitChoice units,
            Field field,
            JsonNode value,
            Map<String, Origin> origins,
            Consumer<JsonNode> edited) {
        return switch (field.kind()) {
            case ROWS -> new RowsField(field, units, value, origins, edited);
            case YES_NO -> yesNo(field, value, edited);
            case CHOICE -> choice(field, value, edited);
            case PLANFORM -> told(field, value, Texts.NO_PLANFORM);
            case CALENDAR -> told(field, value, Texts.NO_CALENDAR);
            case OUTLINE -> ShelvedField.outline(room, field, value, edited);
            case PICTURE -> ShelvedField.picture(room, field, value, edited);
            case TEXT -> field.choices().isEmpty() ? text(field, units, value, edited) : offered(field, value, edited);
            default -> text(field, units, value, edited);
        };
    }

    /** What the journal has, in words; to be changed where it stands. */
    private static InputField told(Field field, JsonNode value, Texts none) {
        return plain(Look.quiet(value == null ? none.text() : InputTexts.text(field, value)), field);
    }

    /** What was given is computed with as it was given, in whatever unit it is read, until another text stands there. */
    private static InputField text(Field field, UnitChoice units, JsonNode value, Consumer<JsonNode> edited) {
        var given = InputTexts.shown(field, value, units);
        var box = new JTextField(given);
        box.putClientProperty(
                "JTextField.placeholderText",
                field.initial().isEmpty()
                        ? (field.optional() ? Texts.MAY_BE_EMPTY.text() : "")
                        : InputTexts.initial(field, units));
        Buttons.onEdit(
                box,
                () -> edited.accept(
                        value != null && box.getText().equals(given)
                                ? value
                                : InputTexts.node(field, box.getText(), units)));
        return plain(box, field, units);
    }

    private static InputField yesNo(Field field, JsonNode value, Consumer<JsonNode> edited) {
        var box = new JCheckBox();
        box.setSelected(value == null ? field.initial().equals("yes") : value.asBoolean());
        box.addActionListener(event -> edited.accept(BooleanNode.valueOf(box.isSelected())));
        return plain(box, field);
    }

    private static InputField choice(Field field, JsonNode value, Consumer<JsonNode> edited) {
        var box = new JComboBox<String>();
        if (field.optional()) {
            box.addItem("");
        }
        field.choices().forEach(box::addItem);
        box.setSelectedItem(value == null ? field.initial() : value.asText());
        box.setRenderer(Words.choice(word -> field.told((String) word)));
        box.addActionListener(event -> edited.accept(InputTexts.node((String) box.getSelectedItem())));
        return plain(box, field);
    }

    /** A text with words to pick from; others may be typed. */
    private static InputField offered(Field field, JsonNode value, Consumer<JsonNode> edited) {
        var box = new JComboBox<String>();
        box.addItem("");
        field.offered().forEach(box::addItem);
        box.setEditable(true);
        box.setSelectedItem(value == null ? field.initial() : value.asText());
        box.setPrototypeDisplayValue("");
        var typed = (JTextField) box.getEditor().getEditorComponent();
        typed.getAccessibleContext().setAccessibleName(field.label());
        Buttons.onEdit(typed, () -> edited.accept(InputTexts.node(typed.getText())));
        return plain(box, field);
    }

    private static InputField plain(JComponent component, Field field) {
        return plain(component, field, UnitChoice.NONE);
    }

    private static InputField plain(JComponent component, Field field, UnitChoice units) {
        component.setName("input-" + field.name());
        var help = (field.help().isEmpty() ? field.label() : field.help())
                + (field.initial().isEmpty() ? "" : " " + Texts.IF_EMPTY.text(InputTexts.initial(field, units)));
        component.setToolTipText(help);
        return new InputField() {
            @Override
            public JComponent component() {
                return component;
            }

            @Override
            public void mark(List<InputProblem> problems) {
                Words.mark(component, Problems.text(problems));
                if (problems.isEmpty()) {
                    component.setToolTipText(help);
                }
            }
        };
    }
}
