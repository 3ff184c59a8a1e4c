package planewright.app.journal;

/** Something the journal keeps in a file of its own. */
public sealed interface Kept permits BuildRecord, EntryRecord {
    /** Its ULID; never changes. */
    String id();
}
