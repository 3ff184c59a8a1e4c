package planewright.throws_;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import planewright.api.calculator.Finding;
import planewright.api.calculator.Finding.Grade;
import planewright.api.calculator.Language;
import planewright.api.calculator.Proposal;
import planewright.api.figure.Chart;
import planewright.api.figure.Drawing;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;

/** What a builder is told about a linkage. */
class ServoLinkageTest {
    /** A parallelogram: the surface turns as the arm, up and down alike, with a leverage of 1. */
    @Test
    void evenLinkageGoesUpAndDownAlike() throws Exception {
        var answer = Shops.linkage().arm(12).horn(12).hinge(80, 0).travel(30).answer();
        assertThat(answer.throwUp().in(Units.DEGREE)).isCloseTo(30, within(1e-9));
        assertThat(answer.throwDown().in(Units.DEGREE)).isCloseTo(30, within(1e-9));
        assertThat(answer.differential().orElseThrow().in(Units.PERCENT)).isCloseTo(0, within(1e-9));
        assertThat(answer.centreRatio().in(Units.NUMBER)).isCloseTo(1, within(1e-9));
        assertThat(answer.neutralPushrod().in(Units.MILLIMETRE)).isCloseTo(80, within(1e-9));
        assertThat(answer.surfaceStep().in(Units.DEGREE)).isCloseTo(0.5, within(1e-9));
        assertThat(answer.neutral().in(Units.DEGREE)).isZero();
        assertThat(answer.places()).allSatisfy(place -> {
            assertThat(place.leverage().orElseThrow().in(Units.NUMBER)).isCloseTo(1, within(1e-9));
            assertThat(Math.abs(place.surface().in(Units.DEGREE)))
                    .isCloseTo(Math.abs(place.arm().in(Units.DEGREE)), within(1e-9));
        });
        assertThat(answer.findings()).extracting(Finding::grade).containsOnly(Grade.FINE);
    }

    /** A horn above is pushed aft and the surface goes down; one below pushes it up. */
    @Test
    void hornBelowSwapsUpAndDown() throws Exception {
        var above = Shops.linkage().lean(8).offset(-3).answer();
        var below = Shops.linkage().lean(8).offset(-3).below().answer();
        assertThat(below.throwUp()).isEqualTo(above.throwDown());
        assertThat(below.throwDown()).isEqualTo(above.throwUp());
        assertThat(above.places().get(4).stick().in(Units.PERCENT)).isEqualTo(100);
        assertThat(above.places().get(4).surface().in(Units.DEGREE)).isNegative();
        assertThat(below.places().get(4).surface().in(Units.DEGREE)).isPositive();
        assertThat(above.throwUp()).isNotEqualTo(above.throwDown());
    }

    /**
     * Documentation of a microcontroller's servo library, see {@code published.json}: 1000, 1500 and 2000 µs; anything from
     * 500 to 2500 must be possible. 45° for 500 µs is common practice, no source.
     */
    @Test
    void pulsesAreTheUsualOnes() throws Exception {
        var usual = Published.of("C-09");
        assertThat(Shops.linkage().answer().places())
                .extracting(ServoLinkage.PlaceLine::pulse)
                .contains(
                        pulse(usual.expected("low_end")),
                        pulse(usual.expected("centre")),
                        pulse(usual.expected("high_end")));
        assertThat(Shops.linkage().arm(6).travel(40).ends(200, 200).answer().places())
                .extracting(ServoLinkage.PlaceLine::pulse)
                .startsWith("500 µs")
                .endsWith("2500 µs");
    }

    private static String pulse(double microseconds) {
        return Math.round(microseconds) + " µs";
    }

