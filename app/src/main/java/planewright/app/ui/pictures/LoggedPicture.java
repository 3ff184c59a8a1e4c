package planewright.app.ui.pictures;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import planewright.api.journal.Entry;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.MeasurementRecord;
import planewright.app.journal.PictureRecord;

/**
 * A picture and where it stands in the log.
 *
 * @param place its place among the entry's pictures
 */
record LoggedPicture(EntryRecord entry, int place) {
    private static final DateTimeFormatter WHEN =
            DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT);

    /** All pictures of a log, the newest entry first; those of an entry in their order. */
    static List<LoggedPicture> newestFirst(List<EntryRecord> log) {
        var entries = new ArrayList<>(log);
        Collections.reverse(entries);
        return entries.stream()
                .flatMap(entry ->
                        IntStream.range(0, entry.pictures().size()).mapToObj(place -> new LoggedPicture(entry, place)))
                .toList();
    }

    /** A picture that stands in no log yet. */
    static LoggedPicture alone(String build, LocalDateTime at, PictureRecord picture) {
        return new LoggedPicture(EntryRecord.blank(build, Entry.Kind.WORK, at).withPictures(List.of(picture)), 0);
    }

    PictureRecord picture() {
        return entry.pictures().get(place);
    }

    LocalDate day() {
        return entry.at().toLocalDate();
    }

    /** The same before and after its caption or entry are changed. */
    String key() {
        return entry.id() + " " + picture().hash();
    }

    String caption() {
        return picture().caption();
    }

    /** Its caption; without one the title of its entry. */
    String words() {
        return caption().isEmpty() ? entry.title() : caption();
    }

    /** When, and what it shows. */
    String heading() {
        return WHEN.format(entry.at()) + (words().isEmpty() ? "" : "  ·  " + words());
    }

    boolean bears(List<String> words) {
        var said = (caption() + " " + entry.title() + " " + String.join(" ", entry.tags()) + " " + day())
                .toLowerCase(Locale.ROOT);
        return words.stream().allMatch(said::contains);
    }

    /** The same with another caption. */
    LoggedPicture captioned(String caption) {
        var pictures = new ArrayList<>(entry.pictures());
        pictures.set(place, new PictureRecord(picture().hash(), picture().type(), caption));
        return new LoggedPicture(entry.withPictures(pictures), place);
    }

    /** The same with something measured on it. */
    LoggedPicture measured(MeasurementRecord measurement) {
        return new LoggedPicture(
                entry.withMeasurements(Stream.concat(entry.measurements().stream(), Stream.of(measurement))
                        .toList()),
                place);
    }

    /** The edit that leads from this one to another state of it. */
    Edit edit(String what, LoggedPicture after) {
        return Edit.change(what, entry, after.entry());
    }

    /** What a file of it is called, without its ending. */
    String fileName() {
        var words = words().replaceAll("[^\\p{L}\\p{N} ._-]", " ")
                .replaceAll("\\s+", " ")
                .strip();
        return day()
                + (words.isEmpty()
                        ? ""
                        : " " + words.substring(0, Math.min(60, words.length())).strip());
    }
}
