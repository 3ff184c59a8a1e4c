package planewright.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import planewright.api.journal.BenchSession;
import planewright.api.journal.Entry.Kind;
import planewright.api.journal.Life;
import planewright.api.journal.Planform;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.app.journal.BuildDayRecord;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.CalendarRecord;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.FlightRecord;
import planewright.app.journal.Ids;
import planewright.app.journal.JointRecord;
import planewright.app.journal.Kept;
import planewright.app.journal.KeptResult;
import planewright.app.journal.Lineage;
import planewright.app.journal.MaterialRecord;
import planewright.app.journal.MaterialsRecord;
import planewright.app.journal.MeasurementRecord;
import planewright.app.journal.OpenJournal;
import planewright.app.journal.PartRecord;
import planewright.app.journal.PictureRecord;
import planewright.app.journal.RepairRecord;
import planewright.app.journal.SetUpRecord;
import planewright.app.journal.StepRecord;
import planewright.app.journal.Storage;
import planewright.app.journal.TaskRecord;
import planewright.app.journal.TemplateContent;
import planewright.app.journal.TemplateRecord;
import planewright.app.store.JournalFolder;
import planewright.app.store.JsonFiles;
import planewright.app.store.UserFolders;
import planewright.shared.quantity.Written;

/** Builds, entries and journals for tests. */
public final class Bench {
    /** When the entries of tests happened. */
    public static final LocalDateTime EVENING = LocalDateTime.of(2025, 3, 14, 20, 15);

    private static final Pattern RECORD = Pattern.compile("(builds|templates)/.*|(calendar|materials)\\.json");

    private Bench() {}

    /** A journal with a folder of its own for the user's files beside it. */
    public static JournalFolder newJournal(Path folder) throws IOException {
        JournalFolder.create(folder, "Loft workshop");
        return open(folder);
    }

    public static JournalFolder open(Path folder) throws IOException {
        return JournalFolder.open(folder, UserFolders.under(folder.resolveSibling(folder.getFileName() + "-user")));
    }

    /** A journal in memory; what is saved is kept nowhere else. */
    public static OpenJournal inMemory(List<BuildRecord> builds, List<EntryRecord> entries) {
        return OpenJournal.read(
                "Loft workshop",
                Stream.concat(builds.stream(), entries.stream()).toList(),
                change -> new Storage.Saved(change, change.subject().hashCode()));
    }

    public static BuildRecord build(String name) {
        return BuildRecord.begin(name, LocalDate.of(2024, 10, 5));
    }

    public static EntryRecord entry(BuildRecord build, String title) {
        return EntryRecord.blank(build.id(), Kind.WORK, EVENING).withTitle(title);
    }

    /** A joint that cures for twelve hours. */
    public static JointRecord joint(String name, String material) {
        return new JointRecord(
                Ids.small(), name, material, EVENING, Optional.empty(), Optional.of(EVENING.plusHours(12)));
    }

    /** A build in which every field says something. */
    public static BuildRecord fullBuild() {
        var wing = new Planform.Surface(
                "wing",
                0.012,
                0,
                -0.004,
                true,
                List.of(new Planform.Panel(0.26, 0.18, 0.5, Math.toRadians(20), Math.toRadians(1), Math.toRadians(-2))),
                List.of(
                        new Planform.Control("elevons", Planform.Role.ELEVON, 0.25, 0.9, 0.75, 0.7),
                        new Planform.Control("flaps", Planform.Role.FLAP, 0, 0.25, 0.7, 0.7)));
        var pod = new Planform.Body(
                "pod",
                0,
                List.of(new Planform.Section(-0.08, 0.05, 0.03, -0.02), new Planform.Section(0.3, 0.04, 0.03, -0.02)));
        var part = new PartRecord(
                Ids.small(),
                "left wing panel",
                "airframe",
                Optional.of(Measured.of(212, 1, Units.GRAM)),
                Optional.of(Measured.of(5.5, Units.INCH)),
                Optional.of(Measured.of(-240, Units.MILLIMETRE)),
                Optional.of(Measured.of(0, Units.MILLIMETRE)),
                Optional.of(Measured.of(0.26, Units.METRE)),
                Optional.of(Measured.of(500, Units.MILLIMETRE)),
                Optional.of(Measured.of(2, Units.CENTIMETRE)));
        return new BuildRecord(
                Ids.next(),
                "Grey heron",
                Life.FLYING,
                "tailless with elevons",
                "wing leading edge at the centre line",
                LocalDate.of(2024, 10, 5),
                List.of("Drawn on the back of a calendar.", "Foam core, 38 g/dm²."),
                List.of(part),
                Optional.of(new Planform(List.of(wing), List.of(pod))));
    }

