package planewright.app.across;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import planewright.api.journal.Entry.Kind;
import planewright.api.journal.Planform;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.app.Bench;
import planewright.app.exchange.AcrossTable;
import planewright.app.index.SearchIndex;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.CarryOver;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.MeasurementRecord;
import planewright.app.journal.OpenJournal;
import planewright.app.journal.PartRecord;
import planewright.app.journal.SetUpRecord;
import planewright.app.print.AcrossSheet;
import planewright.shared.fit.Law;
import planewright.shared.quantity.QuantityProblem;
import planewright.shared.quantity.QuantityText;
import planewright.shared.quantity.Written;

/** One thing over all builds: which of a build's values counts, and what the line through them tells. */
class AcrossTest {
    private final BuildRecord heron =
            Bench.build("Grey heron").withParts(List.of(part("fin", 30, false), part("pod", 100, false)));
    private final BuildRecord crane = Bench.build("Red crane").withParts(List.of(part("Fin", 33, true)));
    private final BuildRecord teal = Bench.build("Teal");

    @TempDir
    private Path temp;

    private interface Work {
        void with(Across across) throws IOException;
    }

    private void on(OpenJournal journal, Work work) throws IOException {
        try (var index = SearchIndex.open(temp, journal, (done, all) -> {})) {
            work.with(new Across(journal, index));
        }
    }

    @Test
    void theLastValueOfEachBuildUnlessEveryIsWanted() throws IOException {
        var journal = Bench.inMemory(
                List.of(heron, teal),
                List.of(
                        measured(heron, 1, "fin", "28 g"),
                        measured(heron, 2, " FIN ", "1 oz"),
                        measured(heron, 3, "fin", "120 mm"),
                        measured(teal, 1, "fin", "19 g", "fin", "20 g ± 1 g")));
        on(journal, across -> {
            var fin = only(across, "fin (g)");
            assertThat(fin.builds()).isEqualTo(2);
            assertThat(texts(across.values(fin, false)))
                    .containsExactlyInAnyOrder("Grey heron 1 oz", "Teal 20 g ± 1 g");
            assertThat(texts(across.values(fin, true)))
                    .containsSubsequence("Grey heron 1 oz", "Grey heron 28 g")
                    .containsSubsequence("Teal 20 g ± 1 g", "Teal 19 g")
                    .hasSize(4);
            assertThat(only(across, "fin (mm)").builds()).isEqualTo(1);
        });
    }

    @Test
    void aWeighingGoesBeforeTheLedgerAndWhatWasCarriedOverDoesNotCount() throws IOException {
        var journal = Bench.inMemory(List.of(heron, crane, teal), List.of(measured(teal, 1, "fin", "20 g")));
        on(journal, across -> {
            var values = across.values(only(across, "fin (g)"), false);
            assertThat(values)
                    .extracting(value -> value.build().name() + ", "
                            + value.source().word() + ", " + value.quantity().text())
                    .containsExactlyInAnyOrder(
                            "Grey heron, mass ledger, 30 g",
                            "Red crane, carried over, 33 g",
                            "Teal, measurement, 20 g");
            var pairs = across.pairs(only(across, "fin (g)"), Optional.of(only(across, "entries")), false);
            assertThat(pairs.carried()).containsExactly(crane.id());
        });
    }

    @Test
    void whatIsSetCountsLikewiseAndWhatABuildBeganWithIsCarriedOver() throws IOException {
        var begun = EntryRecord.blank(teal.id(), Kind.SET_UP, Bench.EVENING)
                .withTags(List.of(CarryOver.TAG))
                .withSetUp(List.of(new SetUpRecord("balance point", quantity("60 mm"))));
        var set = EntryRecord.blank(heron.id(), Kind.SET_UP, Bench.EVENING)
                .withSetUp(List.of(new SetUpRecord("Balance point", quantity("62 mm"))));
        on(Bench.inMemory(List.of(heron, teal), List.of(begun, set)), across -> {
            assertThat(across.values(only(across, "balance point"), false))
                    .extracting(BuildValue::source)
                    .containsExactlyInAnyOrder(Source.SETTING, Source.CARRIED);
        });
    }

