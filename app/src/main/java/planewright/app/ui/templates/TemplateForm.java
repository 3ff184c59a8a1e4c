package planewright.app.ui.templates;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryDraft;
import planewright.app.journal.StepRecord;
import planewright.app.journal.TemplateContent;
import planewright.app.journal.TemplateDraft;
import planewright.app.journal.TemplateRecord;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.FootedCard;
import planewright.app.ui.common.RowFields;
import planewright.app.ui.common.Saves;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;

/** A template that is written, with its steps or its values in rows. */
final class TemplateForm extends FootedCard {
    private static final long serialVersionUID = 1L;
    private static final int SHORT = 20;

    private final transient Workroom room;
    private final transient Runnable close;
    private transient Optional<TemplateRecord> before;
    private transient TemplateRecord stays;
    private final JTextField name;
    private final JTextField tags;
    private final JTextArea notes;
    private final JTextArea problem = Words.problem();
    private final transient Function<TemplateForm, TemplateDraft.Content> reading;
    private final transient Saves<TemplateDraft> saves;
    private RowFields rows;

    /**
     * @param before the template as it stands in the journal; empty for a new one
     * @param stays id, day and lineage
     * @param close runs when the form has done its work
     */
    TemplateForm(
            Workroom room, Optional<TemplateRecord> before, TemplateRecord stays, TemplateDraft draft, Runnable close) {
        super(6);
        this.room = room;
        this.before = before;
        this.stays = stays;
        this.close = close;
        name = new JTextField(draft.name(), SHORT);
        tags = new JTextField(draft.tags(), SHORT);
        notes = Words.field(draft.notes(), 2, SHORT);
        saves = new Saves<>(room, problem, this::draft, this::save);
        setMarked(true);
        setName("template-form");
        body().add(head());
        reading = rowsOf(draft.content());
        foot().add(problem);
        var done = new JPanel(new MigLayout("insets 0"));
        done.setOpaque(false);
        done.add(Buttons.save("save-template", this, saves::ask));
        done.add(Buttons.of("discard-template", Texts.DISCARD.text(), this::discard));
        foot().add(done);
    }

    void focus() {
        name.requestFocusInWindow();
        name.selectAll();
    }

    private JPanel head() {
        var head =
                new JPanel(new MigLayout("insets 0, gap 6, fillx, wrap 4", "[][grow,fill,sg f]14[][grow,fill,sg f]"));
        head.setOpaque(false);
        Words.labelled(head, Texts.NAME.text(), name, "template-name");
        Words.labelled(head, Texts.TAGS.text(), tags, "template-tags");
        notes.setBorder(
                BorderFactory.createCompoundBorder(new JTextField().getBorder(), BorderFactory.createEmptyBorder()));
        Words.labelled(head, Texts.NOTES.text(), notes, "template-notes");
        return head;
    }

    private Function<TemplateForm, TemplateDraft.Content> rowsOf(TemplateDraft.Content content) {
        if (content instanceof TemplateDraft.Stepwise stepwise) {
            rows = new RowFields(
                    TemplateDraft.STEPS,
                    Texts.STEPS.text(),
                    List.of(
                            new RowFields.Column("text", Texts.STEP_TEXT.text(), true),
                            new RowFields.Column("handsOn", Texts.TASK_HANDS_ON.text()),
                            new RowFields.Column("waiting", Texts.STEP_WAITING.text()),
                            new RowFields.Column("materials", Texts.STEP_MATERIALS.text()),
                            new RowFields.Column("cautions", Texts.STEP_CAUTIONS.text())),
                    () -> {});
            stepwise.steps()
                    .forEach(each -> rows.add(
                            each.id(),
                            List.of(each.text(), each.handsOn(), each.waiting(), each.materials(), each.cautions())));
            offerRows();
            return TemplateForm::steps;
        }
        if (content instanceof TemplateDraft.Valued valued) {
            rows = new RowFields(
                    TemplateDraft.VALUES,
                    Texts.SET_UP.text(),
                    List.of(
                            new RowFields.Column("name", Texts.NAME.text()),
                            new RowFields.Column("quantity", Texts.QUANTITY.text())),
                    () -> {});
            valued.values().forEach(each -> rows.add("", List.of(each.name(), each.quantity())));
            offerRows();
            return TemplateForm::values;
        }
        return form -> content;
    }

    private void offerRows() {
        rows.offer();
        body().add(rows);
    }

    private TemplateDraft.Content steps() {
        return new TemplateDraft.Stepwise(rows.rows().stream()
                .map(row -> new TemplateDraft.Doing(
                        row.id(), row.text(0), row.text(1), row.text(2), row.text(3), row.text(4)))
                .toList());
    }

    private TemplateDraft.Content values() {
        return new TemplateDraft.Valued(rows.rows().stream()
                .map(row -> new EntryDraft.Setting(row.text(0), row.text(1)))
                .toList());
    }

    private TemplateDraft draft() {
        return new TemplateDraft(name.getText(), notes.getText(), tags.getText(), reading.apply(this));
    }

    private void discard() {
        saves.drop();
        close.run();
    }

    private void save() {
        var checked = draft().check(stays, room.journal().templates());
        var problems = checked.problems();
        Words.mark(name, problems.getOrDefault(TemplateDraft.NAME, ""));
        if (rows != null) {
            rows.mark(problems);
        }
        Words.show(problem, String.join("\n", problems.values()));
        checked.template().ifPresent(this::save);
    }

    private void save(TemplateRecord after) {
        if (before.filter(after::equals).isPresent()) {
            close.run();
        } else {
            if (after.content() instanceof TemplateContent.Procedure procedure) {
                rows.stand(procedure.steps(), StepRecord::id);
            }
            saves.edit(Edit.put(Texts.TEMPLATE_EDIT.text(after.name()), before, after), sent -> goOn(after), close);
        }
    }

    private void goOn(TemplateRecord after) {
        before = Optional.of(after);
        stays = after;
    }
}
