package planewright.app.ui.bench;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import planewright.app.calc.Joints;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.EntryLine;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.OpenJournal;

/**
 * Finds what is on the bench over all builds. Of joints only entries of the last six weeks are read, so that twenty years of logs need not
 * be: one that was written earlier stands among the earlier joints of its build (common practice, no source: adhesives and fillers of the
 * trade are through in days). Of steps entries are read from the day on which the procedure went to the build. What was read stays known
 * until its file is another.
 */
final class BenchLook {
    private static final int WEEKS = 6;

    private final OpenJournal journal;
    private Map<String, Known> known = Map.of();

    private record Known(long stamp, EntryRecord entry) {}

    BenchLook(OpenJournal journal) {
        this.journal = journal;
    }

    /**
     * Reads files, so not on the event thread.
     *
     * @param shown the id of the build of which all joints are wanted
     */
    synchronized OnBench at(LocalDateTime now, Optional<String> shown) {
        var read = new HashMap<String, Known>();
        var joints = new ArrayList<BenchJoint>();
        var steps = new ArrayList<NextStep>();
        for (var build : journal.builds()) {
            joints(build, entries(build, now.minusWeeks(WEEKS), read)).forEach(joints::add);
            steps(build, read).forEach(steps::add);
        }
        known = read;
        joints.removeIf(joint -> joint.state(now) == BenchJoint.State.PAST);
        joints.sort(Comparator.comparing(joint -> joint.next(now)));
        steps.sort(Comparator.comparing(step -> step.notBefore().orElse(LocalDateTime.MIN)));
        return new OnBench(
                joints,
                steps,
                journal.calendar().flatMap(calendar -> NextSession.of(calendar, now)),
                shown.flatMap(journal::build).map(build -> earlier(build, now)).orElse(List.of()));
    }

    private static Stream<BenchJoint> joints(BuildRecord build, List<EntryRecord> entries) {
        return Joints.of(entries).newestFirst().stream()
                .map(dated -> new BenchJoint(build, dated.entry().id(), dated.what()));
    }

    private Stream<NextStep> steps(BuildRecord build, Map<String, Known> read) {
        return journal.templates().stream()
                .flatMap(template -> NextStep.since(build, template).stream()
                        .flatMap(since -> NextStep.of(build, template, entries(build, since, read)).stream()));
    }

    private List<BenchJoint> earlier(BuildRecord build, LocalDateTime now) {
        return joints(build, journal.log(build.id()))
                .filter(joint -> joint.state(now) == BenchJoint.State.PAST)
                .toList();
    }

    /** In order of time; what is known already is not read again. */
    private List<EntryRecord> entries(BuildRecord build, LocalDateTime since, Map<String, Known> read) {
        var lines = journal.lines(build.id()).stream()
                .filter(line -> !line.at().isBefore(since))
                .toList();
        var wanted = new ArrayList<String>();
        for (var line : lines) {
            var before = read.getOrDefault(line.id(), known.get(line.id()));
            if (before != null && line.stamp() != 0 && before.stamp() == line.stamp()) {
                read.put(line.id(), before);
            } else {
                wanted.add(line.id());
            }
        }
        var stamps = new HashMap<String, Long>();
        lines.forEach(line -> stamps.put(line.id(), line.stamp()));
        journal.entries(build.id(), wanted)
                .forEach(entry -> read.put(entry.id(), new Known(stamps.getOrDefault(entry.id(), 0L), entry)));
        return lines.stream()
                .map(EntryLine::id)
                .filter(read::containsKey)
                .map(id -> read.get(id).entry())
                .toList();
    }
}
