package planewright.app.store;

import java.time.LocalDateTime;
import planewright.app.journal.EntryDraft;
import planewright.app.journal.EntryRecord;

/**
 * A half-written entry, as it was kept while somebody wrote it.
 *
 * @param kept when, by the builder's clock
 * @param begun the entry that the writing began with
 * @param saved whether that entry stood in the log when the writing began
 * @param written what is written so far
 */
public record KeptDraft(LocalDateTime kept, EntryRecord begun, boolean saved, EntryDraft written) {}
