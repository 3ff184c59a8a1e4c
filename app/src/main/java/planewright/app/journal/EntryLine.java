package planewright.app.journal;

import java.time.LocalDateTime;

/**
 * What is always known of an entry, whether or not it was read: enough to put a log in order.
 *
 * @param id its id
 * @param at when it happened
 * @param stamp another number whenever its file is another; 0 for a file too young to tell
 */
public record EntryLine(String id, LocalDateTime at, long stamp) {
    /** The line of an entry that was read. */
    public static EntryLine of(EntryRecord entry, long stamp) {
        return new EntryLine(entry.id(), entry.at(), stamp);
    }
}