    @Test
    void endPointThatTheFindingNamesMakesUpAndDownEven() throws Exception {
        var uneven = Shops.linkage().lean(15).answer();
        assertThat(Math.abs(uneven.differential().orElseThrow().in(Units.PERCENT)))
                .isGreaterThan(5);
        var text = texts(uneven, Grade.LOOK_AGAIN).stream()
                .filter(finding -> finding.contains("makes them even"))
                .findFirst()
                .orElseThrow();
        double percent = Double.parseDouble(text.replaceAll(".* at (\\d+) %.*", "$1"));
        var even = text.contains("end point towards the surface")
                ? Shops.linkage().lean(15).ends(percent, 100).answer()
                : Shops.linkage().lean(15).ends(100, percent).answer();
        assertThat(even.throwUp().in(Units.DEGREE)).isCloseTo(even.throwDown().in(Units.DEGREE), within(0.5));
    }

    @Test
    void pushrodOfTheWrongLengthIsToldAndPutRight() throws Exception {
        var neutral = Shops.linkage().answer().neutralPushrod().in(Units.MILLIMETRE);
        var off = Shops.linkage().pushrod(neutral + 1).answer();
        assertThat(off.neutral().in(Units.DEGREE)).isCloseTo(-Math.toDegrees(1 / 16.0), within(0.15));
        assertThat(texts(off, Grade.LOOK_AGAIN))
                .anyMatch(text -> text.contains("down: make the pushrod 1.0 mm shorter."));
        var right = Shops.linkage().pushrod(neutral).answer();
        assertThat(right.neutral().in(Units.DEGREE)).isCloseTo(0, within(1e-9));
        assertThat(texts(right, Grade.FINE)).contains("With the servo centred the surface is neutral.");
        assertThat(right.throwUp().in(Units.DEGREE))
                .isCloseTo(Shops.linkage().answer().throwUp().in(Units.DEGREE), within(1e-9));
    }

    /** A long arm on a short horn pulls the horn into line with the pushrod before the servo's travel ends. */
    @Test
    void linkageThatLocksIsStoppedAtTheLock() throws Exception {
        var answer = Shops.linkage().arm(20).horn(10).travel(60).answer();
        assertThat(texts(answer, Grade.STOP)).anyMatch(text -> text.contains("linkage locks"));
        var locks = answer.limits().stream()
                .filter(limit -> limit.then().equals("it locks") && limit.within())
                .toList();
        assertThat(locks).isNotEmpty();
        var setting = Measures.setting(
                Shops.linkage().arm(20).horn(10).travel(60).inputs(),
                Linkage.of(Measures.geometry(Shops.linkage().arm(20).horn(10).inputs()))
                        .orElseThrow());
        for (var lock : locks) {
            double turn = lock.arm().in(Units.RADIAN);
            assertThat(setting.linkage().pushrodToHorn(turn)).isCloseTo(0, within(1e-4));
            assertThat(lock.endPoint().in(Units.PERCENT))
                    .isCloseTo(100 * Math.abs(Math.toDegrees(turn)) / 60, within(1e-9));
        }
        assertThat(answer.throwUp().plusMinus()).isEmpty();
    }

    /** An arm that leans far to the surface comes in line with the pushrod while it pushes on. */
    @Test
    void linkageThatPassesOverCentreIsTold() throws Exception {
        var answer = Shops.linkage().lean(55).arm(8).answer();
        assertThat(texts(answer, Grade.STOP)).anyMatch(text -> text.contains("arm and pushrod come in line"));
        var turnsBack = answer.limits().stream()
                .filter(limit -> limit.then().contains("turns back") && limit.within())
                .findFirst()
                .orElseThrow();
        assertThat(answer.throwDown().in(Units.DEGREE))
                .isCloseTo(-turnsBack.surface().in(Units.DEGREE), within(1e-9));
        assertThat(answer.throwDown().in(Units.DEGREE))
                .isGreaterThan(-answer.places().get(4).surface().in(Units.DEGREE));
    }

