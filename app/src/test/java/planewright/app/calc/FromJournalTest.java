package planewright.app.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import planewright.api.calculator.Proposal;
import planewright.api.journal.Entry.Kind;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.app.Bench;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.CarryOver;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.JointRecord;
import planewright.app.journal.KeptResult;
import planewright.app.journal.MeasurementRecord;
import planewright.app.journal.OpenJournal;
import planewright.app.journal.PartRecord;
import planewright.app.journal.SetUpRecord;
import planewright.shared.quantity.QuantityText;
import planewright.shared.quantity.UnitChoice;

/** Inputs taken from a journal with word of where from; answers kept; kept answers that a later entry has overtaken. */
class FromJournalTest {
    private static final LocalDateTime MARCH = LocalDateTime.of(2025, 3, 14, 20, 15);
    private static final LocalDateTime APRIL = MARCH.plusMonths(1);

    private final Described every = new EveryKind().described();
    private final BuildRecord build =
            Bench.fullBuild().withParts(List.of(part("left wing panel", 210, 140), part("pack", 186, -20)));
    private final OpenJournal journal = Bench.inMemory(List.of(build), List.of());

    @Test
    void newestMeasurementComesWithItsDigitsEntryDayAndMethod() throws Exception {
        measure(APRIL, "Wing", "3 1/2 oz ± 1/8 oz", "kitchen scale");
        measure(MARCH, "wing", "90 g", "");
        var filled = filled();
        assertThat(filled.inputs().path("wing").toString())
                .isEqualTo("{\"value\":\"3 1/2\",\"unit\":\"[oz_av]\",\"plusMinus\":\"0.125\"}");
        var origin = filled.origins().get("wing");
        assertThat(origin.place()).isEqualTo("measurement");
        assertThat(origin.name()).isEqualTo("Wing");
        assertThat(origin.entry()).contains(journal.log(build.id()).get(1).id());
        assertThat(origin.said()).isEqualTo("measured 14 Apr 2025, kitchen scale");
    }

    @Test
    void measurementOfAnotherKindIsNotTaken() throws Exception {
        measure(APRIL, "wing", "500 mm", "");
        assertThat(filled().inputs().has("wing")).isFalse();
        assertThat(filled().origins()).doesNotContainKey("wing");
    }

    @Test
    void controlSurfacesComeFromThePlanformAndSaySo() {
        assertThat(filled().inputs().path("hinges").toString())
                .isEqualTo("[{\"name\":\"elevons\",\"surface\":\"wing\",\"role\":\"elevon\","
                        + "\"hinge\":{\"value\":\"75\",\"unit\":\"%\"},\"hingeTo\":{\"value\":\"70\",\"unit\":\"%\"}},"
                        + "{\"name\":\"flaps\",\"surface\":\"wing\",\"role\":\"flap\","
                        + "\"hinge\":{\"value\":\"70\",\"unit\":\"%\"}}]");
        assertThat(filled().origins().get("hinges[0].hinge").said()).isEqualTo("the build's planform");
    }

    @Test
    void massOfAPartIsTheNewestMeasurementElseTheLedgers() throws Exception {
        measure(MARCH, "LEFT WING PANEL ", "212 g ± 1 g", "");
        measure(APRIL, "pack", "120 mm", "");
        var filled = filled();
        assertThat(filled.inputs().at("/parts/0/mass/value").asText()).isEqualTo("212");
        assertThat(filled.inputs().at("/parts/1/mass/value").asText()).isEqualTo("186");
        assertThat(filled.inputs().at("/parts/1/x/value").asText()).isEqualTo("-20");
        assertThat(filled.inputs().at("/parts/0/name").asText()).isEqualTo("left wing panel");
        assertThat(filled.origins().get("parts[0].mass").place()).isEqualTo("measurement");
        assertThat(filled.origins().get("parts[1].mass").place()).isEqualTo("mass ledger");
        assertThat(filled.origins().get("parts[1].x").said()).isEqualTo("mass ledger");
    }