    @Test
    void figuresFollowFromLedgerShapeAndLog() throws IOException {
        var full = Bench.fullBuild();
        var journal = Bench.inMemory(
                List.of(full, heron),
                List.of(measured(full, 1, "All-up mass", "1 kg"), measured(full, 1, "something", "1 g")));
        on(journal, across -> {
            assertThat(texts(across.values(only(across, "all-up mass"), false)))
                    .containsExactlyInAnyOrder("Grey heron 1 kg", "Grey heron 130 g");
            assertThat(texts(across.values(only(across, "days at work"), false)))
                    .containsExactlyInAnyOrder("Grey heron 1", "Grey heron 0");
            // 0.26 m and 0.18 m over two half spans of 0.5 m: 0.22 m² by the trapezoid's rule, 1 kg on it
            assertThat(texts(across.values(only(across, "wing loading"), false)))
                    .containsExactly("Grey heron 45.5 g/dm²");
            assertThat(texts(across.values(only(across, "span (mm)"), false))).containsExactly("Grey heron 1000 mm");
        });
    }

    @Test
    void editsAreSeenAndWhatIsDeletedIsGone() throws IOException {
        var first = measured(heron, 1, "tail", "28 g");
        var journal = Bench.inMemory(List.of(heron), List.of(first));
        on(journal, across -> {
            var tail = only(across, "tail (g)");
            var second = measured(heron, 2, "tail", "29 g");
            journal.apply(Edit.add("weigh", second));
            assertThat(texts(across.values(tail, false))).containsExactly("Grey heron 29 g");
            journal.undo();
            assertThat(texts(across.values(tail, false))).containsExactly("Grey heron 28 g");
            journal.apply(Edit.remove("delete", first));
            assertThat(across.values(tail, true)).isEmpty();
            assertThat(Named.called("tail (g)", across.names())).isEmpty();
        });
    }

    /** D. C. Montgomery and G. C. Runger, table 11-1 and example 11-6; sources and flags stand in shared's published.json. */
    @Test
    void tellsOfTheNextBuildWhatTheTextbookTellsOfTheNextReading() throws IOException {
        double[] x = {
            0.99, 1.02, 1.15, 1.29, 1.46, 1.36, 0.87, 1.23, 1.55, 1.40, 1.19, 1.15, 0.98, 1.01, 1.11, 1.20, 1.26, 1.32,
            1.43, 0.95
        };
        double[] y = {
            90.01, 89.05, 91.43, 93.74, 96.73, 94.45, 87.59, 91.77, 99.42, 93.65, 93.54, 92.52, 90.56, 89.54, 89.85,
            90.39, 93.25, 93.41, 94.98, 87.33
        };
        on(pairsOf(x, y), across -> {
            var view = view(across, Law.STRAIGHT, Set.of(), 1.0);
            var next = view.next().orElseThrow();
            assertThat(next.low()).isCloseTo(86.83, within(0.005));
            assertThat(next.high()).isCloseTo(91.63, within(0.005));
            assertThat(view.relation().isTelling()).isTrue();
            assertThat(view.relation().isAmong(1.0)).isTrue();
            assertThat(view.relation().isAmong(0.5)).isFalse();
            assertThat(view.formula(name -> name, Locale.ENGLISH)).contains("y (%) = 74.3 + 14.9·x (%)");
            assertThat(view.formula(name -> name, Locale.GERMAN)).contains("y (%) = 74,3 + 14,9·x (%)");
            assertThat(AcrossTable.text(view).lines())
                    .hasSize(21)
                    .first()
                    .asString()
                    .startsWith("build,y,unit,");
        });
    }

    /** 3·x^2 without scatter; one build off it that does not count. */
    @Test
    void aPowerLawIsFoundAndABuildIsLeftOut() throws IOException {
        on(pairsOf(new double[] {1, 2, 3, 4, 5}, new double[] {3, 12, 27, 48, 500}), across -> {
            var pairs = pairs(across);
            var off = pairs.pairs().stream()
                    .filter(pair -> pair.value().quantity().number().equals("500.0"))
                    .map(pair -> pair.value().build().id())
                    .findFirst()
                    .orElseThrow();
            var view = view(across, Law.POWER, Set.of(off), 10);
            assertThat(view.next().orElseThrow().middle()).isCloseTo(300, within(1e-6));
            assertThat(view.relation().counting()).isEqualTo(4);
            assertThat(view.formula(name -> name, Locale.ENGLISH)).contains("y (%) = 3·[x (%)]^2");
            assertThat(view.fitted("", name -> name).dots())
                    .hasSize(5)
                    .filteredOn(dot -> !dot.counts())
                    .hasSize(1);
            assertThat(view(across, Law.POWER, Set.of(off), -1).next()).isEmpty();
        });
    }

