package planewright.app.journal;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Time;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.shared.quantity.QuantityProblem;
import planewright.shared.quantity.QuantityText;
import planewright.shared.quantity.Written;

/** Reads one draft and notes what it cannot understand. */
final class DraftReader {
    private static final Duration LONGEST_CURE = Duration.ofDays(366);

    private final EntryDraft draft;
    private final EntryRecord before;
    private final Map<String, String> problems = new LinkedHashMap<>();

    /**
     * @param before the entry that the draft began with
     */
    DraftReader(EntryDraft draft, EntryRecord before) {
        this.draft = draft;
        this.before = before;
    }

    EntryDraft.Checked read() {
        var at = time("when", draft.when()).orElse(before.at());
        var entry = new EntryRecord(
                before.id(),
                before.build(),
                at,
                draft.kind(),
                draft.title().strip(),
                Stream.of(draft.text().split("\\n\\s*\\n"))
                        .map(String::strip)
                        .filter(paragraph -> !paragraph.isEmpty())
                        .toList(),
                List.of(draft.tags().split(",")),
                rows("measurements", draft.measurements(), EntryDraft.Measuring::isBlank, this::measured),
                rows("joints", draft.joints(), EntryDraft.Joining::isBlank, this::joined),
                draft.pictures(),
                rows("setUp", draft.setUp(), EntryDraft.Setting::isBlank, this::set),
                rows("flights", draft.flights(), this::isNoFlight, this::flown),
                rows("repairs", draft.repairs(), EntryDraft.Mending::isBlank, this::mended),
                rows("tasks", draft.tasks(), EntryDraft.Doing::isBlank, this::done),
                before.keptResult());
        return new EntryDraft.Checked(
                problems.isEmpty() ? Optional.of(entry) : Optional.empty(), Collections.unmodifiableMap(problems));
    }

    private static <T, R> List<R> rows(
            String name, List<T> rows, Predicate<T> isBlank, BiFunction<String, T, Optional<R>> reading) {
        var records = new ArrayList<R>();
        for (int i = 0; i < rows.size(); i++) {
            if (!isBlank.test(rows.get(i))) {
                reading.apply(name + "[" + i + "]", rows.get(i)).ifPresent(records::add);
            }
        }
        return records;
    }

    private Optional<MeasurementRecord> measured(String path, EntryDraft.Measuring row) {
        if (!named(path + ".name", "name of the measurement", row.name())) {
            return Optional.empty();
        }
        var kept = before.measurements().stream()
                .filter(each -> each.id().equals(row.id()))
                .map(MeasurementRecord::quantity)
                .findFirst();
        return quantity(path + ".quantity", row.name(), row.quantity(), Units.NUMBER, kept)
                .map(quantity -> new MeasurementRecord(
                        id(row.id()), row.name(), quantity, row.method().strip()));
    }

    private Optional<JointRecord> joined(String path, EntryDraft.Joining row) {
        if (!named(path + ".name", "name of the joint", row.name())) {
            return Optional.empty();
        }
        return time(path + ".start", row.start().isBlank() ? draft.when() : row.start())
                .map(start -> new JointRecord(
                        id(row.id()),
                        row.name(),
                        row.material().strip(),
                        start,
                        end(path + ".handsOff", row.name(), row.handsOff(), start),
                        end(path + ".cured", row.name(), row.cured(), start)));
    }

    private Optional<SetUpRecord> set(String path, EntryDraft.Setting row) {
        if (!named(path + ".name", "name of the set-up value", row.name())) {
            return Optional.empty();
        }
        var kept = before.setUp().stream()
                .filter(each -> each.name().equals(row.name()))
                .map(SetUpRecord::quantity)
                .findFirst();
        return quantity(path + ".quantity", row.name(), row.quantity(), Units.NUMBER, kept)
                .map(quantity -> new SetUpRecord(row.name(), quantity));
    }

    /** A flight of which nothing was known before either may hold what this program does not know. */
    private boolean isNoFlight(EntryDraft.Flying row) {
        return row.isBlank()
                && before.flights().stream()
                        .noneMatch(each -> each.id().equals(row.id())
                                && EntryWords.flight(each).isEmpty());
    }

