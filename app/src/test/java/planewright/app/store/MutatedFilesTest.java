package planewright.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import planewright.app.Bench;
import planewright.app.index.Hits.Hit;
import planewright.app.index.Question;
import planewright.app.index.SearchIndex;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.Kept;
import planewright.app.journal.OpenJournal;

/**
 * Every kind of file, spoilt in every way: opening never fails, what cannot be read is set aside with a reason and stays as it
 * is, and everything else is there.
 */
class MutatedFilesTest {
    private static final int MUTATIONS = Integer.getInteger("planewright.mutations", 600);
    private static final List<String> KINDS =
            List.of("build", "entry", "outline", "procedure", "set-up", "calendar", "materials");
    private static final List<String> NAMES = List.of(
            ".json",
            "..json",
            "con.json",
            "-rf.json",
            " .json",
            "two\nlines.json",
            "\u0001\u007F.json",
            "$(touch x);'\".json",
            "%00%2e%2e%2f.json",
            "Lo\u0308we.json",
            "L\u00F6we.json",
            "\u202Enosj.json",
            "\uD83C\uDF3C.json",
            "x".repeat(240) + ".json",
            "ENTRY.JSON",
            "C:\\entry.json",
            "build.json");

    private final long seed = Long.getLong("planewright.seed", System.nanoTime());
    private final Random random = new Random(seed);
    private final BuildRecord sound = Bench.build("Crane");
    private final EntryRecord soundEntry = Bench.entry(sound, "Sound as ever");
    private final Map<Path, Kept> spoilt = new LinkedHashMap<>();

    @TempDir
    private Path temp;

    private Path journal;
    private Path build;

    @BeforeEach
    void makeJournal() throws IOException {
        journal = temp.resolve("journal");
        var records = new ArrayList<Kept>(KINDS.stream().map(Bench::full).toList());
        var owner = (BuildRecord) records.get(0);
        var entry = Bench.fullEntry(owner);
        var old = Bench.entry(owner, "Of schema one").withTags(List.of("maiden"));
        records.set(1, entry);
        records.add(old);
        try (var open = Bench.newJournal(journal)) {
            for (var record : records) {
                open.journal().apply(Edit.add("add", record));
            }
            open.journal().apply(Edit.add("add", sound));
            open.journal().apply(Edit.add("add", soundEntry));
        }
        var first = Bench.only(journal, old.id() + ".json");
        Files.writeString(
                first,
                Files.readString(first)
                        .replace("\"schema\": 2", "\"schema\": 1")
                        .replaceFirst("\n}", ",\n  \"flight\": {\n    \"conditions\": \"calm\"\n  }\n}"));
        try (var open = Bench.open(journal)) {
            build = open.folderOf(owner);
            assertThat(open.setAside()).isEmpty();
        }
        for (var record : records) {
            var file = record instanceof BuildRecord ? build.resolve(RecordFiles.HEAD) : fileOf(record);
            spoilt.put(file, FileKind.of(record).read(JsonFiles.read(file)));
        }
    }

    private Path fileOf(Kept record) throws IOException {
        try (Stream<Path> files = Files.walk(journal)) {
            for (var file :
                    files.filter(each -> each.toString().endsWith(".json")).toList()) {
                if (!file.startsWith(journal.resolve("schema"))
                        && Files.readString(file).contains("\"id\": \"" + record.id() + "\"")
                        && !file.endsWith(RecordFiles.HEAD)) {
                    return file;
                }
            }
        }
        return journal.resolve(record.id() + ".json");
    }

    @Test
    void aSpoiltFileIsSetAsideOrStillSaysARecord() throws IOException {
        var aside = new EnumMap<Mutation, Integer>(Mutation.class);
        var files = List.copyOf(spoilt.keySet());
        int valid = 0;
        for (int i = 0; i < MUTATIONS; i++) {
            var mutation = Mutation.values()[i % Mutation.values().length];
            var file = files.get(random.nextInt(files.size()));
            var content = Files.readAllBytes(file);
            var name = file.startsWith(build.resolve("entries")) && i % 3 == 0
                    ? name()
                    : file.getFileName().toString();
            var bad = file.resolveSibling(name);
            var bytes = mutation.of(content, random);
            Files.delete(file);
            Files.write(bad, bytes);
            if (isSetAside(bad, file, mutation + " of " + bad + ", mutation " + i + ", seed " + seed)) {
                aside.merge(mutation, 1, Integer::sum);
            } else {
                valid++;
            }
            assertThat(bad).as("left as it was, seed %d", seed).hasBinaryContent(bytes);
            Files.delete(bad);
            Files.write(file, content);
        }
        assertThat(aside.keySet())
                .as("kinds of damage that were noticed, seed %d", seed)
                .containsExactly(Mutation.values());
        assertThat(valid).as("still a record, seed %d", seed).isLessThan(MUTATIONS / 2);
        System.out.println(
                MUTATIONS + " mutations, seed " + seed + ": " + valid + " still said a record, set aside " + aside);
    }

