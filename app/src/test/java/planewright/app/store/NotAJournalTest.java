package planewright.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import planewright.app.Bench;

class NotAJournalTest {
    @TempDir
    private Path temp;

    @Test
    void aFolderWithoutAJournalIsRefusedAndLeftAsItIs() throws IOException {
        assertRefused(temp, temp.toString(), "no journal", "journal.json");
        try (var files = Files.list(temp)) {
            assertThat(files).isEmpty();
        }
        assertRefused(temp.resolve("nowhere"), "nowhere", "no journal");
        assertRefused(Files.writeString(temp.resolve("file"), "x"), "no journal");
        Files.createDirectories(temp.resolve("odd/journal.json"));
        assertRefused(temp.resolve("odd"), "no journal");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "minReader": 3               | "minReader": "1"       | 'minReader'
            "minReader": 3               | "least": 1             | 'minReader' is missing
            planewright journal          | shopping list          | 'format', shopping list
            "name": "Loft"               | "nom": "Loft"          | 'name' is missing
            "id":                        | "uuid":                | 'id' is missing
            {                            | {{                     | not JSON
            """)
    void aHeadThatCannotBeUsedIsRefusedWithWhatIsWrong(String part, String instead, String told) throws IOException {
        var journal = temp.resolve("journal");
        JournalFolder.create(journal, "Loft");
        var head = journal.resolve("journal.json");
        var good = Files.readString(head);
        assertThat(good).contains(part);
        Files.writeString(head, good.replace(part, instead));
        assertRefused(journal, ("journal.json, " + told).split(", "));
        Files.writeString(head, good);
        try (var open = Bench.open(journal)) {
            assertThat(open.journal().name())
                    .as("the refusal has let go of the lock")
                    .isEqualTo("Loft");
        }
    }

    @Test
    void aNewerSchemaThatOldReadersMayReadIsOpened() throws IOException {
        var journal = temp.resolve("journal");
        JournalFolder.create(journal, "Loft");
        var head = journal.resolve("journal.json");
        Files.writeString(head, Files.readString(head).replace("\"schema\": 1", "\"schema\": 2, \"new\": []"));
        try (var open = Bench.open(journal)) {
            assertThat(open.journal().name()).isEqualTo("Loft");
        }
    }

    @Test
    void aNewJournalOverwritesNothingAndHasAName() throws IOException {
        var folder = Files.createDirectories(temp.resolve("full"));
        Files.writeString(folder.resolve("README.md"), "mine");
        assertThatExceptionOfType(JournalRefused.class)
                .isThrownBy(() -> JournalFolder.create(folder, "Loft"))
                .withMessageContainingAll(folder.toString(), "not empty");
        assertThat(folder.resolve("README.md")).hasContent("mine");
        assertThatExceptionOfType(JournalRefused.class)
                .isThrownBy(() -> JournalFolder.create(temp.resolve("other"), "  "))
                .withMessageContaining("name");
        assertThat(temp.resolve("other")).doesNotExist();
    }

    private static void assertRefused(Path folder, String... told) {
        assertThatExceptionOfType(JournalRefused.class)
                .isThrownBy(() -> Bench.open(folder).close())
                .satisfies(refused -> assertThat(refused.getMessage()).contains(told));
    }
}
