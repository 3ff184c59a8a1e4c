package planewright.app.index;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.JointRecord;

/**
 * What a search found.
 *
 * @param tally how many there are
 * @param hits the best of them, best first
 * @param forgiving whether nothing bore the words as written, and words nearly the same were taken
 */
public record Hits(Tally tally, List<Hit> hits, boolean forgiving) {
    public Hits {
        hits = List.copyOf(hits);
    }

    /** How many entries were found in all; where they were not counted to the end, how many there are at least. */
    public int total() {
        return tally.total();
    }

    /** The counts of a facet. */
    public List<Count> of(Facet facet) {
        return tally.counts().getOrDefault(facet, List.of());
    }

    /**
     * How many entries were found.
     *
     * @param total in all
     * @param exact whether all were counted; where not, there are at least as many
     * @param counts empty where facets were not counted; else how many entries bear each value of a facet, most first; of a facet that the filter keeps to, as if it
     *     did not (save tags, of which an entry must bear all), so that the others of its values can be chosen instead
     */
    public record Tally(int total, boolean exact, Map<Facet, List<Count>> counts) {
        public Tally {
            counts = Map.copyOf(counts);
        }
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

        /** The joint that an excerpt tells of. */
        public Optional<JointRecord> joint(Excerpt excerpt) {
            return entry.joints().stream()
                    .filter(joint -> excerpt.where().equals(Pieces.JOINT)
                            && excerpt.text().equals(Pieces.text(joint)))
                    .findFirst();
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
