package planewright.app.journal;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * Changes that are made, and undone, together.
 *
 * @param what the edit in a few words: {@code add entry}
 * @param changes at least one
 */
public record Edit(String what, List<Change> changes) {
    public Edit {
        changes = List.copyOf(changes);
        if (changes.isEmpty()) {
            throw new IllegalArgumentException("edit '" + what + "' changes nothing; accepted: 1 or more changes");
        }
    }

    /**
     * One record before and after; empty before it exists and after it is gone. An entry stays in the log it was written
     * into.
     *
     * @param before the record as it was
     * @param after the record as it shall be, with the same id
     */
    public record Change(Optional<Kept> before, Optional<Kept> after) {
        public Change {
            if (before.isEmpty() && after.isEmpty()) {
                throw new IllegalArgumentException("a change from nothing to nothing");
            }
            if (before.isPresent() && after.isPresent()) {
                requireSame("id", before.get().id(), after.get().id());
                requireSame("log", log(before.get()), log(after.get()));
            }
        }

        /** The record it is about, as it was last. */
        public Kept subject() {
            return after.or(() -> before).orElseThrow();
        }

        Change reversed() {
            return new Change(after, before);
        }

        private static String log(Kept record) {
            return record instanceof EntryRecord entry ? entry.build() : "";
        }

        private static void requireSame(String what, String before, String after) {
            if (!before.equals(after)) {
                throw new IllegalArgumentException("a change takes a record from " + what + " '" + before + "' to '"
                        + after + "'; accepted: the same " + what + "; remove the one and add the other");
            }
        }
    }

    /** Adds a record that the journal does not have yet. */
    public static Edit add(String what, Kept added) {
        return new Edit(what, List.of(new Change(Optional.empty(), Optional.of(added))));
    }

    /** Changes a record from what it was when it was read. */
    public static Edit change(String what, Kept before, Kept after) {
        return new Edit(what, List.of(new Change(Optional.of(before), Optional.of(after))));
    }

    /** Changes a record, or adds it where there was none. */
    public static Edit put(String what, Optional<? extends Kept> before, Kept after) {
        return new Edit(what, List.of(new Change(before.map(known -> known), Optional.of(after))));
    }

    /** Removes a record as it was when it was read. */
    public static Edit remove(String what, Kept removed) {
        return new Edit(what, List.of(new Change(Optional.of(removed), Optional.empty())));
    }

    /** The edit that takes this one back. */
    public Edit reversed() {
        var reversed = new ArrayList<>(changes.stream().map(Change::reversed).toList());
        Collections.reverse(reversed);
        return new Edit(what, reversed);
    }
}
