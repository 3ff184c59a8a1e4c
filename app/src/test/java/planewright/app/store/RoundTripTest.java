package planewright.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.app.Bench;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.Kept;
import planewright.app.journal.PartRecord;

class RoundTripTest {
    @TempDir
    private Path temp;

    private final BuildRecord build = Bench.fullBuild();
    private final EntryRecord entry = Bench.fullEntry(build);

    @Test
    void whatWasSavedIsReadBackWhole() throws IOException {
        var journal = journalWith(build, entry);
        try (var open = Bench.open(journal)) {
            assertThat(open.setAside()).isEmpty();
            assertThat(open.journal().name()).isEqualTo("Loft workshop");
            assertThat(open.journal().builds()).map(RoundTripTest::text).containsExactly(text(build));
            assertThat(open.journal().log(build.id())).map(RoundTripTest::text).containsExactly(text(entry));
            assertThat(open.journal().log(build.id()).get(0).measurements()).isEqualTo(entry.measurements());
        }
    }

    @Test
    void readingAndWritingAFileGivesTheSameBytes() throws IOException {
        var journal = journalWith(build, entry);
        assertThat(Bench.records(journal)).hasSize(2);
        for (var file : Bench.records(journal).entrySet()) {
            assertThat(JsonFiles.text(JsonFiles.read(journal.resolve(file.getKey()))))
                    .isEqualTo(file.getValue());
        }
    }

    @Test
    void filesAreNamedAndLaidOutAsTheJournalsReadmeSays() throws IOException {
        var journal = journalWith(build, entry);
        var shortId = build.id().substring(20).toLowerCase(Locale.ROOT);
        assertThat(Bench.records(journal).keySet())
                .satisfiesExactly(
                        file -> assertThat(file).isEqualTo("builds/grey-heron-" + shortId + "/build.json"),
                        file -> assertThat(file)
                                .matches("builds/grey-heron-" + shortId + "/entries/20\\d\\d/" + entry.id()
                                        + "\\.json"));
        assertThat(Bench.records(journal))
                .allSatisfy((file, text) -> assertThat(text)
                        .doesNotContain("\r", "\uFEFF", "null")
                        .matches("(?s)\\{\n  \"schema\": [12],\n  \"id\": \".*")
                        .endsWith("\n}\n"));
        assertThat(Files.readString(journal.resolve("README.md"))).contains("build.json");
        assertThat(journal.resolve("schema/entry-1.json")).exists();
    }

