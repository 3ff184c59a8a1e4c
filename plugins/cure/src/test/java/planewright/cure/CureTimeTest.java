package planewright.cure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import planewright.api.calculator.Finding;
import planewright.api.calculator.Finding.Grade;
import planewright.api.calculator.Proposal;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.figure.Chart;
import planewright.api.journal.Entry;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.shared.material.Materials;

/** What a builder is told of a joint in an evening shop. */
class CureTimeTest {
    private static final LocalDateTime EVENING = Asked.EVENING;

    @Test
    void jointIsProposedByTheEndThatIsCountedOn() throws Exception {
        var slow = Asked.of("polyurethane").answer();
        assertThat(slow.proposals())
                .containsExactly(
                        new Proposal.NewJoint(
                                "fin to hull",
                                "foaming polyurethane glue",
                                EVENING,
                                EVENING.plusHours(2),
                                EVENING.plusHours(48)),
                        new Proposal.NewTask("apply foaming polyurethane glue to fin to hull", Optional.empty()));
        var likely = Asked.of("polyurethane").likely().answer();
        assertThat(likely.handsOffUntil()).isEqualTo(EVENING.plusMinutes(90));
        assertThat(likely.fullyCured()).isEqualTo(EVENING.plusHours(24));
    }

    @Test
    void coldNightTakesLongerThanAWarmShop() throws Exception {
        var night = Asked.of("laminating epoxy")
                .reading(LocalDateTime.of(2025, 1, 1, 7, 0), 9)
                .reading(LocalDateTime.of(2025, 1, 1, 17, 0), 19)
                .reading(LocalDateTime.of(2025, 1, 1, 22, 0), 16)
                .daily()
                .answer();
        double hours = night.fullyCuredAfter().in(Units.HOUR);
        assertThat(hours)
                .isGreaterThan(Asked.of("laminating epoxy")
                        .at(19)
                        .answer()
                        .fullyCuredAfter()
                        .in(Units.HOUR));
        assertThat(hours)
                .isLessThan(Asked.of("laminating epoxy")
                        .at(9)
                        .answer()
                        .fullyCuredAfter()
                        .in(Units.HOUR));
        var shop = ((Chart.OverTime) night.shop()).series().get(0).points();
        assertThat(shop.stream().mapToDouble(point -> point.y()).min().orElseThrow())
                .isCloseTo(9, within(1e-6));
    }

    @Test
    void rangeAndSpreadHoldTogether() throws Exception {
        for (var name : Materials.table().names(Materials.CURE)) {
            var answer = Asked.of(name).at(17, 2).answer();
            for (var stage : answer.stages()) {
                assertThat(stage.quick()).isBeforeOrEqualTo(stage.likely());
                assertThat(stage.likely()).isBeforeOrEqualTo(stage.slow());
            }
            assertThat(answer.handsOffUntil()).isBeforeOrEqualTo(answer.fullyCured());
            assertThat(answer.figures()).hasSizeGreaterThanOrEqualTo(4);
        }
    }

    /** First-order propagation against ten thousand draws of everything that is uncertain; 6 % of the spread. */
    @Test
    void spreadAgreesWithMonteCarlo() throws Exception {
        var inputs = Asked.of("laminating epoxy").at(20, 1);
        var answer = inputs.answer();
        var curing = Curing.of(Materials.table(), "laminating epoxy");
        var random = new Random(4711);
        double sum = 0;
        double squares = 0;
        int draws = 10_000;
        for (int i = 0; i < draws; i++) {
            double kelvin = 293.15 + random.nextGaussian();
            double hours = triangular(random, curing.handsOff());
            double energy = triangular(random, curing.energy());
            double drawn = hours / Arrhenius.rate(energy, kelvin, curing.kelvin());
            sum += drawn;
            squares += drawn * drawn;
        }
        double spread = Math.sqrt(squares / draws - sum / draws * (sum / draws));
        assertThat(answer.handsOffFor().spreadIn(Units.HOUR)).isCloseTo(spread, within(0.06 * spread));
    }

