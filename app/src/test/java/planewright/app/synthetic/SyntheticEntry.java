package planewright.app.synthetic;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Supplier;
import planewright.api.journal.Entry.Kind;
import planewright.api.quantity.Units;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.FlightRecord;
import planewright.app.journal.JointRecord;
import planewright.app.journal.KeptResult;
import planewright.app.journal.PictureRecord;
import planewright.app.journal.RepairRecord;
import planewright.app.journal.TaskRecord;

/** Makes entries of a log. */
final class SyntheticEntry {
    private static final List<Kind> KINDS = List.of(
            Kind.WORK,
            Kind.WORK,
            Kind.WORK,
            Kind.WORK,
            Kind.WORK,
            Kind.WORK,
            Kind.NOTE,
            Kind.NOTE,
            Kind.FLIGHT,
            Kind.FLIGHT,
            Kind.FLIGHT,
            Kind.REPAIR,
            Kind.SET_UP);
    private static final List<String> TAGS = List.of(
            "glue",
            "wing",
            "plan",
            "flying",
            "trim",
            "electrics",
            "paint",
            "balance",
            "hot-wire",
            "covering",
            "repair",
            "hinges",
            "foam",
            "tail",
            "motor",
            "landing",
            "idea",
            "mistake",
            "weight",
            "finish");
    private static final List<String> MATERIALS = List.of(
            "laminating epoxy",
            "foaming polyurethane glue",
            "solvent-based contact adhesive",
            "lightweight spackle",
            "white wood glue");
    private static final int ENTRIES_A_KEPT_RESULT = 60;

    private final Random random;
    private final SeededIds ids;
    private final Figures figures;
    private final Prose prose;

    SyntheticEntry(Random random, SeededIds ids, Figures figures, Prose prose) {
        this.random = random;
        this.ids = ids;
        this.figures = figures;
        this.prose = prose;
    }

    EntryRecord make(String build, LocalDateTime at, List<PictureRecord> pictures) {
        var kept = random.nextInt(ENTRIES_A_KEPT_RESULT) == 0
                ? Optional.of(new SyntheticWeighing(figures).make())
                : Optional.<KeptResult>empty();
        var kind = kept.isPresent() ? Kind.KEPT_RESULT : KINDS.get(random.nextInt(KINDS.size()));
        return new EntryRecord(
                ids.ulid(at),
                build,
                at,
                kind,
                random.nextInt(10) == 0 ? "" : prose.title(),
                prose.paragraphs(),
                some(3, () -> TAGS.get(random.nextInt(1 + random.nextInt(TAGS.size())))),
                some(3, figures::measurement),
                kind == Kind.WORK || kind == Kind.REPAIR ? some(2, () -> joint(at)) : List.of(),
                pictures,
                kind == Kind.SET_UP ? some(4, figures::setting) : List.of(),
                kind == Kind.FLIGHT ? List.of(flight()) : List.of(),
                kind == Kind.REPAIR ? List.of(repair()) : List.of(),
                kind == Kind.WORK ? some(2, this::task) : List.of(),
                kept);
    }

    PictureRecord picture(String hash) {
        return new PictureRecord(hash, "jpg", prose.title());
    }

    /** None up to so many. */
    private <T> List<T> some(int most, Supplier<T> one) {
        var several = new ArrayList<T>();
        for (int i = random.nextInt(most + 1); i > 0; i--) {
            several.add(one.get());
        }
        return several;
    }

    private JointRecord joint(LocalDateTime at) {
        int hours = figures.between(1, 24);
        return new JointRecord(
                ids.small(),
                figures.piece() + " joint",
                MATERIALS.get(random.nextInt(MATERIALS.size())),
                at,
                Optional.of(at.plusHours(hours)),
                random.nextBoolean() ? Optional.of(at.plusHours(3L * hours)) : Optional.empty());
    }

    private FlightRecord flight() {
        return new FlightRecord(
                ids.small(),
                Optional.of(Figures.exactly(figures.between(2, 20), Units.MINUTE)),
                figures.between(-2, 30) + " °C, wind " + figures.between(0, 8) + " m/s",
                prose.sentence());
    }

    private RepairRecord repair() {
        return new RepairRecord(
                ids.small(),
                figures.piece(),
                prose.title(),
                prose.sentence(),
                Optional.of(Figures.exactly(figures.between(1, 12), Units.GRAM)));
    }

    private TaskRecord task() {
        return new TaskRecord(
                ids.small(), prose.title(), Optional.of(Figures.exactly(figures.between(5, 90), Units.MINUTE)));
    }
}