    @Test
    void anEntryLiesUnderTheYearItsIdTellsAndStaysThereWhateverItsDate() throws IOException {
        // ULID specification: the first ten characters, base 32, are milliseconds since 1970; 8 January 2024 here
        // specification)
        var old = new EntryRecord(
                "01HKM3D8000000000000000000",
                build.id(),
                Bench.EVENING.withYear(1999),
                entry.kind(),
                "found in a drawer",
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
        var journal = journalWith(build, old);
        var file = Bench.only(journal, old.id() + ".json");
        assertThat(file.getParent()).endsWith(Path.of("entries", "2024"));
        change(journal, old, old.withAt(Bench.EVENING.plusYears(3)));
        assertThat(Bench.only(journal, old.id() + ".json")).isEqualTo(file);
    }

    @Test
    void aBuildKeepsItsFolderWhateverItsName() throws IOException {
        var journal = journalWith(build, entry);
        var before = Bench.records(journal).keySet();
        change(journal, build, build.withName("Löwe / ..\\con?"));
        assertThat(Bench.records(journal).keySet()).isEqualTo(before);
    }

    @Test
    void undoGivesEveryByteBack() throws IOException {
        var journal = journalWith(build, entry);
        var before = Bench.records(journal);
        try (var open = Bench.open(journal)) {
            var read = open.journal().entry(entry.build(), entry.id()).orElseThrow();
            open.journal()
                    .apply(Edit.change(
                            "text", read, read.withText(List.of("all new")).withTags(List.of())));
            var changed = open.journal().entry(entry.build(), entry.id()).orElseThrow();
            open.journal().apply(Edit.change("values", changed, changed.withMeasurements(List.of())));
            open.journal().apply(Edit.change("name", build(open), build(open).withName("Else")));
            assertThat(Bench.records(journal)).isNotEqualTo(before);
            open.journal().undo();
            open.journal().undo();
            open.journal().undo();
            assertThat(Bench.records(journal)).isEqualTo(before);
        }
    }

    @Test
    void anEditThatChangesNothingWritesNothing() throws IOException {
        var journal = journalWith(build, entry);
        var file = Bench.only(journal, entry.id() + ".json");
        var inode = Files.readAttributes(file, BasicFileAttributes.class).fileKey();
        try (var open = Bench.open(journal)) {
            var read = open.journal().entry(entry.build(), entry.id()).orElseThrow();
            open.journal().apply(Edit.change("nothing", read, read.withTitle(read.title())));
        }
        assertThat(Files.readAttributes(file, BasicFileAttributes.class).fileKey())
                .isEqualTo(inode);
    }

    @Test
    void whatWasJustSavedCanBeChangedAgainWithoutOpeningAnew() throws IOException {
        try (var open = Bench.newJournal(temp.resolve("journal"))) {
            var crooked = new PartRecord(
                    "k3f9q2",
                    "pod",
                    "",
                    Optional.of(Measured.of(100.0 / 3, Units.GRAM)),
                    Optional.of(Measured.of(0.1 + 0.2, Units.METRE)),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty());
            var odd = build.withName("Lo\u0308we").withParts(List.of(crooked));
            var told = Bench.fullEntry(odd).withTitle("Lo\u0308wenzahn");
            open.journal().apply(Edit.add("build", odd));
            open.journal().apply(Edit.add("entry", told));
            open.journal().apply(Edit.change("layout", odd, odd.withLayout("delta")));
            open.journal().apply(Edit.change("tags", told, told.withTags(List.of("grass"))));
            open.journal().undo();
        }
        try (var open = Bench.open(temp.resolve("journal"))) {
            assertThat(open.setAside()).isEmpty();
            assertThat(build(open).name()).as("files are in NFC").isEqualTo("L\u00f6we");
            assertThat(build(open).layout()).isEqualTo("delta");
        }
    }

    @Test
    void aPartsValuesAreKeptToTheLastDigitThatWasTyped() throws IOException {
        var part = new PartRecord(
                "k3f9q2",
                "pod",
                "",
                Optional.of(Measured.of(1234.567, 0.25, Units.GRAM)),
                Optional.of(Measured.of(-1234.5625, Units.MILLIMETRE)),
                Optional.of(Measured.of(0.000125, Units.METRE)),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        var journal = journalWith(build.withParts(List.of(part)), entry);
        try (var open = Bench.open(journal)) {
            var read = build(open).parts().get(0);
            assertThat(read.mass().orElseThrow().in(Units.GRAM)).isEqualTo(1234.567);
            assertThat(read.x().orElseThrow().in(Units.MILLIMETRE)).isEqualTo(-1234.5625);
            assertThat(read.y().orElseThrow().in(Units.METRE)).isEqualTo(0.000125);
        }
    }

    @Test
    void aBuildMadeAndUndoneLeavesNothingToComplainAbout() throws IOException {
        var journal = temp.resolve("journal");
        try (var open = Bench.newJournal(journal)) {
            open.journal().apply(Edit.add("build", build));
            open.journal().apply(Edit.add("entry", entry));
            open.journal().undo();
            open.journal().undo();
        }
        try (var open = Bench.open(journal)) {
            assertThat(open.journal().builds()).isEmpty();
            assertThat(open.setAside()).isEmpty();
        }
    }

    private Path journalWith(BuildRecord build, EntryRecord entry) throws IOException {
        var folder = temp.resolve("journal");
        try (var open = Bench.newJournal(folder)) {
            open.journal().apply(Edit.add("add build", build));
            open.journal().apply(Edit.add("add entry", entry));
        }
        return folder;
    }

    private static void change(Path journal, Kept before, Kept after) throws IOException {
        try (var open = Bench.open(journal)) {
            var same = before instanceof BuildRecord
                    ? build(open)
                    : open.journal()
                            .entry(((EntryRecord) before).build(), before.id())
                            .orElseThrow();
            var changed = after instanceof BuildRecord renamed ? build(open).withName(renamed.name()) : after;
            open.journal().apply(Edit.change("change", same, changed));
        }
    }

    private static BuildRecord build(JournalFolder open) {
        return open.journal().builds().get(0);
    }

    private static String text(Kept record) {
        return JsonFiles.text(RecordFiles.json(record));
    }
}