    private String name() {
        return NAMES.get(random.nextInt(NAMES.size()));
    }

    /** Opens the journal with one bad file and checks everything else. */
    private boolean isSetAside(Path bad, Path was, String what) throws IOException {
        var own = spoilt.get(was);
        try (var open = Bench.open(journal)) {
            var all = open.journal();
            assertThat(all.log(sound.id())).as(what).containsExactly(soundEntry);
            assertThat(open.setAside()).as(what).allSatisfy(each -> {
                assertThat(each.reason()).isNotBlank();
                assertThat(each.file().equals(bad)
                                || own instanceof BuildRecord && each.file().startsWith(build))
                        .as("%s set aside", each.file())
                        .isTrue();
            });
            spoilt.forEach((file, record) -> {
                if (!file.equals(was) && !(own instanceof BuildRecord && file.startsWith(build))) {
                    assertThat(shown(all, record)).as("%s: %s", what, file).isTrue();
                }
            });
            if (open.setAside().stream().anyMatch(each -> each.file().equals(bad))) {
                return true;
            }
            var kind = FileKind.of(own);
            var now = kind.read(JsonFiles.read(bad));
            assertThat(shown(all, now)).as(what).isTrue();
            assertThat(JsonFiles.text(kind.write(kind.read(kind.write(now)))))
                    .as(what)
                    .isEqualTo(JsonFiles.text(kind.write(now)));
            return false;
        }
    }

    private static boolean shown(OpenJournal journal, Kept record) {
        return record instanceof EntryRecord entry
                ? journal.log(entry.build()).contains(entry)
                : journal.record(record).filter(record::equals).isPresent();
    }

    @Test
    void aSpoiltHeadIsRefusedNamingItOrStillSaysAJournal() throws IOException {
        var head = journal.resolve(JournalFolder.HEAD);
        var content = Files.readAllBytes(head);
        int refused = 0;
        for (int i = 0; i < MUTATIONS / 10; i++) {
            var mutation = Mutation.values()[i % Mutation.values().length];
            var bytes = mutation.of(content, random);
            Files.write(head, bytes);
            try (var open = Bench.open(journal)) {
                assertThat(open.journal().log(sound.id()))
                        .as("%s, seed %d", mutation, seed)
                        .containsExactly(soundEntry);
            } catch (JournalRefused reason) {
                refused++;
                assertThat(reason).hasMessageContainingAll(journal.toString(), JournalFolder.HEAD);
            }
            assertThat(head).hasBinaryContent(bytes);
        }
        assertThat(refused).as("seed %d", seed).isPositive();
    }

    @Test
    void aSpoiltCatalogueChangesNothing() throws IOException {
        var catalogue = catalogue();
        var content = Files.readAllBytes(catalogue);
        for (int i = 0; i < MUTATIONS / 10; i++) {
            Files.write(catalogue, damaged(content, i));
            try (var open = JournalFolder.openAsKnown(journal, UserFolders.under(temp.resolve("journal-user")))) {
                assertThat(open.isKnown()).as("seed %d", seed).isFalse();
                open.look((done, all) -> {});
                spoilt.values()
                        .forEach(record -> assertThat(shown(open.journal(), record))
                                .as("%s, seed %d", record.id(), seed)
                                .isTrue());
            }
        }
    }

    private Path catalogue() throws IOException {
        try (Stream<Path> files = Files.walk(temp.resolve("journal-user"))) {
            return files.filter(file -> file.getFileName().toString().startsWith("catalogue-"))
                    .findFirst()
                    .orElseThrow();
        }
    }

    @Test
    void aSpoiltIndexIsMadeAnew() throws IOException {
        var cache = temp.resolve("index");
        try (var open = Bench.open(journal)) {
            SearchIndex.open(cache, open.journal(), (done, all) -> {}).close();
            for (int i = 0; i < MUTATIONS / 20; i++) {
                var files = indexFiles(cache);
                var file = files.get(random.nextInt(files.size()));
                Files.write(file, damaged(Files.readAllBytes(file), i));
                try (var index = SearchIndex.open(cache, open.journal(), (done, all) -> {})) {
                    assertThat(index.find(Question.of("sound ever ").most(9)).hits())
                            .as("%s, seed %d", file, seed)
                            .extracting(Hit::entryId)
                            .containsExactly(soundEntry.id());
                }
            }
        }
    }

    private byte[] damaged(byte[] content, int number) {
        return switch (number % 3) {
            case 0 -> Mutation.CUT.of(content, random);
            case 1 -> Mutation.BITS.of(changedByOne(content), random);
            default -> changedByOne(content);
        };
    }

    private byte[] changedByOne(byte[] content) {
        var bytes = content.clone();
        bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
        return bytes;
    }

    private static List<Path> indexFiles(Path cache) throws IOException {
        try (Stream<Path> files = Files.walk(cache)) {
            return files.filter(Files::isRegularFile)
                    .filter(file -> !file.endsWith("write.lock"))
                    .sorted()
                    .toList();
        }
    }
}