    @Test
    void ledgerComesWithAllItsDigits() throws Exception {
        journal.apply(Edit.change("parts", build, build.withParts(List.of(part("spar", 1234.5678, 0.0625)))));
        var row = filled().inputs().at("/parts/0");
        assertThat(row.at("/mass/value").asText()).isEqualTo("1234.5678");
        assertThat(row.at("/x/value").asText()).isEqualTo("0.0625");
    }

    @Test
    void scalesMakeARowEach() throws Exception {
        measure(MARCH, "scale nose", "310 g", "");
        measure(MARCH, "scale nose x", "-40 mm", "");
        measure(MARCH, "Scale left", "420 g", "");
        measure(APRIL, "scale nose", "312 g", "");
        var scales = filled().inputs().path("scales");
        assertThat(scales).hasSize(2);
        assertThat(scales.get(0).path("name").asText()).isEqualTo("nose");
        assertThat(scales.get(0).at("/reading/value").asText()).isEqualTo("312");
        assertThat(scales.get(0).at("/x/value").asText()).isEqualTo("-40");
        assertThat(scales.get(1).path("name").asText()).isEqualTo("left");
        assertThat(scales.get(1).has("x")).isFalse();
        assertThat(filled().origins()).containsKeys("scales[0].reading", "scales[0].x", "scales[1].reading");
    }

    @Test
    void throwsMakeARowEachInTheUnitThatTheyFlyWith() throws Exception {
        fliesWith("Aileron throw up", "14 mm");
        fliesWith("rudder throw", "30 deg");
        fliesWith("rudder throw, low rate", "18 deg");
        fliesWith("throwing arm", "2 mm");
        fliesWith("balance point", "92 mm");
        measure(APRIL, "aileron chord", "38 mm", "rule");
        var filled = filled();
        var rows = filled.inputs().path("travels");
        assertThat(rows).hasSize(2);
        assertThat(rows.get(0).path("name").asText()).isEqualTo("Aileron throw up");
        assertThat(rows.get(0).at("/distance/value").asText()).isEqualTo("14");
        assertThat(rows.get(0).has("angle")).isFalse();
        assertThat(rows.get(0).at("/chord/value").asText()).isEqualTo("38");
        assertThat(rows.get(1).at("/angle/value").asText()).isEqualTo("30");
        assertThat(rows.get(1).has("chord")).isFalse();
        assertThat(filled.origins().get("travels[0].distance").said()).isEqualTo("set-up of 14 Mar 2025");
        assertThat(filled.origins().get("travels[0].chord").said()).isEqualTo("measured 14 Apr 2025, rule");
    }

    @Test
    void whatWasCarriedOverSaysSo() throws Exception {
        journal.apply(Edit.add("begin", setUp(MARCH, "balance point", "92 mm").withTags(List.of(CarryOver.TAG))));
        assertThat(filled().origins().get("targetX").said()).isEqualTo("carried over 14 Mar 2025");
    }

    @Test
    void setUpBuildAndShapeAreTaken() throws Exception {
        fliesWith("balance point", "92 mm");
        var filled = filled();
        assertThat(filled.inputs().at("/targetX/value").asText()).isEqualTo("92");
        assertThat(filled.origins().get("targetX").said()).isEqualTo("set-up of 14 Mar 2025");
        assertThat(filled.inputs().path("datum").asText()).isEqualTo(build.datum());
        assertThat(filled.origins().get("datum").said()).isEqualTo("the build's datum");
        assertThat(filled.inputs().at("/shape/surfaces/0/name").asText()).isEqualTo("wing");
        assertThat(filled.origins()).doesNotContainKeys("glue", "coats", "wet");
    }

    @Test
    void whatIsFilledInComputes() throws Exception {
        measure(MARCH, "wing", "100 g", "");
        var answered = answered();
        assertThat(answered.json().at("/mass/value").doubleValue()).isEqualTo(100 + 210 + 186);
    }

