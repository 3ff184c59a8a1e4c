package planewright.app.journal;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import planewright.api.journal.Template;

/** A template as the journal holds it. */
public record TemplateRecord(
        String id,
        String name,
        LocalDate made,
        List<String> notes,
        List<String> tags,
        Lineage lineage,
        TemplateContent content)
        implements Template, Kept {
    public TemplateRecord {
        name = Checks.notBlank("name of a template", name);
        notes = List.copyOf(notes);
        tags = Checks.tags(tags);
    }

    /** A template without notes and lineage. */
    public static TemplateRecord of(String name, LocalDate made, TemplateContent content) {
        return new TemplateRecord(Ids.next(), name, made, List.of(), List.of(), Lineage.NONE, content);
    }

    public TemplateRecord withName(String changed) {
        return new TemplateRecord(id, changed, made, notes, tags, lineage, content);
    }

    public TemplateRecord withNotes(List<String> changed) {
        return new TemplateRecord(id, name, made, changed, tags, lineage, content);
    }

    public TemplateRecord withTags(List<String> changed) {
        return new TemplateRecord(id, name, made, notes, changed, lineage, content);
    }

    public TemplateRecord withLineage(Lineage changed) {
        return new TemplateRecord(id, name, made, notes, tags, changed, content);
    }

    public TemplateRecord withContent(TemplateContent changed) {
        return new TemplateRecord(id, name, made, notes, tags, lineage, changed);
    }

    @Override
    public Kind kind() {
        return content.kind();
    }

    @Override
    public Optional<BuildDayRecord> cameFrom() {
        return lineage.cameFrom();
    }

    @Override
    public Optional<String> derivedFrom() {
        return lineage.derivedFrom();
    }

    @Override
    public List<BuildDayRecord> wentTo() {
        return lineage.wentTo();
    }

    @Override
    public List<BuildDayRecord> flewOn() {
        return lineage.flewOn();
    }

    @Override
    public Optional<String> outline() {
        return content instanceof TemplateContent.Outline outline ? Optional.of(outline.hash()) : Optional.empty();
    }

    @Override
    public List<StepRecord> steps() {
        return content instanceof TemplateContent.Procedure procedure ? procedure.steps() : List.of();
    }

    @Override
    public List<SetUpRecord> values() {
        return content instanceof TemplateContent.SetUp setUp ? setUp.values() : List.of();
    }
}
