package planewright.app.journal;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import planewright.api.journal.Entry;
import planewright.api.quantity.Measured;
import planewright.shared.quantity.Written;

/**
 * An entry while somebody writes it: everything as typed, right or wrong, so that nothing typed is lost.
 *
 * @param when such as {@code 2025-03-14 20:15}
 * @param kind what it tells of
 * @param title a line
 * @param text paragraphs, with empty lines between them
 * @param tags with commas between them
 * @param measurements rows; one without anything typed does not count
 * @param joints rows; likewise
 * @param setUp rows; likewise
 * @param pictures as they were taken in
 * @param flights rows; likewise
 * @param repairs rows; likewise
 * @param tasks rows; likewise
 */
public record EntryDraft(
        String when,
        Entry.Kind kind,
        String title,
        String text,
        String tags,
        List<Measuring> measurements,
        List<Joining> joints,
        List<Setting> setUp,
        List<PictureRecord> pictures,
        List<Flying> flights,
        List<Mending> repairs,
        List<Doing> tasks) {
    /** A measurement as typed; its id is empty until it has one. */
    public record Measuring(String id, String name, String quantity, String method) {
        boolean isBlank() {
            return (name + quantity + method).isBlank();
        }
    }

    /** A joint as typed; its ends are times, or durations from the start such as {@code 12 h}. */
    public record Joining(String id, String name, String material, String start, String handsOff, String cured) {
        boolean isBlank() {
            return (name + material + start + handsOff + cured).isBlank();
        }
    }

    /** A set-up value as typed. */
    public record Setting(String name, String quantity) {
        boolean isBlank() {
            return (name + quantity).isBlank();
        }
    }

    /** A flight as typed. */
    public record Flying(String id, String duration, String conditions, String behaviour) {
        boolean isBlank() {
            return (duration + conditions + behaviour).isBlank();
        }
    }

    /** A repair as typed. */
    public record Mending(String id, String broke, String cause, String mended, String massAdded) {
        boolean isBlank() {
            return (broke + cause + mended + massAdded).isBlank();
        }
    }

    /** Work done as typed. */
    public record Doing(String id, String name, String handsOn) {
        boolean isBlank() {
            return (name + handsOn).isBlank();
        }
    }

    /**
     * What came of a draft.
     *
     * @param entry the entry, where there are no problems
     * @param problems what cannot be understood, by path: {@code when}, {@code measurements[0].quantity}
     */
    public record Checked(Optional<EntryRecord> entry, Map<String, String> problems) {}

    /** An entry, ready to be changed. */
    public static EntryDraft of(EntryRecord entry) {
        return new EntryDraft(
                shown(entry.at()),
                entry.kind(),
                entry.title(),
                String.join("\n\n", entry.text()),
                String.join(", ", entry.tags()),
                entry.measurements().stream()
                        .map(each -> new Measuring(each.id(), each.name(), Said.text(each.quantity()), each.method()))
                        .toList(),
                entry.joints().stream()
                        .map(each -> new Joining(
                                each.id(),
                                each.name(),
                                each.material(),
                                shown(each.start()),
                                each.handsOffUntil().map(EntryDraft::shown).orElse(""),
                                each.fullyCured().map(EntryDraft::shown).orElse("")))
                        .toList(),
                entry.setUp().stream()
                        .map(each -> new Setting(each.name(), Said.text(each.quantity())))
                        .toList(),
                entry.pictures(),
                entry.flights().stream()
                        .map(each -> new Flying(each.id(), shown(each.duration()), each.conditions(), each.behaviour()))
                        .toList(),
                entry.repairs().stream()
                        .map(each -> new Mending(
                                each.id(), each.broke(), each.cause(), each.mended(), shown(each.massAdded())))
                        .toList(),
                entry.tasks().stream()
                        .map(each -> new Doing(each.id(), each.name(), shown(each.handsOn())))
                        .toList());
    }

    /** Whether the same is written in both; rows without anything typed do not count. */
    public boolean saysTheSameAs(EntryDraft other) {
        return withoutBlankRows().equals(other.withoutBlankRows());
    }

    private EntryDraft withoutBlankRows() {
        return new EntryDraft(
                when,
                kind,
                title,
                text,
                tags,
                written(measurements, Measuring::isBlank),
                written(joints, Joining::isBlank),
                written(setUp, Setting::isBlank),
                pictures,
                written(flights, Flying::isBlank),
                written(repairs, Mending::isBlank),
                written(tasks, Doing::isBlank));
    }

    private static <T> List<T> written(List<T> rows, Predicate<T> isBlank) {
        return rows.stream().filter(isBlank.negate()).toList();
    }

    /** The entry that this draft makes of the one it began with, or all that is wrong with it. */
    public Checked check(EntryRecord before) {
        return new DraftReader(this, before).read();
    }

    static String shown(Optional<? extends Measured<?>> value) {
        return value.map(each -> Said.text(Written.of(each))).orElse("");
    }

    static String shown(LocalDateTime time) {
        return time.toString().replace('T', ' ');
    }

    /** All problems, each on a line of its own, in the order of the fields. */
    public static String lines(Checked checked) {
        return String.join("\n", checked.problems().values());
    }
}