    @Test
    void unknownBuildIsNamed() {
        assertThatThrownBy(() -> Prefill.of(every, journal, "01NOSUCHBUILD"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("01NOSUCHBUILD");
    }

    @Test
    void entryKeepsAnswerOriginsAndAcceptedProposals() throws Exception {
        measure(MARCH, "wing", "100 g ± 1 g", "");
        var answered = answered();
        var filled = filled();
        List<Proposal> all = ResultView.of(every, answered).proposals();
        var entry = Keeping.entry(every, build.id(), answered, filled.origins(), all, APRIL);
        assertThat(entry.kind()).isEqualTo(Kind.KEPT_RESULT);
        assertThat(entry.build()).isEqualTo(build.id());
        assertThat(entry.at()).isEqualTo(APRIL);
        assertThat(entry.title())
                .isEqualTo("Every kind: mass in all 496 g ± 1 g, word wing leading edge at the centre line");
        assertThat(entry.text())
                .containsExactly(
                        "What comes back?",
                        "- **fine:** All dry.",
                        "- **outline template:** fin",
                        "Fit the *hinges*.",
                        "Then the horn.");
        assertThat(entry.measurements()).hasSize(1);
        assertThat(entry.measurements().get(0).name()).isEqualTo("all-up mass");
        assertThat(entry.measurements().get(0).value().value().getValue().doubleValue())
                .isEqualTo(496);
        assertThat(entry.measurements().get(0).method()).isEqualTo("computed, bench.every");
        assertThat(entry.setUp()).extracting(SetUpRecord::name).containsExactly("balance point");
        var kept = entry.keptResult().orElseThrow();
        assertThat(kept.calculator()).isEqualTo("bench.every");
        assertThat(kept.version()).isEqualTo("2");
        assertThat(kept.results()).isEqualTo(answered.json());
        assertThat(kept.inputs()).isEqualTo(answered.inputs());
        assertThat(kept.origins().at("/wing/entry").asText())
                .isEqualTo(journal.log(build.id()).get(0).id());
    }

    @Test
    void acceptedJointStandsInTheEntryWithItsTimes() throws Exception {
        List<Proposal> all = ResultView.of(every, answered()).proposals();
        var entry = Keeping.entry(every, build.id(), answered(), filled().origins(), all, APRIL);
        assertThat(entry.joints()).hasSize(1);
        var joint = entry.joints().get(0);
        assertThat(joint.name()).isEqualTo("fin to hull");
        assertThat(joint.material()).isEqualTo("white glue");
        assertThat(joint.start()).isEqualTo(APRIL);
        assertThat(joint.handsOffUntil()).contains(APRIL.plusHours(1));
        assertThat(joint.fullyCured()).contains(APRIL.plusDays(1));
    }

    @Test
    void jointWithoutAnEndComesWithItsStartAndItsMaterial() throws Exception {
        join(MARCH, "spar", "laminating epoxy", Optional.empty());
        join(MARCH.plusDays(1), "fin to hull", "white glue", Optional.of(APRIL));
        var filled = filled();
        assertThat(filled.inputs().path("closed").asText()).isEqualTo(MARCH.toString());
        assertThat(filled.origins().get("closed").said()).isEqualTo("joint of 14 Mar 2025, spar");
        assertThat(filled.inputs().path("filler").asText()).isEqualTo("white glue");
        join(MARCH.plusDays(2), " SPAR", "laminating epoxy", Optional.of(APRIL));
        assertThat(filled().inputs().has("closed")).isFalse();
    }

    @Test
    void jointsMakeARowEachTheNewestFirst() throws Exception {
        join(MARCH, "spar", "white glue", Optional.empty());
        join(MARCH.plusDays(1), "fin", "white glue", Optional.of(APRIL));
        join(MARCH.plusDays(2), "Spar", "laminating epoxy", Optional.empty());
        var joints = filled().inputs().path("joints");
        assertThat(joints).hasSize(2);
        assertThat(joints.at("/0/name").asText()).isEqualTo("Spar");
        assertThat(joints.at("/0/material").asText()).isEqualTo("laminating epoxy");
        assertThat(joints.get(0).has("cured")).isFalse();
        assertThat(joints.at("/1/cured").asText()).isEqualTo(APRIL.toString());
        assertThat(filled().origins().get("joints[1].start").entry())
                .contains(journal.log(build.id()).get(1).id());
    }

    @Test
    void changedEndOfAJointIsTold() throws Exception {
        join(MARCH, "spar", "white glue", Optional.of(APRIL));
        var kept = kept();
        join(MARCH.plusDays(1), "spar", "white glue", Optional.of(APRIL.plusDays(2)));
        assertThat(changes(kept, every)).contains("cured of 'spar' was 2025-04-14 20:15, now 2025-04-16 20:15");
    }

    @Test
    void proposalsNotAcceptedAreNotWritten() throws Exception {
        var entry = Keeping.entry(every, build.id(), answered(), filled().origins(), List.of(), APRIL);
        assertThat(entry.measurements()).isEmpty();
        assertThat(entry.setUp()).isEmpty();
    }

    @Test
    void keptAnswerIsFreshWhileNothingChanges() throws Exception {
        measure(MARCH, "wing", "3 1/2 oz ± 1/8 oz", "");
        fliesWith("balance point", "92 mm");
        var kept = kept();
        assertThat(changes(kept, every)).isEmpty();
        measure(APRIL, "tailplane", "31 g", "");
        assertThat(changes(kept, every)).isEmpty();
    }

    @Test
    void whatACalculatorMeasuredItselfIsNotGivenToItAgain() throws Exception {
        measure(MARCH, "wing", "100 g", "kitchen scale");
        var own = new Proposal.NewMeasurement("wing", Measured.of(101, Units.GRAM));
        var entry = keeping(MARCH.plusMinutes(5), own);
        journal.apply(Edit.add("keep", entry));
        assertThat(journal.latestMeasurement(build.id(), "wing")
                        .orElseThrow()
                        .entry()
                        .id())
                .isEqualTo(entry.id());
        assertThat(filled().inputs().at("/wing/value").asText()).isEqualTo("100");
        assertThat(Staleness.changes(entry.keptResult().orElseThrow(), every, journal, build.id(), UnitChoice.NONE))
                .isEmpty();
    }

    @Test
    void whatACalculatorSetItselfIsNoTargetForIt() throws Exception {
        var own = new Proposal.NewSetUpValue("balance point", Measured.of(93, Units.MILLIMETRE));
        journal.apply(Edit.add("keep", keeping(APRIL, own)));
        assertThat(journal.setUpValue(build.id(), "balance point")).isPresent();
        assertThat(filled().inputs().has("targetX")).isFalse();
        assertThat(filled().origins()).doesNotContainKey("targetX");
        fliesWith("balance point", "92 mm");
        assertThat(filled().inputs().at("/targetX/value").asText()).isEqualTo("92");
        var again = keeping(APRIL.plusDays(1), own);
        journal.apply(Edit.add("keep", again));
        assertThat(changes(again.keptResult().orElseThrow(), every)).isEmpty();
    }

    @Test
    void massWeighedAgainIsTold() throws Exception {
        var kept = kept();
        measure(APRIL, "pack", "201 g", "");
        assertThat(changes(kept, every)).containsExactly("mass of 'pack' was 186 g, now 201 g");
    }

    @Test
    void sameMassWeighedAgainIsNoChange() throws Exception {
        measure(MARCH, "pack", "186 g", "");
        var kept = kept();
        measure(APRIL, "pack", "0.186 kg", "");
        assertThat(changes(kept, every)).isEmpty();
    }

    @Test
    void changedSetUpIsTold() throws Exception {
        fliesWith("balance point", "92 mm");
        var kept = kept();
        journal.apply(Edit.add("set up", setUp(APRIL, "balance point", "95 mm")));
        assertThat(changes(kept, every)).containsExactly("Target x was 92 mm, now 95 mm");
    }

    /** Ounces of 28.349523125 g: whether it differs is no matter of the unit in which it is told. */
    @Test
    void whatChangedIsToldInTheUnitThatIsPreferredAndNothingElseChanges() throws Exception {
        UnitChoice ounces = kind -> Units.alike(kind, Units.OUNCE) ? Optional.of(Units.OUNCE) : Optional.empty();
        var kept = kept();
        assertThat(Staleness.changes(kept, every, journal, build.id(), ounces)).isEmpty();
        measure(APRIL, "pack", "201 g", "");
        assertThat(Staleness.changes(kept, every, journal, build.id(), ounces))
                .containsExactly("mass of 'pack' was 6.561 oz, now 7.0901 oz");
    }

    @Test
    void changedVersionIsTold() throws Exception {
        var kept = kept();
        var older = new KeptResult(kept.calculator(), "1", kept.inputs(), kept.origins(), kept.results());
        assertThat(changes(older, every)).containsExactly("the calculator was version 1, now 2");
    }

    @Test
    void partsThatComeAndGoAreTold() throws Exception {
        var kept = kept();
        var parts = new ArrayList<>(build.parts());
        parts.set(1, part("receiver", 12, 30));
        journal.apply(Edit.change("parts", build, build.withParts(parts)));
        assertThat(changes(kept, every))
                .containsExactly("'pack' is no longer among parts", "'receiver' is new among parts");
    }

    @Test
    void changedDatumIsTold() throws Exception {
        var kept = kept();
        journal.apply(Edit.change("datum", build, build.withDatum("the nose")));
        assertThat(changes(kept, every))
                .containsExactly("Datum was wing leading edge at the centre line, now the nose");
    }

    private List<String> changes(KeptResult kept, Described now) {
        return Staleness.changes(kept, now, journal, build.id(), UnitChoice.NONE);
    }

    private KeptResult kept() {
        return keeping(MARCH).keptResult().orElseThrow();
    }

    private EntryRecord keeping(LocalDateTime at, Proposal... accepted) {
        return Keeping.entry(every, build.id(), answered(), filled().origins(), List.of(accepted), at);
    }

    private Filled filled() {
        return Prefill.of(every, journal, build.id());
    }

    private Outcome.Answered answered() {
        var outcome = Calculation.run(every, filled().inputs(), Runs.unwatched(journal, APRIL));
        assertThat(outcome).isInstanceOf(Outcome.Answered.class);
        return (Outcome.Answered) outcome;
    }

    private void measure(LocalDateTime at, String name, String quantity, String method) throws Exception {
        var written = QuantityText.parse(quantity, Units.NUMBER);
        journal.apply(Edit.add(
                "measure",
                EntryRecord.blank(build.id(), Kind.WORK, at)
                        .withMeasurements(List.of(MeasurementRecord.of(name, written, method)))));
    }

    private void join(LocalDateTime start, String name, String material, Optional<LocalDateTime> cured)
            throws Exception {
        journal.apply(Edit.add(
                "join",
                EntryRecord.blank(build.id(), Kind.WORK, start)
                        .withJoints(List.of(new JointRecord("j1", name, material, start, Optional.empty(), cured)))));
    }

    private void fliesWith(String name, String quantity) throws Exception {
        journal.apply(Edit.add("set up", setUp(MARCH, name, quantity)));
    }

    private EntryRecord setUp(LocalDateTime at, String name, String quantity) throws Exception {
        return EntryRecord.blank(build.id(), Kind.SET_UP, at)
                .withSetUp(List.of(new SetUpRecord(name, QuantityText.parse(quantity, Units.NUMBER))));
    }

    private static PartRecord part(String name, double grams, double x) {
        return new PartRecord(
                "k3f9q2",
                name,
                "airframe",
                Optional.of(Measured.of(grams, Units.GRAM)),
                Optional.of(Measured.of(x, Units.MILLIMETRE)),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }
}
