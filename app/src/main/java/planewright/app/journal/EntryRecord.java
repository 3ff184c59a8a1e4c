package planewright.app.journal;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
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
        return new EntryRecord(
                id,
                build,
                changed,
                kind,
                title,
                text,
                tags,
                measurements,
                joints,
                pictures,
                setUp,
                flights,
                repairs,
                tasks,
                keptResult);
    }

    public EntryRecord withTitle(String changed) {
        return new EntryRecord(
                id,
                build,
                at,
                kind,
                changed,
                text,
                tags,
                measurements,
                joints,
                pictures,
                setUp,
                flights,
                repairs,
                tasks,
                keptResult);
    }

    public EntryRecord withText(List<String> changed) {
        return new EntryRecord(
                id,
                build,
                at,
                kind,
                title,
                changed,
                tags,
                measurements,
                joints,
                pictures,
                setUp,
                flights,
                repairs,
                tasks,
                keptResult);
    }

    public EntryRecord withTags(List<String> changed) {
        return new EntryRecord(
                id,
                build,
                at,
                kind,
                title,
                text,
                changed,
                measurements,
                joints,
                pictures,
                setUp,
                flights,
                repairs,
                tasks,
                keptResult);
    }

    public EntryRecord withMeasurements(List<MeasurementRecord> changed) {
        return new EntryRecord(
                id,
                build,
                at,
                kind,
                title,
                text,
                tags,
                changed,
                joints,
                pictures,
                setUp,
                flights,
                repairs,
                tasks,
                keptResult);
    }

    public EntryRecord withJoints(List<JointRecord> changed) {
        return new EntryRecord(
                id,
                build,
                at,
                kind,
                title,
                text,
                tags,
                measurements,
                changed,
                pictures,
                setUp,
                flights,
                repairs,
                tasks,
                keptResult);
    }

    public EntryRecord withPictures(List<PictureRecord> changed) {
        return new EntryRecord(
                id,
                build,
                at,
                kind,
                title,
                text,
                tags,
                measurements,
                joints,
                changed,
                setUp,
                flights,
                repairs,
                tasks,
                keptResult);
    }

    public EntryRecord withSetUp(List<SetUpRecord> changed) {
        return new EntryRecord(
                id,
                build,
                at,
                kind,
                title,
                text,
                tags,
                measurements,
                joints,
                pictures,
                changed,
                flights,
                repairs,
                tasks,
                keptResult);
    }

    public EntryRecord withFlights(List<FlightRecord> changed) {
        return new EntryRecord(
                id,
                build,
                at,
                kind,
                title,
                text,
                tags,
                measurements,
                joints,
                pictures,
                setUp,
                changed,
                repairs,
                tasks,
                keptResult);
    }

    public EntryRecord withRepairs(List<RepairRecord> changed) {
        return new EntryRecord(
                id,
                build,
                at,
                kind,
                title,
                text,
                tags,
                measurements,
                joints,
                pictures,
                setUp,
                flights,
                changed,
                tasks,
                keptResult);
    }

    public EntryRecord withTasks(List<TaskRecord> changed) {
        return new EntryRecord(
                id,
                build,
                at,
                kind,
                title,
                text,
                tags,
                measurements,
                joints,
                pictures,
                setUp,
                flights,
                repairs,
                changed,
                keptResult);
    }

    public EntryRecord withKeptResult(KeptResult changed) {
        return new EntryRecord(
                id,
                build,
                at,
                kind,
                title,
                text,
                tags,
                measurements,
                joints,
                pictures,
                setUp,
                flights,
                repairs,
                tasks,
                Optional.of(changed));
    }
}
