package planewright.app.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import planewright.api.journal.Entry;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.app.Bench;
import planewright.app.journal.Comparison.Row;
import planewright.app.journal.Comparison.Side;
import planewright.app.journal.Comparison.What;
import planewright.shared.quantity.QuantityProblem;
import planewright.shared.quantity.QuantityText;
import planewright.shared.quantity.UnitChoice;

/** Two builds side by side. */
class ComparisonTest {
    private final Locale before = Locale.getDefault(Locale.Category.FORMAT);
    private final BuildRecord old =
            Bench.build("Grey heron").withLayout("canard").withParts(List.of(part("fin", 30)));
    private final BuildRecord young =
            Bench.build("Red crane").withLayout("delta").withParts(List.of(part("fin", 33)));
    private final OpenJournal journal = Bench.inMemory(
            List.of(old, young),
            List.of(
                    entry(old, "all-up mass", "1000 g ± 3 g", "balance point", "200 mm"),
                    entry(young, "All-up mass", "2.5 lb ± 4 g", "Balance point", "8 in"),
                    entry(young, "fin", "31 g", "elevon up", "12°")));

    @BeforeEach
    void english() {
        Locale.setDefault(Locale.Category.FORMAT, Locale.ENGLISH);
    }

    @AfterEach
    void asBefore() {
        Locale.setDefault(Locale.Category.FORMAT, before);
    }

    /** NIST Special Publication 811 (2008), appendix B: an inch is 25.4 mm, so all lengths can be told in inches. */
    @Test
    void allIsToldInTheUnitsThatArePreferred() {
        UnitChoice inches = kind -> Units.alike(kind, Units.INCH)
                ? Optional.of(Units.INCH)
                : Units.alike(kind, Units.OUNCE) ? Optional.of(Units.OUNCE) : Optional.empty();
        var texts = Comparison.of(journal, old, young, inches).stream()
                .flatMap(row -> Stream.of(row.first().text(), row.second().text(), row.difference()))
                .toList();
        assertThat(texts).anyMatch(text -> text.contains(" oz")).noneMatch(text -> text.matches(".* (g|mm)\\b.*"));
    }

    @Test
    void theSecondLessTheFirstInTheUnitOfTheFirst() {
        var rows = Comparison.of(journal, old, young, UnitChoice.NONE);
        // NIST SP 811, B.8: 1 lb is 453.59237 g and 1 in is 25.4 mm, so 2.5 lb are 1133.980925 g and 8 in are 203.2 mm;
        // independent uncertainties add as their squares (JCGM 100:2008, 5.1.2): 3 and 4 give 5
        assertThat(row(rows, What.MEASUREMENT, "all-up mass").difference()).isEqualTo("+134 g ± 5 g  (+13.4 %)");
        assertThat(row(rows, What.SETTING, "balance point").difference())
                .startsWith("+3.2 mm")
                .endsWith("(+1.6 %)");
    }

    @Test
    void aWeighingGoesBeforeTheLedgerAndWhatOneSideLacksStaysEmpty() {
        var rows = Comparison.of(journal, old, young, UnitChoice.NONE);
        assertThat(row(rows, What.PART, "fin"))
                .isEqualTo(
                        new Row(What.PART, "fin", new Side("30 g", false), new Side("31 g", false), "+1 g  (+3.3 %)"));
        assertThat(row(rows, What.SETTING, "elevon up").first().text()).isEmpty();
        assertThat(row(rows, What.SETTING, "elevon up").difference()).isEmpty();
        assertThat(row(rows, What.FACT, "layout").isAlike()).isFalse();
        assertThat(rows)
                .filteredOn(row -> row.what() == What.MEASUREMENT)
                .extracting(Row::name)
                .doesNotContain("fin");
        assertThat(Comparison.of(journal, old, old, UnitChoice.NONE)).allMatch(Row::isAlike);
    }