    @Test
    void chartsRunFromNothingToDoneAndMarkTheMoments() throws Exception {
        var answer = Asked.of("30-minute epoxy").nowIs(EVENING.plusHours(3)).answer();
        var cure = (Chart.BandsOverTime) answer.cure();
        assertThat(cure.from()).isEqualTo(EVENING);
        for (var band : cure.bands()) {
            assertThat(band.spans().get(0)).isEqualTo(new Chart.Span(0, 0, 0, 0));
            assertThat(band.spans().get(120).low()).isEqualTo(100);
            assertThat(band.spans()).anyMatch(span -> span.low() < span.middle() && span.middle() < span.high());
        }
        assertThat(cure.moments())
                .containsExactly(
                        new Chart.Moment("hands off until", answer.handsOffUntil()),
                        new Chart.Moment("fully cured", answer.fullyCured()),
                        new Chart.Moment("now", EVENING.plusHours(3)));
    }

    /** Closed on a Friday evening, hands off for 2 h, cured on Sunday; the bench is manned on Tuesdays and Thursdays. */
    @Test
    void theNextBenchSessionIsTold() throws Exception {
        var answer = Asked.of("polyurethane").tuesdaysAndThursdays(19, 22).answer();
        assertThat(answer.touchFrom()).contains(LocalDateTime.of(2025, 3, 18, 19, 0));
        assertThat(answer.loadFrom()).isEqualTo(answer.touchFrom());
        assertThat(answer.findings())
                .extracting(Finding::text)
                .contains("It may be touched at the bench on Tuesday 18 March from 19:00 to 22:00.");
        assertThat(((Chart.BandsOverTime) answer.cure()).moments())
                .contains(new Chart.Moment("at the bench", LocalDateTime.of(2025, 3, 18, 19, 0)));
    }

    @Test
    void ofASessionThatHasBegunTheRestIsToldUnlessItIsTooShort() throws Exception {
        var tuesday = LocalDateTime.of(2025, 3, 18, 21, 30);
        var asked = Asked.of("polyurethane").tuesdaysAndThursdays(19, 22);
        assertThat(asked.nowIs(tuesday).answer().touchFrom()).contains(tuesday);
        assertThat(asked.nowIs(tuesday.plusMinutes(20)).answer().touchFrom())
                .contains(LocalDateTime.of(2025, 3, 20, 19, 0));
    }

    @Test
    void aSessionUntilMidnightEndsTheNextDay() throws Exception {
        var answer = Asked.of("polyurethane").tuesdaysAndThursdays(20, 24).answer();
        assertThat(answer.findings())
                .extracting(Finding::text)
                .contains("It may be touched at the bench on Tuesday 18 March from 20:00 to 00:00.");
    }

    @ParameterizedTest
    @CsvSource({
        "0, Leave it alone for another 2 h.",
        "119, Leave it alone for another 1 min.",
        "120, 'It may be touched, but not loaded for another 46 h.'",
        "2880, By now it is fully cured."
    })
    void timeLeftIsTold(int minutes, String text) throws Exception {
        var answer =
                Asked.of("polyurethane").nowIs(EVENING.plusMinutes(minutes)).answer();
        assertThat(answer.findings()).extracting(Finding::text).contains(text);
    }

    @Test
    void nothingIsToldOfAJointThatIsStillToCome() throws Exception {
        assertThat(texts(Asked.of("polyurethane").nowIs(EVENING.minusHours(1)), Grade.LOOK_AGAIN))
                .noneMatch(text -> text.contains("another"));
    }

    @ParameterizedTest
    @CsvSource({
        "foaming polyurethane glue, 3, stop, for 5 °C and more",
        "foaming polyurethane glue, 33, look again, for up to 30 °C",
        "PVA or aliphatic wood glue, 8, stop, for 10 °C and more"
    })
    void wrongTemperatureIsTold(String material, double celsius, String grade, String text) throws Exception {
        assertThat(Asked.of(material).at(celsius).answer().findings())
                .anyMatch(finding ->
                        finding.grade().word().equals(grade) && finding.text().contains(text));
    }

