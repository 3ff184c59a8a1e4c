package planewright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.f4b6a3.ulid.Ulid;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import planewright.api.journal.Entry.Kind;
import planewright.api.journal.Template;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.JointRecord;
import planewright.app.journal.OpenJournal;
import planewright.app.journal.TemplateRecord;
import planewright.app.store.JournalFolder;
import planewright.app.store.JsonFiles;
import planewright.app.store.UserFolders;

/** The sample journal as committed: whole, readable, plausible in its times and pictures. */
class SampleJournalTest {
    private static final List<String> LAYOUTS =
            List.of("tailless with elevons", "conventional", "delta", "V-tail", "canard", "biplane");
    private static final int MOST_PICTURE_BYTES = 5_000_000;

    @TempDir
    private static Path temp;

    private static Path folder;
    private static JournalFolder open;
    private static OpenJournal journal;

    @BeforeAll
    static void openACopy() throws IOException {
        folder = Workplace.copySample(temp.resolve("workshop"));
        open = JournalFolder.open(folder, UserFolders.under(temp.resolve("user")));
        journal = open.journal();
    }

    @AfterAll
    static void close() throws IOException {
        open.close();
    }

    @Test
    void opensWithNothingSetAside() {
        assertThat(open.setAside()).isEmpty();
        assertThat(journal.builds()).hasSizeGreaterThanOrEqualTo(6);
        assertThat(journal.builds()).extracting(BuildRecord::layout).containsAll(LAYOUTS);
        assertThat(entries()).hasSizeGreaterThanOrEqualTo(150);
        assertThat(journal.builds())
                .allSatisfy(build ->
                        assertThat(journal.log(build.id())).as(build.name()).hasSizeGreaterThanOrEqualTo(10));
    }

    @Test
    void everyFileMeetsTheSchemaBesideIt() throws IOException {
        var registry = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
        int checked = 0;
        for (var file : files(".json")) {
            var version = JsonFiles.read(file).get("schema").intValue();
            var schema = registry.getSchema(
                    Files.readString(folder.resolve("schema/" + kindOf(file) + "-" + version + ".json")),
                    InputFormat.JSON);
            assertThat(schema.validate(Files.readString(file), InputFormat.JSON))
                    .as("%s", folder.relativize(file))
                    .isEmpty();
            checked++;
        }
        assertThat(checked)
                .isEqualTo(1
                        + journal.builds().size()
                        + entries().size()
                        + journal.templates().size()
                        + 2);
    }

    private static String kindOf(Path file) {
        if (file.startsWith(folder.resolve("templates"))) {
            return "template";
        }
        var name = file.getFileName().toString().split("\\.")[0];
        return List.of("journal", "build", "calendar", "materials").contains(name) ? name : "entry";
    }

    /** The schemas of a journal are those of the program that made it. */
    @Test
    void itsSchemasAndItsReadmeAreThoseOfANewJournal() throws IOException {
        var fresh = temp.resolve("fresh");
        JournalFolder.create(fresh, "Fresh");
        for (var name : List.of("README.md", ".gitignore", ".gitattributes")) {
            assertThat(folder.resolve(name)).hasSameBinaryContentAs(fresh.resolve(name));
        }
        assertThat(Workplace.contents(folder.resolve("schema")))
                .isEqualTo(Workplace.contents(fresh.resolve("schema")))
                .hasSizeGreaterThanOrEqualTo(7);
    }

    /** No two rounds of one thought: each entry says something that no other says. */
    @Test
    void everyEntrySaysSomethingOfItsOwn() {
        assertThat(entries())
                .allSatisfy(entry -> assertThat(entry.title()).as(entry.id()).isNotBlank());
        assertThat(entries())
                .allSatisfy(entry -> assertThat(entry.text()).as(entry.title()).isNotEmpty());
        var told = entries().stream()
                .filter(entry -> entry.kind() != Kind.KEPT_RESULT)
                .flatMap(entry -> entry.text().stream())
                .toList();
        assertThat(told).doesNotHaveDuplicates();
        assertThat(entries().stream().map(EntryRecord::kind).collect(Collectors.toSet()))
                .containsExactlyInAnyOrder(Kind.values());
    }