    @Test
    void whatTellsNoLineIsSaidInPlainWords() throws IOException {
        assertThat(problem(Law.STRAIGHT, new double[] {1, 2}, new double[] {3, 4}))
                .startsWith("No line: builds that have both and count: 2");
        assertThat(problem(Law.STRAIGHT, new double[] {5, 5, 5}, new double[] {3, 4, 7}))
                .isEqualTo("No line: all builds that count have 5.0 % across; it takes two that differ.");
        assertThat(problem(Law.POWER, new double[] {1, 2, 3}, new double[] {3, -4, 7}))
                .startsWith("No line: a power law goes through values above 0 only, and 'build 1' has -4.0 %");
        assertThat(problem(Law.POWER, new double[] {1, 0, 3}, new double[] {3, 4, 7}))
                .contains("'build 1' has 0.0 %");
    }

    /** Of masses a line tells nothing below 0 g, of what may be below 0, such as a trim in %, it does. */
    @Test
    void aBandOfMassesEndsAt0AndSaysSo() throws IOException {
        double[] x = {1, 2, 3, 4};
        double[] y = {20, 150, 180, 330};
        on(pairsOf(x, y, "g"), across -> {
            var view = view(across, Law.STRAIGHT, Set.of(), 0.9);
            var band = view.relation().band("", view.asked()).orElseThrow();
            assertThat(band.spans()).isNotEmpty().allMatch(span -> span.low() >= 0);
            var next = view.next().orElseThrow();
            assertThat(next.low()).isZero();
            assertThat(next.middle()).isCloseTo(170 + 96 * (0.9 - 2.5), within(1e-9));
            assertThat(AcrossSheet.said(view)).anyMatch(said -> said.startsWith("The band ends at 0"));
            assertThat(view.fitted("", name -> name).fromZero()).isTrue();

            var far = view(across, Law.STRAIGHT, Set.of(), 0.5);
            assertThat(far.next()).isEmpty();
            assertThat(AcrossSheet.said(far))
                    .contains("At 0.5 % the line is below 0, where nothing can be: try a power law.");
            assertThat(view(across, Law.POWER, Set.of(), 0.5).relation().isCut(Optional.of(0.5)))
                    .isFalse();
        });
        on(pairsOf(x, y, "%"), across -> {
            var view = view(across, Law.STRAIGHT, Set.of(), 0.5);
            assertThat(view.next().orElseThrow().middle()).isNegative();
            assertThat(view.relation().isCut(view.asked())).isFalse();
        });
    }

    /** A shape taken over says nothing new of shapes; beside what this build was found to weigh it does. */
    @Test
    void aShapeThatWasCarriedOverCountsOnlyBesideWhatWasMeasured() throws IOException {
        var proven = Bench.fullBuild();
        var entries = new ArrayList<EntryRecord>();
        var journal = Bench.inMemory(List.of(proven, teal), entries);
        var larger = BuildRecord.begin("Larger", Bench.EVENING.toLocalDate());
        journal.apply(CarryOver.of(journal, Optional.of(proven), List.of(), 1.2)
                .begin(larger, Bench.EVENING, new CarryOver.Told("begin", "Begun from it", List.of())));
        journal.apply(Edit.add("weigh", measured(larger, 1, "half wing", "212 g")));
        on(journal, across -> {
            assertThat(source(across, "span", larger)).isEqualTo(Source.CARRIED_SHAPE);
            assertThat(source(across, "span", proven)).isEqualTo(Source.PLANFORM);
            var span = only(across, "span");
            assertThat(across.pairs(only(across, "wing area"), Optional.of(span), false)
                            .carried())
                    .containsExactly(larger.id());
            assertThat(across.pairs(only(across, "half wing"), Optional.of(span), false)
                            .carried())
                    .isEmpty();
            var begun = journal.build(larger.id()).orElseThrow();
            var drawn = begun.planform().orElseThrow();
            journal.apply(Edit.change(
                    "shape",
                    begun,
                    begun.withPlanform(new Planform(
                            drawn.surfaces().stream()
                                    .map(each -> new Planform.Surface(
                                            each.name(),
                                            each.x() + 0.05,
                                            each.y(),
                                            each.z(),
                                            each.mirrored(),
                                            each.panels(),
                                            each.controls()))
                                    .toList(),
                            drawn.bodies()))));
            assertThat(source(across, "span", larger)).isEqualTo(Source.PLANFORM);
        });
    }

