package planewright.app.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import planewright.app.Bench;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.MeasurementRecord;
import planewright.app.store.JournalFolder;

class CsvMeasurementsTest {
    /** As RFC 4180 and ISO 8601 say. */
    static final CsvForm USUAL = new CsvForm(Map.of(), ',', Optional.empty());

    @TempDir
    private Path folder;

    private JournalFolder opened;
    private BuildRecord heron;
    private BuildRecord grebe;

    @BeforeEach
    void journal() throws IOException {
        opened = Bench.newJournal(folder.resolve("journal"));
        heron = Bench.build("Grey heron");
        grebe = Bench.build("Grebe");
        opened.journal().apply(Edit.add("build", heron));
        opened.journal().apply(Edit.add("build", grebe));
    }

    @AfterEach
    void close() throws IOException {
        opened.close();
    }

    @Test
    void rowsBecomeMeasurementsOfTheirDays() throws Exception {
        var told = bring("""
                Date,Name,Value,Unit,±,Method
                2025-03-14,left wing panel,3 1/2,oz,1/8,kitchen scale
                2025-03-14T21:00,"fin, left",0.850,in,,
                2025-03-15,note of the motor,2,,,by ear
                2025-03-15,spar,212 g ± 1 g,,,
                """);
        assertThat(told).isEqualTo(new Brought(4, 2, List.of(), List.of()));
        assertThat(texts(heron))
                .containsExactly(
                        "2025-03-14 left wing panel: 3 1/2 oz ± 1/8 oz (kitchen scale)",
                        "2025-03-14 fin, left: 0.850 in ()",
                        "2025-03-15 note of the motor: 2 (by ear)",
                        "2025-03-15 spar: 212 g ± 1 g ()");
        assertThat(opened.journal().undo().map(Edit::what)).contains("bring in measurements");
        assertThat(texts(heron)).isEmpty();
    }

    /** RFC 4180, section 2: lines end in CRLF (1), the last may not (2), quoted cells hold line breaks (6) and quotes (7). */
    @Test
    void fileIsReadAsRfc4180Says() throws Exception {
        var told = bring("date,name,value,unit\r\n2025-03-14,\"the \"\"long\"\"\r\nspar\",1,m\r\n2025-03-14,rib,2,mm");
        assertThat(told.things()).isEqualTo(2);
        assertThat(texts(heron)).containsExactly("2025-03-14 the \"long\" spar: 1 m ()", "2025-03-14 rib: 2 mm ()");
    }

    @Test
    void aMarkOfByteOrderIsNoPartOfTheFirstName() throws Exception {
        assertThat(bring("\uFEFFdate,name,value\n2025-03-14,spar,1 m\n").things())
                .isEqualTo(1);
    }

    @Test
    void everyBadRowIsToldWithItsLineAndNothingIsWritten() throws Exception {
        var told = bring("""
                date,name,value,unit,±
                2025-03-14,good,1,g,

                2025-02-30,no day,1,g,
                2025-03-14,,1,g,
                2025-03-14,"over
                two lines",many,g,
                2025-03-14,short,1
                2025-03-14,stone,1,furlong,
                2025-03-14,below,1,g,-1
                2025-03-14,two units,1 g,mm,
                14/03/2025,other date,1,g,
                """);
        assertThat(told.things()).isZero();
        assertThat(told.leftOut())
                .extracting(LeftOut::what)
                .containsExactly("line 4", "line 5", "line 6", "line 8", "line 9", "line 10", "line 11", "line 12");
        assertThat(told.leftOut().get(0).reason()).contains("2025-02-30").contains("accepted");
        assertThat(told.leftOut().get(1).reason()).contains("name is empty");
        assertThat(told.leftOut().get(2).reason()).contains("'many'");
        assertThat(told.leftOut().get(3).reason()).isEqualTo("has 3 cells; accepted: 5");
        assertThat(told.leftOut().get(4).reason()).contains("'furlong' is not a unit");
        assertThat(told.leftOut().get(5).reason()).contains("accepted: 0 or more");
        assertThat(told.leftOut().get(6).reason()).contains("'1 g'").contains("column of its own");
        assertThat(told.leftOut().get(7).reason()).contains("14/03/2025");
        assertThat(texts(heron)).isEmpty();
        assertThat(opened.journal().lastDone().orElseThrow().what()).isEqualTo("build");
    }

    @Test
    void goodRowsAreWrittenWhereBadOnesAreToBeSkipped() throws Exception {
        var file = file("date,name,value\n2025-03-14,good,1 g\nyesterday,bad,2 g\n");
        var told = bring(file, USUAL, Optional.of(heron), true);
        assertThat(told.things()).isEqualTo(1);
        assertThat(told.leftOut()).extracting(LeftOut::what).containsExactly("line 3");
        assertThat(texts(heron)).containsExactly("2025-03-14 good: 1 g ()");
    }

    @Test
    void columnsMayHaveOtherNamesAnotherSeparatorAndDatesOfACountry() throws Exception {
        var file = file("Tag;Teil;Gewicht;date;unit\n14.03.2025;Flügel;3,5;-;g\n");
        var form = new CsvForm(
                Map.of(Column.DATE, "Tag", Column.NAME, "teil", Column.VALUE, "Gewicht"),
                ';',
                Optional.of(DateTimeFormatter.ofPattern("dd.MM.uuuu", Locale.ROOT)));
        assertThat(bring(file, form, Optional.of(heron), false).things()).isEqualTo(1);
        assertThat(texts(heron)).containsExactly("2025-03-14 Flügel: 3,5 g ()");
    }

