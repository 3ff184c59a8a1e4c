package planewright.app.ui.build;

import java.util.List;
import java.util.function.Consumer;
import javax.swing.JComboBox;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import planewright.api.journal.Life;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.Card;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.Saves;
import planewright.app.ui.common.Terms;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;

/** What a build is, to be written; Enter saves. */
final class HeaderForm extends Card {
    private static final long serialVersionUID = 1L;
    private static final int SHORT = 12;

    private final transient Workroom room;
    private final transient Consumer<HeaderForm> close;
    private transient BuildRecord begun;
    private final JTextField name;
    private final JComboBox<Life> life = new JComboBox<>(Life.values());
    private final JTextField layout;
    private final JTextField datum;
    private final JTextArea problem = Words.problem();
    private final transient Saves<List<Object>> saves;

    /**
     * @param close runs when the form has done its work
     */
    HeaderForm(Workroom room, BuildRecord begun, Consumer<HeaderForm> close) {
        super(new MigLayout("insets 0, gap 6, fillx, wrap 4", "[][grow,fill,sg field]14[][grow,fill,sg field]"));
        this.room = room;
        this.begun = begun;
        this.close = close;
        name = new JTextField(begun.name(), SHORT);
        layout = new JTextField(Terms.of(begun.layout()), SHORT);
        datum = new JTextField(begun.datum(), SHORT);
        life.setRenderer(Words.choice(each -> Terms.of(((Life) each).word())));
        life.setSelectedItem(begun.life());
        saves = new Saves<>(room, problem, this::typed, this::save);
        layOut();
        Look.kept(this);
    }

    /** Whether anything differs from what it began with. */
    boolean isChanged() {
        return !name.getText().equals(begun.name()) || !written().equals(begun);
    }

    /** The name of the build as it stands in the journal. */
    String heading() {
        return begun.name();
    }

    void focus() {
        name.requestFocusInWindow();
        name.selectAll();
    }

    private void layOut() {
        setMarked(true);
        Words.labelled(this, Texts.NAME.text(), name, "build-name");
        Words.labelled(this, Texts.LIFE.text(), life, "build-life");
        Words.labelled(this, Texts.LAYOUT.text(), layout, "build-layout");
        Words.labelled(this, Texts.DATUM.text(), datum, "build-datum");
        add(problem, "span 4, growx, wmin 0, hidemode 3");
        add(Buttons.save("save-build", this, saves::ask), "span 4, split 2");
        add(Buttons.of("discard-build", Texts.DISCARD.text(), this::discard));
        for (var field : List.of(name, layout, datum)) {
            field.addActionListener(event -> saves.ask());
        }
    }

    private void discard() {
        saves.drop();
        close.accept(this);
    }

    private List<Object> typed() {
        return List.of(name.getText(), life.getSelectedItem(), layout.getText(), datum.getText());
    }

    private BuildRecord written() {
        return begun.withName(name.getText().isBlank() ? begun.name() : name.getText())
                .withLife((Life) life.getSelectedItem())
                .withLayout(layoutAsKept())
                .withDatum(datum.getText().strip());
    }

    /** A layout that nobody changed keeps the word that the journal has for it. */
    private String layoutAsKept() {
        var typed = layout.getText().strip();
        return typed.equals(Terms.of(begun.layout())) ? begun.layout() : typed;
    }

    private void save() {
        if (name.getText().isBlank() || isTaken()) {
            refuse(
                    name.getText().isBlank()
                            ? Texts.NAME_NEEDED.text()
                            : Texts.NAME_TAKEN.text(name.getText().strip()));
            return;
        }
        var after = written();
        if (after.equals(begun)) {
            close.accept(this);
        } else {
            saves.edit(
                    Edit.change(Texts.BUILD_EDIT.text(after.name()), begun, after),
                    sent -> begun = after,
                    () -> close.accept(this));
        }
    }

    private void refuse(String words) {
        Words.show(problem, words);
        name.requestFocusInWindow();
    }

    private boolean isTaken() {
        var wanted = name.getText().strip();
        return room.journal().builds().stream()
                .anyMatch(each -> !each.id().equals(begun.id()) && each.name().equalsIgnoreCase(wanted));
    }
}
