package planewright.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import planewright.api.journal.Life;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.app.Bench;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.PartRecord;
import planewright.app.synthetic.SyntheticJournal;

/** What comes back is what was written: a build known from the catalogue is the build of its file. */
class RecordBytesTest {
    private static final RecordBytes<BuildRecord> BUILDS = new RecordBytes<>(BuildRecord.class);

    @TempDir
    private Path temp;

    @Test
    void aBuildWithEverythingComesBack() throws IOException {
        assertComesBack(Bench.fullBuild());
    }

    @Test
    void inventedBuildsComeBackAsTheirFilesSayThem() throws IOException {
        var journal = temp.resolve("journal");
        SyntheticJournal.of(8, 2, 0).write(journal);
        try (var open = JournalFolder.open(journal, UserFolders.under(temp))) {
            assertThat(open.journal().builds()).hasSize(8).allSatisfy(RecordBytesTest::assertComesBack);
        }
    }

    @Test
    void oddWordsAndNumbersComeBack() throws IOException {
        var part = new PartRecord(
                "a1",
                "½\" dowel, «hard» \uD83D\uDEE9",
                "",
                Optional.of(Measured.<Mass>of(0.1 + 0.2, Double.MIN_VALUE, Units.OUNCE)),
                Optional.of(Measured.<Length>of(-1e-300, Units.INCH)),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        assertComesBack(new BuildRecord(
                "01DC7GRT809R7A314RRXKPZ4PK",
                "Zeisig\n2",
                Life.GONE,
                "",
                "",
                LocalDate.of(-44, 3, 15),
                List.of("", "two\nlines"),
                List.of(part, part),
                Optional.empty()));
    }

    private static void assertComesBack(BuildRecord build) throws IOException {
        var bytes = new ByteArrayOutputStream();
        BUILDS.write(build, new DataOutputStream(bytes));
        assertThat(BUILDS.read(ByteBuffer.wrap(bytes.toByteArray()))).isEqualTo(build);
    }

    @Test
    void theShapeNamesEveryComponent() {
        assertThat(BUILDS.shape())
                .startsWith("BuildRecord(id text, name text, life [")
                .contains("parts list of PartRecord(id text", "mass maybe measured", "planform maybe Planform(");
    }

    private record WithArray(int[] numbers) {}

    @Test
    void aKindThatCannotBeWrittenIsRefusedByName() {
        assertThatThrownBy(() -> new RecordBytes<>(WithArray.class))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("int[]");
    }
}
