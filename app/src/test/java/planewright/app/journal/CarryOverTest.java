package planewright.app.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import planewright.api.journal.Entry;
import planewright.api.journal.Planform;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.app.Bench;
import planewright.app.journal.CarryOver.Item;
import planewright.app.journal.CarryOver.What;
import planewright.shared.planform.Outlines;
import planewright.shared.quantity.QuantityProblem;
import planewright.shared.quantity.QuantityText;

/** What a new build takes over, and how it is scaled: solids alike by Euclid, Elements XI.33, lengths and angles by their likeness. */
class CarryOverTest {
    private static final Planform WING = new Planform(
            List.of(new Planform.Surface(
                    "wing",
                    0.05,
                    0,
                    0,
                    true,
                    List.of(new Planform.Panel(0.3, 0.2, 0.5, 0.4, 0.05, -0.03)),
                    List.of(new Planform.Control("elevon", Planform.Role.ELEVON, 0.3, 0.95, 0.75, 0.75)))),
            List.of());
    private static final CarryOver.Told TOLD = new CarryOver.Told("begin", "Begun", List.of("how"));

    private final PartRecord foam = part("left wing panel", "airframe", 100, 60);
    private final PartRecord motor = part("motor", "power", 40, 10);
    private final BuildRecord proven = Bench.build("Grey heron")
            .withLayout("tailless with elevons")
            .withDatum("nose")
            .withPlanform(WING)
            .withParts(List.of(foam, motor));
    private final EntryRecord first = set(1, "balance point", "200 mm", "elevon up", "12 °");
    private final EntryRecord later = set(2, "Balance point", "203 mm", "timer", "6 min");
    private final OpenJournal journal = Bench.inMemory(List.of(proven), List.of(first, later));

    @Test
    void everythingThatABuildIsAndFliesWithIsOffered() {
        var all = CarryOver.of(journal, Optional.of(proven), List.of(), 1);
        assertThat(all.items())
                .extracting(Item::what)
                .containsExactly(
                        What.LAYOUT,
                        What.DATUM,
                        What.PLANFORM,
                        What.PART,
                        What.PART,
                        What.SETTING,
                        What.SETTING,
                        What.SETTING);
        assertThat(values(all, What.SETTING)).containsExactly("203 mm", "12°", "6 min");
        var begun = begin(all, "Grey heron two");
        assertThat(begun.layout()).isEqualTo("tailless with elevons");
        assertThat(begun.datum()).isEqualTo("nose");
        assertThat(begun.planform()).contains(WING);
        assertThat(begun.begunFrom().orElseThrow().build()).isEqualTo(proven.id());
        assertThat(begun.parts())
                .allMatch(PartRecord::carried)
                .extracting(PartRecord::mass)
                .isEqualTo(List.of(foam.mass(), motor.mass()));
    }

    @Test
    void twiceTheSizeIsTwiceEveryLengthAndEightTimesTheAirframe() {
        var all = CarryOver.of(journal, Optional.of(proven), List.of(), 2);
        assertThat(values(all, What.SETTING)).containsExactly("406 mm", "12°", "6 min");
        assertThat(values(all, What.PART)).containsExactly("800 g", "40 g");
        var begun = begin(all, "Large heron");
        var shape = begun.planform().orElseThrow();
        assertThat(Outlines.span(shape)).isCloseTo(2 * Outlines.span(WING), within(1e-12));
        assertThat(shape.surfaces().get(0).panels().get(0).sweep()).isEqualTo(0.4);
        assertThat(shape.surfaces().get(0).controls())
                .isEqualTo(WING.surfaces().get(0).controls());
        assertThat(begun.parts().get(1).x().orElseThrow().in(Units.MILLIMETRE)).isEqualTo(20);
        assertThat(begun.parts().get(1).mass().orElseThrow().in(Units.GRAM)).isEqualTo(40);
    }