    /** ULID specification: the first 48 bits are milliseconds since 1970, UTC. The sample reads its clock as UTC. */
    @Test
    void idsCarryTheTimesOfTheEntries() {
        assertThat(entries())
                .allSatisfy(entry -> assertThat(
                                LocalDateTime.ofInstant(Ulid.from(entry.id()).getInstant(), ZoneOffset.UTC)
                                        .withSecond(0)
                                        .withNano(0))
                        .as(entry.title())
                        .isEqualTo(entry.at()));
        assertThat(journal.builds())
                .allSatisfy(build -> assertThat(Ulid.from(build.id())
                                .getInstant()
                                .atZone(ZoneOffset.UTC)
                                .toLocalDate())
                        .as(build.name())
                        .isEqualTo(build.begun()));
    }

    @Test
    void aLogBeginsWithItsBuildAndSpansTheTwoYears() {
        assertThat(journal.builds())
                .allSatisfy(
                        build -> assertThat(journal.log(build.id()).get(0).at().toLocalDate())
                                .as(build.name())
                                .isAfterOrEqualTo(build.begun()));
        var times = entries().stream().map(EntryRecord::at).sorted().toList();
        assertThat(times.get(times.size() - 1))
                .isAfter(times.get(0).plusYears(2))
                .isBefore(times.get(0).plusYears(3));
    }

    @Test
    void jointsEndAfterTheyStart() {
        var joints =
                entries().stream().flatMap(entry -> entry.joints().stream()).toList();
        assertThat(joints).hasSizeGreaterThanOrEqualTo(10);
        assertThat(joints).allSatisfy(joint -> {
            joint.handsOffUntil()
                    .ifPresent(end -> assertThat(end).as(joint.name()).isAfter(joint.start()));
            joint.fullyCured()
                    .ifPresent(end -> assertThat(end)
                            .as(joint.name())
                            .isAfterOrEqualTo(joint.handsOffUntil().orElse(joint.start()))
                            .isAfter(joint.start()));
        });
        assertThat(joints.stream().map(JointRecord::material)).doesNotContain("");
    }

    @Test
    void everyPictureIsThereWholeNamedByItsContentAndSaysWhatItShows() throws Exception {
        var shown = new HashSet<Path>();
        var captions = new TreeSet<String>();
        for (var entry : entries()) {
            for (var picture : entry.pictures()) {
                var file = open.pictures().file(picture);
                shown.add(file);
                captions.add(picture.caption());
                var bytes = Files.readAllBytes(file);
                assertThat(hash(bytes)).as("%s", file).isEqualTo(picture.hash());
                assertThat(file.getFileName()).hasToString(picture.hash() + "." + picture.type());
                assertThat(bytes.length).isLessThan(MOST_PICTURE_BYTES);
                assertThat(picture.caption())
                        .as("caption in '%s'", entry.title())
                        .isNotBlank();
                var image = ImageIO.read(file.toFile());
                assertThat(image).as("%s", file).isNotNull();
                assertThat(Math.min(image.getWidth(), image.getHeight())).isGreaterThanOrEqualTo(400);
            }
        }
        assertThat(shown).hasSizeGreaterThanOrEqualTo(40);
        assertThat(captions).hasSizeGreaterThanOrEqualTo(40);
        try (Stream<Path> photos = Files.walk(folder.resolve("photos"))) {
            assertThat(photos.filter(Files::isRegularFile)).containsExactlyInAnyOrderElementsOf(shown);
        }
    }

    @Test
    void openingAndSavingNothingLeavesEveryFileAsItWas() throws Exception {
        var copy = Workplace.copySample(temp.resolve("untouched"));
        try (var again = JournalFolder.open(copy, UserFolders.under(temp.resolve("user")))) {
            for (var build : again.journal().builds()) {
                again.journal().apply(Edit.change("nothing", build, build));
                for (var entry : again.journal().log(build.id())) {
                    again.journal().apply(Edit.change("nothing", entry, entry));
                }
            }
        }
        assertThat(Workplace.contents(copy)).isEqualTo(Workplace.contents(Workplace.sample()));
        assertThat(Workplace.contents(copy)).hasSizeGreaterThan(entries().size());
    }

