package planewright.app.ui.bench;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import planewright.app.calc.Joints;
import planewright.app.journal.EntryLine;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.OpenJournal;

/**
 * Finds what is on the bench over all builds. Only entries of the last six weeks are read, so that twenty years of logs need not be: a
 * joint that was written earlier is not shown (common practice, no source: adhesives and fillers of the trade are through in days). What was
 * read stays known until its file is another.
 */
final class BenchJoints {
    private static final int WEEKS = 6;

    private final OpenJournal journal;
    private Map<String, Known> known = Map.of();

    private record Known(long stamp, EntryRecord entry) {}

    BenchJoints(OpenJournal journal) {
        this.journal = journal;
    }

    /** Joints that are on the bench, what may be touched soonest first; reads files, so not on the event thread. */
    synchronized List<BenchJoint> at(LocalDateTime now) {
        var since = now.minusWeeks(WEEKS);
        var found = new ArrayList<BenchJoint>();
        var read = new HashMap<String, Known>();
        for (var build : journal.builds()) {
            var lines = journal.lines(build.id()).stream()
                    .filter(line -> line.at().isAfter(since))
                    .toList();
            var entries = entries(build.id(), lines, read);
            for (var dated : Joints.of(entries).newestFirst()) {
                found.add(new BenchJoint(build, dated.entry().id(), dated.what()));
            }
        }
        known = read;
        found.removeIf(joint -> joint.state(now) == BenchJoint.State.PAST);
        found.sort(Comparator.comparing(joint -> joint.next(now)));
        return List.copyOf(found);
    }

    /** In order of time; what is known already is not read again. */
    private List<EntryRecord> entries(String build, List<EntryLine> lines, Map<String, Known> read) {
        var wanted = new ArrayList<String>();
        for (var line : lines) {
            var before = known.get(line.id());
            if (before != null && line.stamp() != 0 && before.stamp() == line.stamp()) {
                read.put(line.id(), before);
            } else {
                wanted.add(line.id());
            }
        }
        var stamps = new HashMap<String, Long>();
        lines.forEach(line -> stamps.put(line.id(), line.stamp()));
        journal.entries(build, wanted)
                .forEach(entry -> read.put(entry.id(), new Known(stamps.getOrDefault(entry.id(), 0L), entry)));
        return lines.stream()
                .filter(line -> read.containsKey(line.id()))
                .map(line -> read.get(line.id()).entry())
                .toList();
    }
}