    /**
     * Similar figures are as the squares of their sides (Euclid, Elements VI.20), similar solids as the cubes (XI.33); which part is
     * which is common practice, no source.
     */
    @ParameterizedTest
    @CsvSource({
        "finish, airframe, 400, with the area",
        "Wing covering, airframe, 400, with the area",
        "skins of the core, airframe, 400, with the area",
        "Bügelfolie, Zelle, 400, with the area",
        "wing spars, airframe, 800, with the third power",
        "canopy, airframe, 800, with the third power",
        "pushrods and horns, radio, 200, in proportion",
        "servo extension leads, radio, 200, in proportion",
        "Schubstange, radio, 200, in proportion",
        "nose lead, ballast, 100, as it is",
        "leading edge, airframe, 800, with the third power",
        "black stab, airframe, 800, with the third power",
        "tow hook, radio, 100, as it is",
        "receiver, radio, 100, as it is"
    })
    void aPartGrowsAsItsKindDoes(String name, String group, double grams, String how) {
        var build = proven.withParts(List.of(part(name, group, 100, 60)));
        var all = CarryOver.of(Bench.inMemory(List.of(build), List.of()), Optional.of(build), List.of(), 2);
        var item = all.items().stream()
                .filter(each -> each.what() == What.PART)
                .findFirst()
                .orElseThrow();
        assertThat(item.scaling().word()).isEqualTo(how);
        assertThat(item.value()).isEqualTo(Math.round(grams) + " g");
        assertThat(begin(all, "Large").parts().get(0).mass().orElseThrow().in(Units.GRAM))
                .isEqualTo(grams);
    }

    @Test
    void aWeighingGoesBeforeTheLedger() throws QuantityProblem {
        var weighed = EntryRecord.blank(proven.id(), Entry.Kind.WORK, Bench.EVENING.plusDays(3))
                .withMeasurements(List.of(
                        MeasurementRecord.of("Left wing panel", QuantityText.parse("104 g ± 1 g", Units.GRAM), ""),
                        MeasurementRecord.of("motor", QuantityText.parse("31 mm", Units.GRAM), "")));
        var log = Bench.inMemory(List.of(proven), List.of(first, later, weighed));
        var all = CarryOver.of(log, Optional.of(proven), List.of(), 1);
        assertThat(values(all, What.PART)).containsExactly("104 g ± 1 g", "40 g");
        assertThat(begin(all, "Two").parts().get(0).mass().orElseThrow().in(Units.GRAM))
                .isEqualTo(104);
    }

    @Test
    void theUncertaintyGrowsWithItsValue() {
        var sure = part("spar", "airframe", 100, 60);
        var weighed = new PartRecord(
                "s",
                "spar",
                "airframe",
                Optional.of(Measured.of(10, 0.5, Units.GRAM)),
                sure.x(),
                sure.y(),
                sure.z(),
                sure.length(),
                sure.width(),
                sure.height());
        var all = CarryOver.of(journal, Optional.of(proven.withParts(List.of(weighed))), List.of(), 2);
        assertThat(begin(all, "Two").parts().get(0).mass().orElseThrow().spreadIn(Units.GRAM))
                .isCloseTo(4, within(1e-12));
    }

    @Test
    void whatIsLeftOutStaysAndWhatIsChangedGoesAlong() {
        var all = CarryOver.of(journal, Optional.of(proven), List.of(), 1);
        var fewer = all.with(2, all.items().get(2).wanted(false))
                .with(3, all.items().get(3).withValue("4 oz"))
                .with(4, all.items().get(4).wanted(false))
                .with(5, all.items().get(5).withValue("210 mm"));
        var again = CarryOver.of(journal, Optional.of(proven), List.of(), 2).as(fewer, all);
        assertThat(again.items())
                .extracting(Item::wanted)
                .containsExactly(true, true, false, true, false, true, true, true);
        assertThat(values(again, What.PART)).containsExactly("4 oz", "40 g");
        assertThat(values(again, What.SETTING)).containsExactly("210 mm", "12°", "6 min");
        var begun = begin(fewer, "Other");
        assertThat(begun.planform()).isEmpty();
        assertThat(begun.parts()).extracting(PartRecord::name).containsExactly("left wing panel");
        // 1 oz is 28.349523125 g: NIST SP 811, B.8
        assertThat(begun.parts().get(0).mass().orElseThrow().in(Units.GRAM)).isCloseTo(4 * 28.349523125, within(1e-9));
    }

