package planewright.app.journal;

/** Something the journal keeps in a file of its own. */
public sealed interface Kept permits BuildRecord, EntryRecord, TemplateRecord, CalendarRecord, MaterialsRecord {
    /** Its ULID, or the fixed word of what a journal has one of; never changes. */
    String id();
}
