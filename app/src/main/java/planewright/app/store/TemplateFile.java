package planewright.app.store;

import com.fasterxml.jackson.databind.node.ObjectNode;
import javax.measure.quantity.Time;
import planewright.api.journal.Template;
import planewright.app.journal.BuildDayRecord;
import planewright.app.journal.Lineage;
import planewright.app.journal.StepRecord;
import planewright.app.journal.TemplateContent;
import planewright.app.journal.TemplateRecord;

/** A template as a file says it. */
final class TemplateFile {
    private TemplateFile() {}

    static TemplateRecord read(Fields fields) throws Unreadable {
        return new TemplateRecord(
                fields.text("id"),
                fields.text("name"),
                fields.date("made"),
                fields.texts("notes"),
                fields.texts("tags"),
                new Lineage(
                        fields.nested("cameFrom", TemplateFile::buildDay),
                        fields.optionalText("derivedFrom"),
                        fields.rows("wentTo", TemplateFile::buildDay),
                        fields.rows("flewOn", TemplateFile::buildDay)),
                content(fields));
    }

    static ObjectNode write(TemplateRecord template) {
        var writing = new Writing()
                .text("id", template.id())
                .text("kind", template.kind().word())
                .text("name", template.name())
                .text("made", template.made().toString())
                .texts("notes", template.notes())
                .texts("tags", template.tags());
        template.cameFrom().ifPresent(build -> writing.nested("cameFrom", buildDay(build)));
        template.derivedFrom().ifPresent(id -> writing.text("derivedFrom", id));
        writing.rows("wentTo", template.wentTo(), TemplateFile::buildDay)
                .rows("flewOn", template.flewOn(), TemplateFile::buildDay);
        template.outline().ifPresent(hash -> writing.nested("outline", new Writing().text("hash", hash)));
        return writing.rows("steps", template.steps(), TemplateFile::step)
                .rows("values", template.values(), EntryFile::setUp)
                .done();
    }

    private static TemplateContent content(Fields fields) throws Unreadable {
        return switch (fields.word("kind", Template.Kind.values(), Template.Kind::word)) {
            case OUTLINE -> new TemplateContent.Outline(fields.required("outline", outline -> outline.text("hash")));
            case PROCEDURE -> new TemplateContent.Procedure(fields.rows("steps", TemplateFile::step));
            case SET_UP -> new TemplateContent.SetUp(fields.rows("values", EntryFile::setUp));
        };
    }

    static BuildDayRecord buildDay(Fields row) throws Unreadable {
        return new BuildDayRecord(row.text("build"), row.text("name"), row.date("date"));
    }

    static Writing buildDay(BuildDayRecord build) {
        return new Writing()
                .text("build", build.build())
                .text("name", build.name())
                .text("date", build.date().toString());
    }

    private static StepRecord step(Fields row) throws Unreadable {
        return new StepRecord(
                row.text("id"),
                row.text("text"),
                row.measured("handsOn", Time.class),
                row.measured("waiting", Time.class),
                row.texts("materials"),
                row.texts("cautions"));
    }

    private static Writing step(StepRecord step) {
        return new Writing()
                .text("id", step.id())
                .text("text", step.text())
                .measured("handsOn", step.handsOn())
                .measured("waiting", step.waiting())
                .texts("materials", step.materials())
                .texts("cautions", step.cautions());
    }
}