    @Test
    void facesDampAndThicknessAreTold() throws Exception {
        assertThat(texts(Asked.of("aliphatic wood glue").betweenFoams(), Grade.STOP))
                .anyMatch(text -> text.contains("cannot leave"));
        assertThat(texts(Asked.of("polyurethane").betweenFoams(), Grade.LOOK_AGAIN))
                .anyMatch(text -> text.contains("mist one face"));
        assertThat(texts(Asked.of("contact adhesive").betweenFoams(), Grade.LOOK_AGAIN))
                .anyMatch(text -> text.contains("dry to the touch"));
        assertThat(texts(Asked.of("cyanoacrylate").humid(20), Grade.LOOK_AGAIN))
                .anyMatch(text -> text.contains("The air is dry"));
        assertThat(texts(Asked.of("lightweight spackle").humid(85).thick(5), Grade.LOOK_AGAIN))
                .anyMatch(text -> text.contains("dries slowly"))
                .anyMatch(text -> text.contains("thicker than the 3.2 mm"));
        assertThat(texts(Asked.of("laminating epoxy").thick(12), Grade.STOP))
                .anyMatch(text -> text.contains("heats itself"));
        assertThat(texts(Asked.of("polyurethane").closedWet(), Grade.LOOK_AGAIN))
                .anyMatch(text -> text.contains("was not used"));
    }

    /** Common practice, no source: at least half a day, up to three, where solvent is shut in. */
    @Test
    void contactAdhesiveClosedWetTakesAsLongAsItsSolvent() throws Exception {
        var dry = Asked.of("contact adhesive").at(23).answer();
        assertThat(dry.handsOffUntil()).isEqualTo(EVENING);
        assertThat(dry.flashOff().orElseThrow().in(Units.MINUTE)).isCloseTo(15, within(1e-6));
        var wet = Asked.of("contact adhesive").at(23).closedWet().answer();
        assertThat(wet.stages().get(0).quick()).isEqualTo(EVENING.plusHours(12));
        assertThat(wet.handsOffUntil()).isEqualTo(EVENING.plusHours(72));
        assertThat(wet.flashOff()).isEmpty();
    }

    @Test
    void dampAirHurriesMoistureCureAndHindersDrying() throws Exception {
        double glue = Asked.of("polyurethane").answer().fullyCuredAfter().in(Units.HOUR);
        assertThat(Asked.of("polyurethane").humid(25).answer().fullyCuredAfter().in(Units.HOUR))
                .isCloseTo(2 * glue, within(1e-6));
        double filler =
                Asked.of("lightweight spackle").answer().fullyCuredAfter().in(Units.HOUR);
        assertThat(Asked.of("lightweight spackle")
                        .humid(75)
                        .answer()
                        .fullyCuredAfter()
                        .in(Units.HOUR))
                .isCloseTo(2 * filler, within(1e-6));
    }

    @Test
    void ownExperienceGoesBeforeTheTableAndIsMarked() throws Exception {
        var own = Asked.of("laminating epoxy")
                .own(Measured.of(10, 1, Units.HOUR), null, 20)
                .thick(1)
                .answer();
        assertThat(own.handsOffFor().in(Units.HOUR)).isCloseTo(10, within(1e-9));
        assertThat(own.stages().get(0).slow()).isEqualTo(EVENING.plusHours(12));
        assertThat(own.fullyCuredAfter().in(Units.HOUR))
                .isCloseTo(
                        Asked.of("laminating epoxy").answer().fullyCuredAfter().in(Units.HOUR), within(1e-6));
        assertThat(own.findings())
                .contains(Finding.fine("Your own experience goes before the table: your own figure for hands off."));
    }

    @Test
    void experienceIsTakenFromTheNewestMeasurementOfAnyBuild() throws Exception {
        var builds = List.of(Logged.aircraft("heron"), Logged.aircraft("swift"));
        List<Entry> log = List.of(
                new Logged("heron", EVENING.minusDays(40), "Laminating epoxy hands off", Measured.of(9, Units.HOUR)),
                new Logged(
                        "swift", EVENING.minusDays(20), "laminating epoxy hands off", Measured.of(660, Units.MINUTE)),
                new Logged("heron", EVENING.minusDays(10), "laminating epoxy hands off", Measured.of(3, Units.GRAM)),
                new Logged("heron", EVENING.minusDays(9), "laminating epoxy fully cured", Measured.of(91, Units.DAY)));
        var answer = Asked.of("laminating epoxy with flock").answer(builds, log);
        assertThat(answer.handsOffFor().in(Units.HOUR)).isCloseTo(11, within(1e-9));
        assertThat(answer.findings())
                .contains(
                        Finding.fine("Your own experience goes before the table: 'laminating epoxy hands off' measured"
                                + " 22 Feb 2025."));
        assertThat(Asked.of("laminating epoxy")
                        .own(Measured.of(5, Units.HOUR), null, 20)
                        .answer(builds, log)
                        .handsOffFor()
                        .in(Units.HOUR))
                .isCloseTo(5, within(1e-9));
    }