    /** Lineage joins builds of this journal, in an order in which it can have happened. */
    @Test
    void templatesOfEveryKindGoFromBuildToBuild() throws IOException {
        var templates = journal.templates();
        assertThat(templates.stream().map(TemplateRecord::kind)).contains(Template.Kind.values());
        assertThat(templates).hasSizeGreaterThanOrEqualTo(10);
        assertThat(templates).anySatisfy(each -> assertThat(each.derivedFrom()).isPresent());
        for (var template : templates) {
            var days = Stream.of(template.cameFrom().stream(), template.wentTo().stream(), template.flewOn().stream())
                    .flatMap(each -> each)
                    .toList();
            assertThat(days).as(template.name()).isNotEmpty().allSatisfy(day -> {
                var build = journal.build(day.build()).orElseThrow();
                assertThat(day.name()).isEqualTo(build.name());
                assertThat(day.date()).isAfterOrEqualTo(template.made());
            });
            assertThat(template.flewOn())
                    .allSatisfy(day -> assertThat(journal.log(day.build()))
                            .as(template.name())
                            .anyMatch(entry -> entry.kind() == Kind.FLIGHT
                                    && entry.at().toLocalDate().equals(day.date())));
            template.derivedFrom()
                    .ifPresent(id ->
                            assertThat(templates).anyMatch(other -> other.id().equals(id)));
        }
    }

    @Test
    void everyOutlineOpensAndBelongsToATemplate() throws IOException {
        var shown = new HashSet<Path>();
        for (var template : journal.templates()) {
            if (template.outline().isPresent()) {
                var outline = open.outlines().read(template.outline().get());
                assertThat(outline.width()).as(template.name()).isBetween(50.0, 500.0);
                shown.add(open.outlines().file(template.outline().get()));
            }
        }
        try (Stream<Path> files = Files.walk(folder.resolve("outlines"))) {
            assertThat(files.filter(Files::isRegularFile)).containsExactlyInAnyOrderElementsOf(shown);
        }
    }

    @Test
    void calendarMaterialsRepairsAndTasksAreKept() {
        assertThat(journal.calendar().orElseThrow().week()).hasSizeGreaterThanOrEqualTo(4);
        assertThat(journal.materials()).hasSizeGreaterThanOrEqualTo(3);
        assertThat(entries().stream().filter(entry -> !entry.repairs().isEmpty()))
                .hasSizeGreaterThanOrEqualTo(8);
        assertThat(entries().stream().filter(entry -> !entry.tasks().isEmpty())).hasSizeGreaterThanOrEqualTo(3);
        assertThat(entries().stream().filter(entry -> entry.flights().size() > 1))
                .isNotEmpty();
    }

    /** As the program writes it: a file by hand that differs only in spaces would change wholly at its first edit. */
    @Test
    void everyFileIsSpelledAsTheProgramSpellsIt() throws IOException {
        for (var file : files(".json")) {
            assertThat(JsonFiles.text(JsonFiles.read(file)))
                    .as("%s", folder.relativize(file))
                    .isEqualTo(Files.readString(file));
        }
    }

    /** A part's name is what ties its weighings to it. */
    @Test
    void partsAreNamedOnceAndWeighedUnderTheirNames() {
        for (var build : journal.builds()) {
            var names = build.parts().stream().map(part -> part.name()).toList();
            assertThat(names).as(build.name()).hasSizeGreaterThanOrEqualTo(10).doesNotHaveDuplicates();
            var measured = journal.measurements(build.id()).stream()
                    .map(dated -> dated.what().name())
                    .collect(Collectors.toCollection(() -> new TreeSet<>(String.CASE_INSENSITIVE_ORDER)));
            assertThat(names.stream().filter(measured::contains).count())
                    .as("parts of %s that its log weighs", build.name())
                    .isGreaterThanOrEqualTo(names.size() / 2);
        }
    }

    /** The same tag is written the same way, or searching by it finds half. */
    @Test
    void tagsAreWrittenOneWay() {
        var tags = new TreeMap<String, Set<String>>();
        entries().stream()
                .flatMap(entry -> entry.tags().stream())
                .forEach(tag -> tags.computeIfAbsent(tag.toLowerCase(Locale.ROOT), any -> new TreeSet<>())
                        .add(tag));
        assertThat(tags)
                .isNotEmpty()
                .allSatisfy((lower, ways) -> assertThat(ways).hasSize(1));
    }

    private static List<EntryRecord> entries() {
        return journal.builds().stream()
                .flatMap(build -> journal.log(build.id()).stream())
                .toList();
    }

    private static List<Path> files(String ending) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile)
                    .filter(file -> file.toString().endsWith(ending))
                    .filter(file -> !file.startsWith(folder.resolve("schema")))
                    .toList();
        }
    }

    private static String hash(byte[] bytes) throws Exception {
        return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    }
}