    /** First-order ± against four thousand linkages thrown by dice, JCGM 101:2008 being the source of the method. */
    @Test
    void spreadAgreesWithDice() throws Exception {
        var answer = Shops.linkage()
                .arm(Measured.of(12, 0.2, Units.MILLIMETRE))
                .horn(Measured.of(16, 0.3, Units.MILLIMETRE))
                .answer();
        var random = new Random(7);
        double sum = 0;
        double squares = 0;
        int throwsOfDice = 4000;
        for (int i = 0; i < throwsOfDice; i++) {
            double up = LinkageAnswer.of(
                            new Words(Language.ENGLISH),
                            Shops.linkage()
                                    .arm(12 + 0.2 * random.nextGaussian())
                                    .horn(16 + 0.3 * random.nextGaussian())
                                    .inputs())
                    .up()
                    .in(Units.DEGREE);
            sum += up;
            squares += up * up;
        }
        double mean = sum / throwsOfDice;
        assertThat(answer.throwUp().in(Units.DEGREE)).isCloseTo(mean, within(0.05));
        assertThat(answer.throwUp().spreadIn(Units.DEGREE))
                .isCloseTo(Math.sqrt(squares / throwsOfDice - mean * mean), within(0.03));
    }

    @Test
    void withoutSpreadsNoSpreadIsTold() throws Exception {
        assertThat(Shops.linkage().answer().throwUp().plusMinus()).isEmpty();
        assertThat(Shops.linkage().answer().neutralPushrod().plusMinus()).isEmpty();
    }

    @Test
    void proposesThrowsAtTheMeasuringPointOrElseInDegrees() throws Exception {
        assertThat(Shops.linkage().chord(60).answer().proposals())
                .extracting(Proposal::name)
                .containsExactly("aileron throw up", "aileron throw down");
        var inMillimetres = (Proposal.NewSetUpValue)
                Shops.linkage().chord(60).answer().proposals().get(0);
        var inDegrees =
                (Proposal.NewSetUpValue) Shops.linkage().answer().proposals().get(0);
        double up = Shops.linkage().answer().throwUp().in(Units.RADIAN);
        assertThat(inMillimetres.value().value().getUnit()).isEqualTo(Units.MILLIMETRE);
        assertThat(inMillimetres.value().value().getValue().doubleValue())
                .isCloseTo(120 * Math.sin(up / 2), within(1e-9));
        assertThat(inDegrees.value().value().getUnit()).isEqualTo(Units.DEGREE);
    }

    /** Pushrods keep their length and arms reach their holes in the drawing, at true size. */
    @Test
    void drawingIsAtTrueSize() throws Exception {
        var answer = Shops.linkage().answer();
        var lengths = answer.drawing().layers().stream()
                .filter(layer -> layer.use() == Drawing.Use.FOLD || layer.use() == Drawing.Use.PART)
                .flatMap(layer -> layer.shapes().stream())
                .filter(Drawing.Path.class::isInstance)
                .map(shape -> ((Drawing.Path) shape).points())
                .map(points -> Math.hypot(
                        points.get(1).x() - points.get(0).x(),
                        points.get(1).y() - points.get(0).y()))
                .toList();
        for (double expected : List.of(12.0, answer.neutralPushrod().in(Units.MILLIMETRE), 16.0)) {
            assertThat(lengths)
                    .filteredOn(length -> Math.abs(length - expected) < 1e-9)
                    .hasSize(3);
        }
    }

    @Test
    void curveRunsFromEndToEndAndAgreesWithThePlaces() throws Exception {
        var answer = Shops.linkage().lean(10).answer();
        var curve = ((Chart.Lines) answer.curve()).series().get(0).points();
        assertThat(curve.get(0).x()).isCloseTo(-100, within(1e-9));
        assertThat(curve.get(curve.size() - 1).x()).isCloseTo(100, within(1e-9));
        Function<Integer, Double> place = i -> answer.places().get(i).surface().in(Units.DEGREE);
        assertThat(curve.get(0).y()).isCloseTo(place.apply(0), within(0.051));
        assertThat(curve.get(curve.size() / 2).y()).isCloseTo(place.apply(2), within(0.051));
        assertThat(curve.get(curve.size() - 1).y()).isCloseTo(place.apply(4), within(0.051));
    }

    private static List<String> texts(ServoLinkage.Results answer, Grade grade) {
        return answer.findings().stream()
                .filter(finding -> finding.grade() == grade)
                .map(Finding::text)
                .toList();
    }
}