    /** A time of the list is one at the list's temperature, as one typed in is at the temperature typed in. */
    @Test
    void theJournalsMaterialsGoBeforeTheTableAndAreCarriedOverToTheShopsTemperature() throws Exception {
        var tin = new Listed("tall tin", "laminating epoxy", Measured.of(14, Units.HOUR), 15);
        var typed = Asked.of("laminating epoxy")
                .own(Measured.of(14, Units.HOUR), null, 15)
                .answer();
        for (var called : List.of("tall tin", "Laminating Epoxy", "laminating epoxy with flock")) {
            var answer = Asked.of(called).knows(tin).answer();
            assertThat(answer.handsOffFor().in(Units.HOUR))
                    .as(called)
                    .isCloseTo(typed.handsOffFor().in(Units.HOUR), within(1e-9))
                    .isLessThan(14);
            assertThat(answer.findings())
                    .contains(Finding.fine(
                            "Your own experience goes before the table: 'tall tin' hands off in your materials."));
        }
        assertThat(Asked.of("tall tin")
                        .knows(tin)
                        .own(Measured.of(5, Units.HOUR), null, 20)
                        .answer()
                        .handsOffFor()
                        .in(Units.HOUR))
                .isCloseTo(5, within(1e-9));
        assertThat(Asked.of("cyanoacrylate").knows(tin).answer().findings())
                .noneMatch(finding -> finding.text().contains("your materials"));
    }

    @Test
    void glueThatNoTableKnowsNeedsBothTimes() throws Exception {
        var answer = Asked.of("flexible hinge glue")
                .own(Measured.of(2, Units.HOUR), Measured.of(24, Units.HOUR), 20)
                .answer();
        assertThat(answer.handsOffUntil()).isEqualTo(EVENING.plusHours(2));
        assertThat(answer.fullyCured()).isEqualTo(EVENING.plusHours(24));
        assertThatThrownBy(() -> Asked.of("flexible hinge glue")
                        .own(Measured.of(2, Units.HOUR), null, 20)
                        .answer())
                .isInstanceOf(UnsuitableInput.class)
                .hasMessageContaining("'flexible hinge glue'")
                .hasMessageContaining("hot-melt glue");
    }

    @ParameterizedTest
    @CsvSource({"'', missing", "'  ', missing", "epoxy, 'epoxy'", "spit, 'spit'"})
    void materialThatCouldBeAnythingIsRefused(String material, String value) {
        assertThatThrownBy(() -> Asked.of(material).answer())
                .isInstanceOf(UnsuitableInput.class)
                .hasMessageContaining("Material is")
                .hasMessageContaining(value)
                .hasMessageContaining("laminating epoxy");
    }

    @Test
    void whatNeverCuresIsRefusedWithAWayOut() {
        assertThatThrownBy(() -> Asked.of("polyurethane").humid(0).answer())
                .isInstanceOf(UnsuitableInput.class)
                .hasMessageContaining("Relative humidity is 0 %")
                .hasMessageContaining("Mist one face");
        assertThatThrownBy(() -> Asked.of("lightweight spackle")
                        .thick(50)
                        .at(-20)
                        .humid(95)
                        .answer())
                .isInstanceOf(UnsuitableInput.class)
                .hasMessageContaining("400 days");
    }

    private static List<String> texts(Asked asked, Grade grade) throws UnsuitableInput {
        return asked.answer().findings().stream()
                .filter(finding -> finding.grade() == grade)
                .map(Finding::text)
                .toList();
    }

    /** Inverse of the triangular distribution with an unsymmetric peak (cited from memory). */
    private static double triangular(Random random, Range range) {
        double drawn = random.nextDouble();
        double width = range.high() - range.low();
        double peak = (range.typical() - range.low()) / width;
        return drawn < peak
                ? range.low() + Math.sqrt(drawn * width * (range.typical() - range.low()))
                : range.high() - Math.sqrt((1 - drawn) * width * (range.high() - range.typical()));
    }
}