    @Test
    void aColumnMaySayWhichBuildIsMeant() throws Exception {
        var file = file(
                "build,date,name,value\ngrebe,2025-03-14,spar,1 g\n,2025-03-14,rib,2 g\nNobody,2025-03-14,x,3 g\n");
        var told = bring(file, USUAL, Optional.of(heron), true);
        assertThat(told.entries()).isEqualTo(2);
        assertThat(told.leftOut()).containsExactly(new LeftOut("line 4", "build 'Nobody' is not in the journal"));
        assertThat(texts(grebe)).containsExactly("2025-03-14 spar: 1 g ()");
        assertThat(texts(heron)).containsExactly("2025-03-14 rib: 2 g ()");
        assertThat(bring(file, USUAL, Optional.empty(), false).leftOut())
                .extracting(LeftOut::reason)
                .anyMatch(reason -> reason.startsWith("no build is named"));
    }

    @Test
    void whatTheDayHasAlreadyIsNotWrittenAgain() throws Exception {
        var table = "date,name,value\n2025-03-14,spar,1 g\n2025-03-14,rib,2 g\n";
        bring(table);
        var again = bring(table + "2025-03-15,spar,1 g\n");
        assertThat(again.things()).isEqualTo(1);
        assertThat(again.known()).extracting(LeftOut::what).containsExactly("line 2", "line 3");
        assertThat(texts(heron)).hasSize(3);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '~',
            quoteCharacter = '`',
            value = {
                "name,value                       ~ no column for date; its columns: name | value",
                "date;name;value                  ~ another sign than ','",
                "date,day,name,value              ~ more than one column for date: date, day",
                "`date,name,value\n\"open,1,2`    ~ not CSV as RFC 4180 describes it",
                "`date,name,value\n\"a\"b,1,2`    ~ line: 2",
                "``                               ~ is empty"
            })
    void aTableThatCannotBeUnderstoodIsRefused(String text, String reason) {
        assertThatThrownBy(() -> bring(text))
                .isInstanceOf(ExchangeRefused.class)
                .hasMessageContaining(reason.strip());
        assertThat(texts(heron)).isEmpty();
    }

    @Test
    void whatIsNoTextIsRefused() throws Exception {
        var file = Files.write(
                folder.resolve("latin.csv"),
                "date,name,value\n2025-03-14,Flügel,1\n".getBytes(StandardCharsets.ISO_8859_1));
        assertThatThrownBy(() -> bring(file, USUAL, Optional.of(heron), true))
                .isInstanceOf(ExchangeRefused.class)
                .hasMessageContaining("is not UTF-8 text");
        assertThatThrownBy(() -> bring(folder.resolve("none.csv"), USUAL, Optional.of(heron), true))
                .hasMessageContaining("none.csv is not there");
    }

    @Test
    void aFileOfCellsWithoutEndIsRefusedUnread() throws Exception {
        var file = Files.write(folder.resolve("commas.csv"), new byte[17 << 20]);
        assertThatThrownBy(() -> bring(file, USUAL, Optional.of(heron), true))
                .isInstanceOf(ExchangeRefused.class)
                .hasMessageContaining("17 MB; accepted: up to 16 MB");
        var long1 = "x".repeat(10_001);
        assertThat(bring("date,name,value\n2025-03-14," + long1 + ",1 g\n").leftOut())
                .extracting(LeftOut::reason)
                .containsExactly("has a cell of more than 10000 characters");
    }

    @Test
    void unknownColumnsAreTold() {
        assertThat(CsvMeasurements.columns(Map.of("±", "Error", "VALUE", "Weight")))
                .isEqualTo(Map.of(Column.PLUS_MINUS, "Error", Column.VALUE, "Weight"));
        assertThatThrownBy(() -> CsvMeasurements.columns(Map.of("colour", "x")))
                .hasMessage(
                        "column 'colour' is not known; accepted: build, date, name, value, unit, plus-minus, method");
    }

    private Brought bring(String text) throws IOException {
        return bring(file(text), USUAL, Optional.of(heron), false);
    }

    private Brought bring(Path file, CsvForm form, Optional<BuildRecord> otherwise, boolean skipBad)
            throws IOException {
        return CsvMeasurements.bring(
                opened.journal(),
                file,
                form,
                CsvMeasurements.buildsOf(opened.journal(), otherwise),
                skipBad,
                Watch.NONE);
    }

    private Path file(String text) throws IOException {
        return Files.writeString(folder.resolve("table.csv"), text);
    }

    private List<String> texts(BuildRecord build) {
        return opened.journal().log(build.id()).stream()
                .flatMap(entry -> entry.measurements().stream().map(each -> text(entry, each)))
                .toList();
    }

    private static String text(EntryRecord entry, MeasurementRecord each) {
        return entry.at().toLocalDate() + " " + each.name() + ": "
                + each.quantity().text() + " (" + each.method() + ")";
    }
}