    private Optional<FlightRecord> flown(String path, EntryDraft.Flying row) {
        var kept = before.flights().stream()
                .filter(each -> each.id().equals(row.id()))
                .findFirst()
                .flatMap(FlightRecord::duration);
        return Optional.of(new FlightRecord(
                id(row.id()),
                optional(
                        path + ".duration",
                        Said.say("duration of the flight"),
                        row.duration(),
                        Units.MINUTE,
                        kept,
                        Time.class),
                row.conditions().strip(),
                row.behaviour().strip()));
    }

    private Optional<RepairRecord> mended(String path, EntryDraft.Mending row) {
        if (!named(path + ".broke", "what broke", row.broke())) {
            return Optional.empty();
        }
        var kept = before.repairs().stream()
                .filter(each -> each.id().equals(row.id()))
                .findFirst()
                .flatMap(RepairRecord::massAdded);
        return Optional.of(new RepairRecord(
                id(row.id()),
                row.broke(),
                row.cause().strip(),
                row.mended().strip(),
                optional(path + ".massAdded", row.broke(), row.massAdded(), Units.GRAM, kept, Mass.class)));
    }

    private Optional<TaskRecord> done(String path, EntryDraft.Doing row) {
        if (!named(path + ".name", "name of the task", row.name())) {
            return Optional.empty();
        }
        var kept = before.tasks().stream()
                .filter(each -> each.id().equals(row.id()))
                .findFirst()
                .flatMap(TaskRecord::handsOn);
        return Optional.of(new TaskRecord(
                id(row.id()),
                row.name(),
                optional(path + ".handsOn", row.name(), row.handsOn(), Units.MINUTE, kept, Time.class)));
    }

    private boolean named(String path, String what, String name) {
        if (name.isBlank()) {
            problems.put(path, Said.say("{0} is empty; accepted: some words", Said.say(what)));
        }
        return !name.isBlank();
    }

    /** What was typed, or what stood there before where that shows the same text; empty where nothing is typed. */
    private <Q extends Quantity<Q>> Optional<Measured<Q>> optional(
            String path, String name, String typed, Unit<Q> unit, Optional<Measured<Q>> kept, Class<Q> kind) {
        if (typed.isBlank()) {
            return Optional.empty();
        }
        if (stands(kept.map(Written::of), typed)) {
            return kept;
        }
        try {
            return Optional.of(QuantityText.parseLike(typed, unit).measured().asType(kind));
        } catch (QuantityProblem problem) {
            problems.put(path, of(name, problem.getLocalizedMessage()));
            return Optional.empty();
        }
    }

    /** What was typed, or what stood there before where that shows the same text. */
    private Optional<Written> quantity(
            String path, String name, String typed, Unit<?> otherwise, Optional<Written> kept) {
        if (stands(kept, typed)) {
            return kept;
        }
        if (typed.isBlank()) {
            problems.put(path, of(name, Said.say("value is empty; accepted: such as 212 g, 3 1/2 in")));
            return Optional.empty();
        }
        try {
            return Optional.of(QuantityText.parse(typed, otherwise));
        } catch (QuantityProblem problem) {
            problems.put(path, of(name, problem.getLocalizedMessage()));
            return Optional.empty();
        }
    }

    /** Whether a text is what is shown of a quantity, here or where a draft was begun. */
    static boolean stands(Optional<Written> kept, String typed) {
        return kept.filter(each -> Said.text(each).equals(typed) || each.text().equals(typed))
                .isPresent();
    }

    private Optional<LocalDateTime> time(String path, String typed) {
        var moment = TypedTime.parse(typed, Locale.getDefault(Locale.Category.FORMAT));
        if (moment.isEmpty()) {
            problems.put(path, Said.say("time is '{0}'; accepted: such as 2025-03-14 20:15", typed.strip()));
        }
        return moment;
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
            var end = TypedTime.parse(typed, Locale.getDefault(Locale.Category.FORMAT));
            if (end.isPresent() && end.get().isBefore(start)) {
                problems.put(
                        path,
                        of(
                                name,
                                Said.say(
                                        "'{0}' is before the joint's start, {1}",
                                        typed.strip(), EntryDraft.shown(start))));
            }
            if (end.isPresent()) {
                return end;
            }
        }
        problems.put(
                path,
                of(
                        name,
                        Said.say(
                                "'{0}' is no end of a joint; accepted: 12 h, 45 min, 2025-03-14 20:15",
                                typed.strip())));
        return Optional.empty();
    }

    private static String id(String id) {
        return id.isEmpty() ? Ids.small() : id;
    }
}