    @Test
    void aValueThatIsChangedForOneBuildIsNotThatOfAnother() {
        var other = Bench.build("White heron");
        var set = EntryRecord.blank(other.id(), Entry.Kind.SET_UP, Bench.EVENING)
                .withSetUp(List.of(setting("balance point", "90 mm")));
        var both = Bench.inMemory(List.of(proven, other), List.of(first, later, set));
        var all = CarryOver.of(both, Optional.of(proven), List.of(), 1);
        var changed = all.with(5, all.items().get(5).withValue("210 mm"));
        var again = CarryOver.of(both, Optional.of(other), List.of(), 1).as(changed, all);
        assertThat(values(again, What.SETTING)).containsExactly("90 mm");
    }

    @Test
    void aValueThatIsNotUnderstoodIsNamedAndNothingBegins() {
        var all = CarryOver.of(journal, Optional.of(proven), List.of(), 1);
        var wrong = all.with(3, all.items().get(3).withValue("a lot"))
                .with(5, all.items().get(5).withValue("203 foo"));
        assertThat(wrong.problems()).contains("left wing panel: 'a lot'", "Balance point: 'foo'", "accepted");
        assertThatThrownBy(() -> wrong.begin(proven, Bench.EVENING, TOLD)).hasMessageContaining("'a lot'");
        var without = wrong.with(3, wrong.items().get(3).wanted(false))
                .with(5, wrong.items().get(5).wanted(false));
        assertThat(without.problems()).isEmpty();
        assertThatThrownBy(() -> CarryOver.of(journal, Optional.empty(), List.of(), 20))
                .hasMessageContaining("20.0")
                .hasMessageContaining("0.1 to 10");
    }

    @Test
    void templatesAreGivenAndTheirSetUpGoesBeforeThatOfTheBuild() throws IOException {
        var setUp = TemplateRecord.of(
                "First flights",
                LocalDate.of(2025, 5, 1),
                new TemplateContent.SetUp(List.of(setting("balance point", "198 mm"))));
        var steps = TemplateRecord.of(
                "Hinge",
                LocalDate.of(2025, 5, 1),
                new TemplateContent.Procedure(List.of(
                        new StepRecord("a", "Glue it", Optional.empty(), Optional.empty(), List.of(), List.of()))));
        var all = CarryOver.of(journal, Optional.of(proven), List.of(setUp, steps), 1);
        assertThat(values(all, What.SETTING)).containsExactly("198 mm", "12°", "6 min");
        var edit = all.begin(BuildRecord.begin("New", LocalDate.of(2025, 6, 1)), Bench.EVENING, TOLD);
        assertThat(edit.changes()).hasSize(4);
        assertThat(edit.changes().stream().map(Edit.Change::subject).filter(TemplateRecord.class::isInstance))
                .allSatisfy(given -> assertThat(((TemplateRecord) given).wentTo())
                        .extracting(BuildDayRecord::name)
                        .containsExactly("New"));
        var told = (EntryRecord) edit.changes().get(1).subject();
        assertThat(told.kind()).isEqualTo(Entry.Kind.SET_UP);
        assertThat(told.tags()).containsExactly(CarryOver.TAG);
        assertThat(told.setUp()).contains(setting("balance point", "198 mm"));
        assertThat(all.told(UnaryOperator.identity())).contains("template: Hinge procedure.");
    }

    private BuildRecord begin(CarryOver carried, String name) {
        return (BuildRecord) carried.begin(BuildRecord.begin(name, LocalDate.of(2025, 6, 1)), Bench.EVENING, TOLD)
                .changes()
                .get(0)
                .subject();
    }

    private static List<String> values(CarryOver carried, What what) {
        return carried.items().stream()
                .filter(item -> item.what() == what)
                .map(Item::value)
                .toList();
    }

    private EntryRecord set(int day, String first, String one, String second, String two) {
        return EntryRecord.blank(proven.id(), Entry.Kind.SET_UP, Bench.EVENING.plusDays(day))
                .withSetUp(List.of(setting(first, one), setting(second, two)));
    }

    private static SetUpRecord setting(String name, String quantity) {
        try {
            return new SetUpRecord(name, QuantityText.parse(quantity, Units.NUMBER));
        } catch (QuantityProblem ours) {
            throw new IllegalStateException(ours);
        }
    }

    private static PartRecord part(String name, String group, double grams, double x) {
        return new PartRecord(
                name,
                name,
                group,
                Optional.of(Measured.of(grams, Units.GRAM)),
                Optional.of(Measured.of(x, Units.MILLIMETRE)),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }
}
