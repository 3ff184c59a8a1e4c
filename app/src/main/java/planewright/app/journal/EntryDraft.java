package planewright.app.journal;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javax.measure.Unit;
import javax.measure.quantity.Time;
import planewright.api.journal.Entry;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.shared.quantity.QuantityProblem;
import planewright.shared.quantity.QuantityText;
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
 * @param flight of an entry that tells of a flight
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
        Flying flight) {
    private static final Duration LONGEST_CURE = Duration.ofDays(366);

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
    public record Flying(String duration, String conditions, String behaviour) {
        boolean isBlank() {
            return (duration + conditions + behaviour).isBlank();
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
                        .map(each -> new Measuring(
                                each.id(), each.name(), each.quantity().text(), each.method()))
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
                        .map(each -> new Setting(each.name(), each.quantity().text()))
                        .toList(),
                entry.pictures(),
                entry.flight()
                        .map(each -> new Flying(
                                each.duration().map(QuantityText::show).orElse(""),
                                each.conditions(),
                                each.behaviour()))
                        .orElse(new Flying("", "", "")));
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
                measurements.stream().filter(row -> !row.isBlank()).toList(),
                joints.stream().filter(row -> !row.isBlank()).toList(),
                setUp.stream().filter(row -> !row.isBlank()).toList(),
                pictures,
                flight);
    }

    /** The entry that this draft makes of the one it began with, or all that is wrong with it. */
    public Checked check(EntryRecord before) {
        return new Reader().read(before);
    }

    private static String shown(LocalDateTime time) {
        return time.toString().replace('T', ' ');
    }

    /** Reads one draft and notes what it cannot understand. */
    private final class Reader {
        private final Map<String, String> problems = new LinkedHashMap<>();

        Checked read(EntryRecord before) {
            var at = time("when", when).orElse(before.at());
            var entry = new EntryRecord(
                    before.id(),
                    before.build(),
                    at,
                    kind,
                    title.strip(),
                    Stream.of(text.split("\\n\\s*\\n"))
                            .map(String::strip)
                            .filter(paragraph -> !paragraph.isEmpty())
                            .toList(),
                    List.of(tags.split(",")),
                    measured(before),
                    joined(),
                    pictures,
                    set(before),
                    flown(before),
                    before.keptResult());
            return new Checked(
                    problems.isEmpty() ? Optional.of(entry) : Optional.empty(), Collections.unmodifiableMap(problems));
        }

        private List<MeasurementRecord> measured(EntryRecord before) {
            var records = new ArrayList<MeasurementRecord>();
            for (int i = 0; i < measurements.size(); i++) {
                var row = measurements.get(i);
                var path = "measurements[" + i + "]";
                if (!row.isBlank() && named(path, "measurement", row.name())) {
                    var kept = before.measurements().stream()
                            .filter(each -> each.id().equals(row.id()))
                            .map(MeasurementRecord::quantity)
                            .findFirst();
                    quantity(path, row.name(), row.quantity(), Units.NUMBER, kept)
                            .ifPresent(quantity -> records.add(new MeasurementRecord(
                                    id(row.id()),
                                    row.name(),
                                    quantity,
                                    row.method().strip())));
                }
            }
            return records;
        }

        private List<JointRecord> joined() {
            var records = new ArrayList<JointRecord>();
            for (int i = 0; i < joints.size(); i++) {
                var row = joints.get(i);
                var path = "joints[" + i + "]";
                if (!row.isBlank() && named(path, "joint", row.name())) {
                    time(path + ".start", row.start().isBlank() ? when : row.start())
                            .ifPresent(start -> records.add(new JointRecord(
                                    id(row.id()),
                                    row.name(),
                                    row.material().strip(),
                                    start,
                                    end(path + ".handsOff", row.name(), row.handsOff(), start),
                                    end(path + ".cured", row.name(), row.cured(), start))));
                }
            }
            return records;
        }

        private List<SetUpRecord> set(EntryRecord before) {
            var records = new ArrayList<SetUpRecord>();
            for (int i = 0; i < setUp.size(); i++) {
                var row = setUp.get(i);
                var path = "setUp[" + i + "]";
                if (!row.isBlank() && named(path, "set-up value", row.name())) {
                    var kept = before.setUp().stream()
                            .filter(each -> each.name().equals(row.name()))
                            .map(SetUpRecord::quantity)
                            .findFirst();
                    quantity(path, row.name(), row.quantity(), Units.NUMBER, kept)
                            .ifPresent(quantity -> records.add(new SetUpRecord(row.name(), quantity)));
                }
            }
            return records;
        }

        private Optional<FlightRecord> flown(EntryRecord before) {
            if (flight.isBlank() && before.flight().isEmpty()) {
                return Optional.empty();
            }
            var kept = before.flight()
                    .flatMap(FlightRecord::duration)
                    .filter(each -> QuantityText.show(each).equals(flight.duration()));
            Optional<Measured<Time>> duration = flight.duration().isBlank()
                    ? Optional.empty()
                    : kept.or(() -> quantity("flight", "flight", flight.duration(), Units.MINUTE, Optional.empty())
                            .filter(written -> ofTime("flight.quantity", written))
                            .map(written -> written.measured().asType(Time.class)));
            return Optional.of(new FlightRecord(
                    duration, flight.conditions().strip(), flight.behaviour().strip()));
        }

        private boolean named(String path, String what, String name) {
            if (name.isBlank()) {
                problems.put(path + ".name", "name of the " + what + " is empty; accepted: some words");
            }
            return !name.isBlank();
        }

        /** What was typed, or what stood there before where that shows the same text. */
        private Optional<Written> quantity(
                String path, String name, String typed, Unit<?> otherwise, Optional<Written> kept) {
            if (kept.isPresent() && kept.get().text().equals(typed)) {
                return kept;
            }
            if (typed.isBlank()) {
                problems.put(path + ".quantity", of(name, "value is empty; accepted: such as 212 g, 3 1/2 in"));
                return Optional.empty();
            }
            try {
                return Optional.of(QuantityText.parse(typed, otherwise));
            } catch (QuantityProblem problem) {
                problems.put(path + ".quantity", of(name, problem.getMessage()));
                return Optional.empty();
            }
        }

        private boolean ofTime(String path, Written written) {
            boolean fits = Units.alike(written.unit(), Units.MINUTE);
            if (!fits) {
                problems.put(path, "duration is '" + written.text() + "'; accepted: a time such as 7 min");
            }
            return fits;
        }

        private Optional<LocalDateTime> time(String path, String typed) {
            var moment = moment(typed);
            if (moment.isEmpty()) {
                problems.put(path, "time is '" + typed.strip() + "'; accepted: such as 2025-03-14 20:15");
            }
            return moment;
        }

        private static Optional<LocalDateTime> moment(String typed) {
            try {
                return Optional.of(LocalDateTime.parse(typed.strip().replace(' ', 'T')));
            } catch (DateTimeException wrong) {
                return Optional.empty();
            }
        }

        /** A problem of the row that bears a name. */
        private static String of(String name, String problem) {
            return name.strip() + ": " + problem;
        }

        private Optional<LocalDateTime> end(String path, String name, String typed, LocalDateTime start) {
            if (typed.isBlank()) {
                return Optional.empty();
            }
            try {
                var written = QuantityText.parse(typed, Units.NUMBER);
                if (Units.alike(written.unit(), Units.SECOND)) {
                    double seconds = written.measured().asType(Time.class).in(Units.SECOND);
                    if (seconds > 0 && seconds < LONGEST_CURE.toSeconds()) {
                        return Optional.of(start.plusSeconds((long) seconds));
                    }
                }
            } catch (QuantityProblem noDuration) {
                var end = moment(typed);
                if (end.isPresent() && end.get().isBefore(start)) {
                    problems.put(
                            path, of(name, "'" + typed.strip() + "' is before the joint's start, " + shown(start)));
                }
                if (end.isPresent()) {
                    return end;
                }
            }
            problems.put(
                    path,
                    of(name, "'" + typed.strip() + "' is no end of a joint; accepted: 12 h, 45 min, 2025-03-14 20:15"));
            return Optional.empty();
        }

        private String id(String id) {
            return id.isEmpty() ? Ids.small() : id;
        }
    }

    /** All problems, each on a line of its own, in the order of the fields. */
    public static String lines(Checked checked) {
        return String.join("\n", checked.problems().values());
    }
}
