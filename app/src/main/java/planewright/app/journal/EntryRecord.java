package planewright.app.journal;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import planewright.api.journal.Entry;

/** An entry as the journal holds it. */
public record EntryRecord(
        String id,
        String build,
        LocalDateTime at,
        Kind kind,
        String title,
        List<String> text,
        List<String> tags,
        List<MeasurementRecord> measurements,
        List<JointRecord> joints,
        List<PictureRecord> pictures,
        List<SetUpRecord> setUp,
        List<FlightRecord> flights,
        List<RepairRecord> repairs,
        List<TaskRecord> tasks,
        Optional<KeptResult> keptResult)
        implements Entry, Kept {
    public EntryRecord {
        text = List.copyOf(text);
        tags = Checks.tags(tags);
        measurements = List.copyOf(measurements);
        joints = List.copyOf(joints);
        pictures = List.copyOf(pictures);
        setUp = List.copyOf(setUp);
        flights = List.copyOf(flights);
        repairs = List.copyOf(repairs);
        tasks = List.copyOf(tasks);
    }

    /** An entry in which nothing is written yet. */
    public static EntryRecord blank(String build, Kind kind, LocalDateTime at) {
        return new EntryRecord(
                Ids.next(),
                build,
                at,
                kind,
                "",
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                Optional.empty());
    }

    public EntryRecord withAt(LocalDateTime changed) {
        return with(copy -> copy.at = changed);
    }

    public EntryRecord withTitle(String changed) {
        return with(copy -> copy.title = changed);
    }

    public EntryRecord withText(List<String> changed) {
        return with(copy -> copy.text = changed);
    }

    public EntryRecord withTags(List<String> changed) {
        return with(copy -> copy.tags = changed);
    }

    public EntryRecord withMeasurements(List<MeasurementRecord> changed) {
        return with(copy -> copy.measurements = changed);
    }

    public EntryRecord withJoints(List<JointRecord> changed) {
        return with(copy -> copy.joints = changed);
    }

    public EntryRecord withPictures(List<PictureRecord> changed) {
        return with(copy -> copy.pictures = changed);
    }

    public EntryRecord withSetUp(List<SetUpRecord> changed) {
        return with(copy -> copy.setUp = changed);
    }

    public EntryRecord withFlights(List<FlightRecord> changed) {
        return with(copy -> copy.flights = changed);
    }

    public EntryRecord withRepairs(List<RepairRecord> changed) {
        return with(copy -> copy.repairs = changed);
    }

    public EntryRecord withTasks(List<TaskRecord> changed) {
        return with(copy -> copy.tasks = changed);
    }

    public EntryRecord withKeptResult(KeptResult changed) {
        return with(copy -> copy.keptResult = Optional.of(changed));
    }

    private EntryRecord with(Consumer<Copy> change) {
        var copy = new Copy();
        change.accept(copy);
        return new EntryRecord(
                id,
                build,
                copy.at,
                kind,
                copy.title,
                copy.text,
                copy.tags,
                copy.measurements,
                copy.joints,
                copy.pictures,
                copy.setUp,
                copy.flights,
                copy.repairs,
                copy.tasks,
                copy.keptResult);
    }

    /** What may differ in a copy of the entry; as in the entry until it is changed. */
    private final class Copy {
        private LocalDateTime at = EntryRecord.this.at;
        private String title = EntryRecord.this.title;
        private List<String> text = EntryRecord.this.text;
        private List<String> tags = EntryRecord.this.tags;
        private List<MeasurementRecord> measurements = EntryRecord.this.measurements;
        private List<JointRecord> joints = EntryRecord.this.joints;
        private List<PictureRecord> pictures = EntryRecord.this.pictures;
        private List<SetUpRecord> setUp = EntryRecord.this.setUp;
        private List<FlightRecord> flights = EntryRecord.this.flights;
        private List<RepairRecord> repairs = EntryRecord.this.repairs;
        private List<TaskRecord> tasks = EntryRecord.this.tasks;
        private Optional<KeptResult> keptResult = EntryRecord.this.keptResult;
    }
}