    private static Source source(Across across, String called, BuildRecord build) throws IOException {
        return across.values(only(across, called), false).stream()
                .filter(value -> value.build().id().equals(build.id()))
                .map(BuildValue::source)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aPowerOfDegreesCelsiusMeansNothing() throws IOException {
        var builds = List.of(heron, crane, teal);
        var entries = new ArrayList<EntryRecord>();
        for (int i = 0; i < 3; i++) {
            entries.add(measured(builds.get(i), 1, "x", 10 + i + " °C", "y", 5 + i + " g"));
        }
        on(
                Bench.inMemory(builds, entries),
                across -> assertThat(view(across, Law.POWER, Set.of(), 1)
                                .relation()
                                .problem()
                                .orElseThrow())
                        .isInstanceOf(Relation.NoPower.class));
    }

    private String problem(Law law, double[] x, double[] y) throws IOException {
        var said = new ArrayList<String>();
        on(
                pairsOf(x, y),
                across -> said.add(AcrossSheet.why(
                        view(across, law, Set.of(), 1).relation().problem().orElseThrow())));
        return said.get(0);
    }

    private static OpenJournal pairsOf(double[] x, double[] y) {
        return pairsOf(x, y, "%");
    }

    private static OpenJournal pairsOf(double[] x, double[] y, String unit) {
        var builds = new ArrayList<BuildRecord>();
        var entries = new ArrayList<EntryRecord>();
        for (int i = 0; i < x.length; i++) {
            builds.add(Bench.build("build " + i));
            entries.add(measured(builds.get(i), 1, "x", x[i] + " %", "y", y[i] + " " + unit));
        }
        return Bench.inMemory(builds, entries);
    }

    private static Pairs pairs(Across across) throws IOException {
        return across.pairs(only(across, "y"), Optional.of(only(across, "x")), false);
    }

    private static View view(Across across, Law law, Set<String> out, double asked) throws IOException {
        var pairs = pairs(across);
        return View.of(pairs, law, out, pairs.unit(), pairs.againstUnit(), Optional.of(asked));
    }

    private static Named only(Across across, String called) throws IOException {
        var found = Named.called(called, across.names());
        assertThat(found).as(called).hasSize(1);
        return found.get(0);
    }

    private static List<String> texts(List<BuildValue> values) {
        return values.stream()
                .map(value -> value.build().name() + " " + value.quantity().text())
                .toList();
    }

    private static EntryRecord measured(BuildRecord build, int day, String... namesAndValues) {
        var measurements = new ArrayList<MeasurementRecord>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            measurements.add(MeasurementRecord.of(namesAndValues[i], quantity(namesAndValues[i + 1]), ""));
        }
        return EntryRecord.blank(build.id(), Kind.WORK, Bench.EVENING.plusDays(day))
                .withMeasurements(measurements);
    }

    private static Written quantity(String text) {
        try {
            return QuantityText.parse(text, Units.NUMBER);
        } catch (QuantityProblem ours) {
            throw new IllegalStateException(ours);
        }
    }

    private static PartRecord part(String name, double grams, boolean carried) {
        var plain = PartRecord.named(name);
        return new PartRecord(
                plain.id(),
                name,
                "",
                Optional.of(Measured.of(grams, Units.GRAM)),
                plain.x(),
                plain.y(),
                plain.z(),
                plain.length(),
                plain.width(),
                plain.height(),
                carried);
    }
}
