package planewright.app.index;

import java.util.List;

/**
 * What a search found.
 *
 * @param total how many entries in all
 * @param hits the best of them, best first
 * @param forgiving whether nothing bore the words as written, and words nearly the same were taken
 */
public record Hits(int total, List<Hit> hits, boolean forgiving) {
    public Hits {
        hits = List.copyOf(hits);
    }

    /**
     * An entry that was found.
     *
     * @param entryId its id
     * @param buildId the build in whose log it stands
     * @param excerpts where the words stand in it, at least one
     */
    public record Hit(String entryId, String buildId, List<Excerpt> excerpts) {
        public Hit {
            excerpts = List.copyOf(excerpts);
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
