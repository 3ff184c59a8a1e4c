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
        Optional<FlightRecord> flight,
        Optional<KeptResult> keptResult)
        implements Entry, Kept {
    public EntryRecord {
        text = List.copyOf(text);
        tags = tags.stream()
                .map(String::strip)
                .filter(tag -> !tag.isEmpty())
                .sorted()
                .distinct()
                .toList();
        measurements = List.copyOf(measurements);
        joints = List.copyOf(joints);
        pictures = List.copyOf(pictures);
        setUp = List.copyOf(setUp);
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
                Optional.empty(),
                Optional.empty());
    }

    public EntryRecord withAt(LocalDateTime changed) {
        return new EntryRecord(
                id, build, changed, kind, title, text, tags, measurements, joints, pictures, setUp, flight, keptResult);
    }

    public EntryRecord withTitle(String changed) {
        return new EntryRecord(
                id, build, at, kind, changed, text, tags, measurements, joints, pictures, setUp, flight, keptResult);
    }

    public EntryRecord withText(List<String> changed) {
        return new EntryRecord(
                id, build, at, kind, title, changed, tags, measurements, joints, pictures, setUp, flight, keptResult);
    }

    public EntryRecord withTags(List<String> changed) {
        return new EntryRecord(
                id, build, at, kind, title, text, changed, measurements, joints, pictures, setUp, flight, keptResult);
    }

    public EntryRecord withMeasurements(List<MeasurementRecord> changed) {
        return new EntryRecord(
                id, build, at, kind, title, text, tags, changed, joints, pictures, setUp, flight, keptResult);
    }

    public EntryRecord withJoints(List<JointRecord> changed) {
        return new EntryRecord(
                id, build, at, kind, title, text, tags, measurements, changed, pictures, setUp, flight, keptResult);
    }

    public EntryRecord withPictures(List<PictureRecord> changed) {
        return new EntryRecord(
                id, build, at, kind, title, text, tags, measurements, joints, changed, setUp, flight, keptResult);
    }

    public EntryRecord withSetUp(List<SetUpRecord> changed) {
        return new EntryRecord(
                id, build, at, kind, title, text, tags, measurements, joints, pictures, changed, flight, keptResult);
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
                flight,
                Optional.of(changed));
    }
}
