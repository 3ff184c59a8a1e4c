package planewright.app.index;

import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import org.apache.lucene.index.IndexReader;
import org.apache.lucene.index.IndexWriter;
import planewright.app.journal.OpenJournal;

/**
 * Which entries an index covers, and in which state of theirs, in two numbers: where they are those of the journal, nothing has to be
 * looked up entry by entry.
 *
 * @param entries how many
 * @param mixed the sum of a number for each entry, made of its id and its stamp
 */
record Coverage(long entries, long mixed) {
    private static final String NOTE = "coverage";

    private static final Coverage NONE = new Coverage(0, 0);

    /** What an index covers. */
    static Coverage of(IndexReader index) throws IOException {
        var sum = new Coverage[] {NONE};
        Documents.stamps(index, (id, stamp) -> sum[0] = sum[0].and(id, stamp));
        return sum[0];
    }

    /** What an index of the journal has to cover; empty where the state of an entry's file is not known. */
    static Optional<Coverage> wanted(OpenJournal journal) {
        var sum = NONE;
        for (var build : journal.builds()) {
            long words = Documents.wordsOf(build).hashCode();
            for (var line : journal.lines(build.id())) {
                if (line.stamp() == 0) {
                    return Optional.empty();
                }
                sum = sum.and(line.id(), Documents.stamp(line.stamp(), words));
            }
        }
        return Optional.of(sum);
    }

    /** What was noted at the index's last commit. */
    static Optional<Coverage> noted(IndexWriter writer) {
        for (var note : writer.getLiveCommitData()) {
            if (note.getKey().equals(NOTE)) {
                var numbers = note.getValue().split(" ");
                return Optional.of(new Coverage(Long.parseLong(numbers[0]), Long.parseLong(numbers[1])));
            }
        }
        return Optional.empty();
    }

    /** Notes it for the next commit. */
    void note(IndexWriter writer) {
        writer.setLiveCommitData(Map.of(NOTE, entries + " " + mixed).entrySet());
    }

    private Coverage and(String id, long stamp) {
        return new Coverage(entries + 1, mixed + mixed(id.hashCode() * 31L + stamp));
    }

    /** Spreads a number over all bits: the finalizer of SplitMix64 (Steele, Lea and Flood, OOPSLA 2014). */
    private static long mixed(long number) {
        long spread = (number ^ number >>> 30) * 0xbf58476d1ce4e5b9L;
        spread = (spread ^ spread >>> 27) * 0x94d049bb133111ebL;
        return spread ^ spread >>> 31;
    }
}
