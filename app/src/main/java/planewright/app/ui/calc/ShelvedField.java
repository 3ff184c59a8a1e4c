package planewright.app.ui.calc;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import planewright.api.calculator.InputProblem;
import planewright.app.calc.Field;
import planewright.app.calc.InputTexts;
import planewright.app.calc.OutlineJson;
import planewright.app.calc.Shelved;
import planewright.app.journal.BuildRecord;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.Files;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;

/** Things of the journal to choose from: outline templates, pictures. */
final class ShelvedField implements InputField {
    private final Field field;
    private final JComboBox<Choice> choices = new JComboBox<>();
    private final JPanel panel = new JPanel(new MigLayout("insets 0, gap 4, fillx", "[grow,fill][]"));
    private final Consumer<JsonNode> edited;
    private boolean filling = true;

    private ShelvedField(Field field, JsonNode value, List<Choice> offered, Consumer<JsonNode> edited) {
        this.field = field;
        this.edited = edited;
        panel.setOpaque(false);
        panel.setName("input-" + field.name());
        choices.setName("choice-" + field.name());
        choices.getAccessibleContext().setAccessibleName(field.label());
        choices.setToolTipText(help());
        var nothing = new Choice("", InputTexts.node(""));
        choices.setPrototypeDisplayValue(nothing);
        choices.addItem(nothing);
        offered.forEach(choices::addItem);
        if (value != null) {
            select(new Choice(InputTexts.text(field, value), value));
        }
        choices.addActionListener(event -> {
            if (!filling) {
                edited.accept(((Choice) choices.getSelectedItem()).node());
            }
        });
        panel.add(choices, "wmin 60");
        filling = false;
    }

    /** An outline template, or an SVG file. */
    static InputField outline(Workroom room, Field field, JsonNode value, Consumer<JsonNode> edited) {
        var made = new ShelvedField(
                field,
                value,
                Shelved.outlines(room.journal()).stream()
                        .map(name -> new Choice(name, InputTexts.node(name)))
                        .toList(),
                edited);
        made.panel.add(
                Buttons.plain("file-" + field.name(), Texts.CHOOSE_SVG.text(), () -> made.chooseFile(room)),
                "wmin pref");
        return made;
    }

    /** A picture of the build's log. */
    static InputField picture(Workroom room, Field field, JsonNode value, Consumer<JsonNode> edited) {
        var offered = room.build().map(BuildRecord::id).stream()
                .flatMap(build -> Shelved.pictures(room.journal(), build).stream())
                .map(Shelved::json)
                .map(node -> new Choice(InputTexts.text(field, node), node))
                .toList();
        return new ShelvedField(field, value, offered, edited);
    }

    @Override
    public JPanel component() {
        return panel;
    }

    @Override
    public void mark(List<InputProblem> problems) {
        mark(Problems.text(problems));
    }

    private void mark(String problem) {
        Words.mark(choices, problem);
        if (problem.isEmpty()) {
            choices.setToolTipText(help());
        }
    }

    private void chooseFile(Workroom room) {
        Files.chooseFile(panel, "svg")
                .ifPresent(file -> room.background()
                        .run(
                                () -> OutlineJson.ofFile(file),
                                outline -> take(new Choice(file.getFileName().toString(), outline)),
                                refused -> mark(refused.getLocalizedMessage())));
    }

    private void take(Choice chosen) {
        filling = true;
        select(chosen);
        filling = false;
        edited.accept(chosen.node());
    }

    private void select(Choice choice) {
        choices.removeItem(choice);
        choices.insertItemAt(choice, 1);
        choices.setSelectedIndex(1);
    }

    private String help() {
        return field.help().isEmpty() ? field.label() : field.help();
    }

    /** One of the things, by its name and as JSON. */
    private record Choice(String name, JsonNode node) {
        @Override
        public String toString() {
            return name;
        }
    }
}