    /** An entry in which every field says something. */
    public static EntryRecord fullEntry(BuildRecord build) {
        var inputs = JsonFiles.object().put("wing area", 38.5).put("far", 1.5e10);
        inputs.putArray("parts").addObject().put("name", "left wing panel").put("small", 1e-7);
        return new EntryRecord(
                Ids.next(),
                build.id(),
                EVENING,
                Kind.FLIGHT,
                "First hand launch \"over\" tall grass",
                List.of("Nose heavy, by a *lot*.", "Löwenzahn 🌼 everywhere.\tDrone of bees \\ no wind."),
                List.of("wing", "balance"),
                List.of(new MeasurementRecord(
                        Ids.small(),
                        "left wing panel",
                        new Written("3 1/2", Units.INCH, Optional.of("1/16")),
                        "steel rule")),
                List.of(new JointRecord(
                        Ids.small(),
                        "fin to centre line",
                        "solvent-based contact adhesive",
                        EVENING,
                        Optional.of(EVENING.plusMinutes(10)),
                        Optional.of(EVENING.plusHours(12).plusSeconds(7)))),
                List.of(new PictureRecord("ab".repeat(32), "jpg", "the launch")),
                List.of(new SetUpRecord("balance point", new Written("0.850", Units.FOOT, Optional.empty()))),
                List.of(
                        new FlightRecord(
                                Ids.small(), Optional.of(Measured.of(7, Units.MINUTE)), "calm", "slow to roll"),
                        new FlightRecord(Ids.small(), Optional.empty(), "", "nose up at power")),
                List.of(new RepairRecord(
                        Ids.small(),
                        "fin at the root",
                        "tall grass",
                        "glued, a strip over it",
                        Optional.of(Measured.of(1.5, Units.GRAM)))),
                List.of(new TaskRecord(Ids.small(), "trim the linkage", Optional.of(Measured.of(25, Units.MINUTE)))),
                Optional.of(new KeptResult(
                        "balance.ledger",
                        "1",
                        inputs,
                        JsonFiles.object().put("from", "here"),
                        JsonFiles.object().put("mass", 1234.5678))));
    }

    /** An outline, a procedure, a set-up, a calendar and materials in which every field says something. */
    public static List<Kept> fullOthers(BuildRecord build) {
        var flown = new BuildDayRecord(build.id(), build.name(), EVENING.toLocalDate());
        var lineage = Lineage.NONE.from(flown).goneTo(flown).flownOn(flown);
        var fin = TemplateRecord.of("Fin", EVENING.toLocalDate(), new TemplateContent.Outline("cd".repeat(32)))
                .withNotes(List.of("Of 3 mm balsa, grain upright."))
                .withTags(List.of("fin", "balsa"))
                .withLineage(lineage);
        var step = new StepRecord(
                Ids.small(),
                "Sand the core",
                Optional.of(Measured.of(20, Units.MINUTE)),
                Optional.of(Measured.of(12, 1, Units.HOUR)),
                List.of("lightweight spackle"),
                List.of("Dust: a mask."));
        var fairing = TemplateRecord.of("Fairing", EVENING.toLocalDate(), new TemplateContent.Procedure(List.of(step)))
                .withLineage(Lineage.NONE.derivedFrom(fin));
        var value = new SetUpRecord("elevon, low rate", new Written("3 1/2", Units.MILLIMETRE, Optional.of("1/2")));
        var setUp = TemplateRecord.of("Calm air", EVENING.toLocalDate(), new TemplateContent.SetUp(List.of(value)))
                .withLineage(lineage);
        return List.of(fin, fairing, setUp, fullCalendar(), fullMaterials());
    }

    private static CalendarRecord fullCalendar() {
        var evening = new BenchSession(LocalTime.of(19, 0), LocalTime.of(21, 30));
        return new CalendarRecord(
                List.of(
                        new CalendarRecord.WeeklyRecord(DayOfWeek.TUESDAY, evening),
                        new CalendarRecord.WeeklyRecord(
                                DayOfWeek.SATURDAY, new BenchSession(LocalTime.of(20, 0), LocalTime.MIDNIGHT))),
                List.of(
                        new CalendarRecord.OtherDayRecord(LocalDate.of(2025, 12, 24), List.of(), "away"),
                        new CalendarRecord.OtherDayRecord(LocalDate.of(2025, 12, 27), List.of(evening), "")),
                List.of(
                        new CalendarRecord.ReadingRecord(LocalTime.of(15, 0), Measured.of(18, 1, Units.CELSIUS)),
                        new CalendarRecord.ReadingRecord(LocalTime.of(5, 0), Measured.of(8.5, Units.CELSIUS))));
    }

    private static MaterialsRecord fullMaterials() {
        return new MaterialsRecord(List.of(new MaterialRecord(
                Ids.small(),
                "epoxy from the tall tin",
                "laminating epoxy",
                Optional.of(Measured.of(35, Units.MINUTE)),
                Optional.of(Measured.of(1, Units.MINUTE)),
                Optional.of(Measured.of(10, 1, Units.HOUR)),
                Optional.of(Measured.of(2, Units.DAY)),
                Optional.of(Measured.of(17, Units.CELSIUS)),
                "slower than its sheet says")));
    }

    /** A record in which every field says something: {@code build}, {@code entry}, {@code outline} and so on. */
    public static Kept full(String which) {
        var build = fullBuild();
        var others = fullOthers(build);
        return switch (which) {
            case "build" -> build;
            case "entry" -> fullEntry(build);
            default ->
                others.get(List.of("outline", "procedure", "set-up", "calendar", "materials")
                        .indexOf(which));
        };
    }

    /** The content of every record file below a journal, by its path within. */
    public static TreeMap<String, String> records(Path journal) throws IOException {
        var records = new TreeMap<String, String>();
        try (Stream<Path> files = Files.walk(journal)) {
            files.filter(Files::isRegularFile)
                    .filter(file -> RECORD.matcher(
                                    journal.relativize(file).toString().replace('\\', '/'))
                            .matches())
                    .forEach(file -> records.put(journal.relativize(file).toString(), text(file)));
        }
        return records;
    }

    /** Copies a folder with all that is in it. */
    public static Path copy(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (var each : all.toList()) {
                Files.copy(each, to.resolve(from.relativize(each).toString()));
            }
        }
        return to;
    }

    /** The only file below a folder whose name ends so. */
    public static Path only(Path folder, String ending) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            var found = files.filter(file -> file.toString().endsWith(ending)).toList();
            if (found.size() != 1) {
                throw new IllegalStateException(found.size() + " files end in " + ending + ": " + found);
            }
            return found.get(0);
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file, StandardCharsets.UTF_8);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