    @Test
    void whatIsTheSameDaysAndCountsAreToldInWords() {
        var rows = Comparison.of(journal, old, young, UnitChoice.NONE);
        // one entry against two, all in one evening
        assertThat(row(rows, What.FACT, "entries").difference()).isEqualTo("1 more");
        assertThat(row(rows, What.FACT, "days at work").difference()).isEqualTo("same");
        assertThat(row(Comparison.of(journal, young, old, UnitChoice.NONE), What.FACT, "entries")
                        .difference())
                .isEqualTo("1 fewer");
        assertThat(row(rows, What.FACT, "begun").difference()).isEqualTo("same");
        // 29 August to 9 October: two days of August, 30 of September, nine of October
        var earlier = BuildRecord.begin("Grey heron", LocalDate.of(2026, 8, 29));
        var later = BuildRecord.begin("Red crane", LocalDate.of(2026, 10, 9));
        assertThat(row(Comparison.of(journal, earlier, later, UnitChoice.NONE), What.FACT, "begun"))
                .isEqualTo(new Row(
                        What.FACT,
                        "begun",
                        new Side("Aug 29, 2026", false),
                        new Side("Oct 9, 2026", false),
                        "41 days later"));
        assertThat(row(Comparison.of(journal, later, earlier, UnitChoice.NONE), What.FACT, "begun")
                        .difference())
                .isEqualTo("41 days earlier");
        // NIST SP 811, B.8: 1 in is 25.4 mm; 1000 g and 1000.3 g differ by less than what a share of one decimal shows
        var inMillimetres = entry(old, "all-up mass", "1000 g", "balance point", "203.2 mm");
        var inInches = entry(young, "all-up mass", "1000.3 g", "balance point", "8 in");
        var alike = Comparison.of(
                Bench.inMemory(List.of(old, young), List.of(inMillimetres, inInches)), old, young, UnitChoice.NONE);
        assertThat(row(alike, What.SETTING, "balance point").difference()).isEqualTo("same");
        assertThat(row(alike, What.MEASUREMENT, "all-up mass").difference()).isEqualTo("+0.3 g");
    }

    @Test
    void whatWasCarriedOverSaysSo() {
        var begun = young.withParts(List.of(carried("fin", 33), carried("hatch", 12)));
        var journal = Bench.inMemory(
                List.of(old, begun),
                List.of(
                        entry(begun, "span", "900 mm", "balance point", "8 in").withTags(List.of(CarryOver.TAG)),
                        entry(begun, "fin", "31 g", "elevon up", "12°")));
        var rows = Comparison.of(journal, old, begun, UnitChoice.NONE);
        assertThat(row(rows, What.SETTING, "balance point").second().words()).isEqualTo("8 in, carried over");
        assertThat(row(rows, What.SETTING, "elevon up").second().words()).isEqualTo("12°");
        assertThat(row(rows, What.PART, "hatch").second().words()).isEqualTo("12 g, carried over");
        assertThat(row(rows, What.PART, "fin").second().words())
                .as("it has been weighed since")
                .isEqualTo("31 g");
        assertThat(row(rows, What.FACT, "ledger mass").second().carried()).isTrue();
    }

    private static Row row(List<Row> rows, What what, String name) {
        return rows.stream()
                .filter(row -> row.what() == what && row.name().equalsIgnoreCase(name))
                .findFirst()
                .orElseThrow();
    }

    private static EntryRecord entry(BuildRecord build, String measured, String one, String set, String other) {
        return EntryRecord.blank(build.id(), Entry.Kind.WORK, Bench.EVENING)
                .withMeasurements(List.of(MeasurementRecord.of(measured, quantity(one), "")))
                .withSetUp(List.of(new SetUpRecord(set, quantity(other))));
    }

    private static planewright.shared.quantity.Written quantity(String text) {
        try {
            return QuantityText.parse(text, Units.NUMBER);
        } catch (QuantityProblem ours) {
            throw new IllegalStateException(ours);
        }
    }

    private static PartRecord carried(String name, double grams) {
        return PartRecord.named(name).carried(Optional.of(Measured.of(grams, Units.GRAM)));
    }

    private static PartRecord part(String name, double grams) {
        var plain = PartRecord.named(name);
        return new PartRecord(
                plain.id(),
                name,
                "airframe",
                Optional.of(Measured.of(grams, Units.GRAM)),
                plain.x(),
                plain.y(),
                plain.z(),
                plain.length(),
                plain.width(),
                plain.height());
    }
}
