package planewright.app.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import planewright.api.quantity.Units;
import planewright.app.Bench;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.MeasurementRecord;
import planewright.app.store.JournalFolder;
import planewright.shared.quantity.Written;

class MeasurementTableTest {
    @TempDir
    private Path folder;

    private JournalFolder opened;
    private BuildRecord heron;
    private EntryRecord entry;

    @BeforeEach
    void journal() throws IOException {
        opened = Bench.newJournal(folder.resolve("journal"));
        heron = Bench.build("Grey \"heron\", second");
        entry = Bench.entry(heron, "Weighed")
                .withMeasurements(List.of(
                        measurement("wing, left", new Written("3 1/2", Units.INCH, Optional.of("1/16")), "steel\nrule"),
                        measurement("=HYPERLINK(\"x\")", new Written("-0.850", Units.DEGREE, Optional.empty()), "@me"),
                        measurement("'=quoted", new Written("2", Units.NUMBER, Optional.empty()), "")));
        opened.journal().apply(Edit.add("build", heron));
        opened.journal().apply(Edit.add("entry", entry));
        opened.journal().apply(Edit.add("build", Bench.build("Grebe")));
    }

    @AfterEach
    void close() throws IOException {
        opened.close();
    }

    /** RFC 4180, section 2, rules 1 and 5 to 7. */
    @Test
    void tableIsWrittenAsRfc4180Says() throws Exception {
        assertThat(take(folder.resolve("out.csv")).things()).isEqualTo(3);
        var start = "\"Grey \"\"heron\"\", second\",2025-03-14T20:15,";
        assertThat(Files.readString(folder.resolve("out.csv")))
                .isEqualTo("build,date,name,value,unit,plus or minus,method,decimal,entry\r\n"
                        + start + "\"wing, left\",3 1/2,in,1/16,\"steel\nrule\",3.5," + entry.id() + "\r\n"
                        + start + "\"'=HYPERLINK(\"\"x\"\")\",-0.850,°,,'@me,-0.85," + entry.id() + "\r\n"
                        + start + "''=quoted,2,,,,2," + entry.id() + "\r\n");
    }

    @Test
    void whatWentOutComesInAgain() throws Exception {
        take(folder.resolve("out.csv"));
        var known = bring();
        assertThat(known.things()).isZero();
        assertThat(known.known()).hasSize(3);
        opened.journal().apply(Edit.remove("entry", entry));
        assertThat(bring()).isEqualTo(new Brought(3, 1, List.of(), List.of()));
        assertThat(opened.journal().log(heron.id()).get(0).measurements())
                .usingRecursiveFieldByFieldElementComparatorIgnoringFields("id")
                .isEqualTo(entry.measurements());
    }

    @Test
    void aFileThatIsThereStays() throws Exception {
        var mine = Files.writeString(folder.resolve("out.csv"), "mine");
        assertThatThrownBy(() -> take(mine)).isInstanceOf(ExchangeRefused.class);
        assertThat(mine).hasContent("mine");
    }

    private Taken take(Path file) throws IOException {
        return MeasurementTable.take(opened.journal(), opened.journal().builds(), file, false, Watch.NONE);
    }

    private Brought bring() throws IOException {
        return CsvMeasurements.bring(
                opened.journal(),
                folder.resolve("out.csv"),
                CsvMeasurementsTest.USUAL,
                CsvMeasurements.buildsOf(opened.journal(), Optional.empty()),
                false,
                Watch.NONE);
    }

    private static MeasurementRecord measurement(String name, Written quantity, String method) {
        return MeasurementRecord.of(name, quantity, method);
    }
}
