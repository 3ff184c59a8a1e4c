package planewright.app.index;

import java.util.List;
import java.util.Map;
import planewright.app.journal.EntryRecord;

/**
 * What a search found.
 *
 * @param total how many entries in all
 * @param hits the best of them, best first
 * @param forgiving whether nothing bore the words as written, and words nearly the same were taken
 * @param counts how many entries bear each value of a facet, most first; of a facet that the filter keeps to, as if it did
 *     not (save tags, of which an entry must bear all), so that the others of its values can be chosen instead
 */
public record Hits(int total, List<Hit> hits, boolean forgiving, Map<Facet, List<Count>> counts) {
    public Hits {
        hits = List.copyOf(hits);
        counts = Map.copyOf(counts);
    }

    /** The counts of a facet. */
    public List<Count> of(Facet facet) {
        return counts.getOrDefault(facet, List.of());
    }

    /** How many of the entries bear a value. */
    public record Count(String value, int entries) {}

    /**
     * An entry that was found.
     *
     * @param entry as it was when it was found
     * @param excerpts where the words stand in it; none where only a filter was asked for
     */
    public record Hit(EntryRecord entry, List<Excerpt> excerpts) {
        public Hit {
            excerpts = List.copyOf(excerpts);
        }

        /** The entry's id. */
        public String entryId() {
            return entry.id();
        }
    }

    /**
     * A piece of an entry in which words were found.
     *
     * @param where {@code title}, {@code text}, {@code measurement}, …
     * @param text the piece
     * @param marks where the words stand in it, from left to right
     */
    public record Excerpt(String where, String text, List<Range> marks) {
        public Excerpt {
            marks = List.copyOf(marks);
        }
    }

    /** Characters of a text, the last not included. */
    public record Range(int from, int to) {}
}
