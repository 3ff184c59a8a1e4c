package planewright.ducts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import planewright.api.calculator.Finding.Grade;
import planewright.api.calculator.Language;
import planewright.api.calculator.Proposal;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.figure.Drawing;
import planewright.api.figure.Drawing.Use;
import planewright.api.figure.Point;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;

/** What a builder is told of an inlet, and what is drawn. */
class SubmergedInletTest {
    /** Half of the last digit that tables are given to, mm. */
    private static final double HUNDREDTH = 0.005 + 1e-9;

    @Test
    void areaAndWidthAreInverse() throws Exception {
        var fromWidth = Asked.width(40).answer();
        assertThat(fromWidth.depth().in(Units.MILLIMETRE)).isCloseTo(10, within(1e-9));
        assertThat(fromWidth.area().in(Units.SQUARE_MILLIMETRE)).isCloseTo(400, within(1e-6));
        var fromArea = Asked.area(400).answer();
        assertThat(fromArea.width().in(Units.MILLIMETRE)).isCloseTo(40, within(1e-9));
        assertThat(fromArea.length().in(Units.MILLIMETRE))
                .isCloseTo(fromWidth.length().in(Units.MILLIMETRE), within(1e-9));
    }

    /** The floor leaves the skin at the apex with the ramp's angle and lies an entrance below the skin's plain edge. */
    @Test
    void plainLipIsShorterByItsPlainGeometry() throws Exception {
        var answer = Asked.width(40).plain(2).answer();
        double reach = 12 / Math.tan(Math.toRadians(7));
        assertThat(answer.floor().in(Units.MILLIMETRE)).isCloseTo(12, within(1e-9));
        assertThat(answer.length().in(Units.MILLIMETRE)).isCloseTo(reach - 1, within(1e-9));
        assertThat(answer.lipRadius().in(Units.MILLIMETRE)).isCloseTo(1, within(1e-9));
        var last = answer.stations().get(10);
        assertThat(last.depth().in(Units.MILLIMETRE))
                .isCloseTo((reach - 1) * Math.tan(Math.toRadians(7)), within(HUNDREDTH));
    }

    /** Arc and fall of a circle, integrated here by Simpson's rule instead of the closed formulas. */
    @Test
    void roundSkinKeepsTheAreaAndWidensThePaper() throws Exception {
        double radius = 60;
        var answer = Asked.width(40).across(radius).answer();
        int pieces = 1000;
        double opening = 0;
        double arc = 0;
        double inner = 0.481 * 10;
        for (int i = 0; i <= pieces; i++) {
            double y = -20 + 40.0 * i / pieces;
            double weight = (i == 0 || i == pieces ? 1 : i % 2 == 1 ? 4 : 2) * 40.0 / pieces / 3;
            double skin = Math.sqrt(radius * radius - y * y) - radius;
            opening += weight * (skin - inner + answer.floor().in(Units.MILLIMETRE));
            arc += weight * radius / Math.sqrt(radius * radius - y * y);
        }
        assertThat(opening).isCloseTo(400, within(1e-6));
        var lip = answer.stations().get(10);
        assertThat(2 * lip.halfWidthOnSkin().in(Units.MILLIMETRE)).isCloseTo(arc, within(2 * HUNDREDTH));
        assertThat(lip.depth().in(Units.MILLIMETRE) - lip.depthAtWall().in(Units.MILLIMETRE))
                .isCloseTo(radius - Math.sqrt(radius * radius - 400), within(2 * HUNDREDTH));
        assertThat(Asked.width(40).across(radius).told(Grade.LOOK_AGAIN)).anyMatch(text -> text.contains("3.4 mm"));
        assertThat(Asked.width(40).across(50_000).told(Grade.LOOK_AGAIN)).isEmpty();
    }

    /** The bulge of an arc over its chord: s²/8R, 1.6 mm for the 111 mm of this ramp on a radius of 1 m. */
    @Test
    void bulgingSkinBendsTheFloor() throws Exception {
        double length = Asked.width(40).answer().length().in(Units.MILLIMETRE);
        var asked = Asked.width(40).along(1000);
        assertThat(asked.answer().length().in(Units.MILLIMETRE)).isCloseTo(length, within(1e-9));
        assertThat(asked.told(Grade.LOOK_AGAIN))
                .singleElement()
                .asString()
                .contains("bulges " + new Words(Language.ENGLISH).mm(length * length / 8000 / 1000));
        var ramp = paths(asked.answer().drawing(), Use.CUT).get(1).points();
        var apex = ramp.get(0);
        var end = ramp.get(ramp.size() - 1);
        double centre = apex.y() - Math.sqrt(1e6 - Math.pow(apex.x() - length / 2, 2));
        assertThat(Math.hypot(end.x() - length / 2, end.y() - centre))
                .isCloseTo(1000 - asked.answer().floor().in(Units.MILLIMETRE), within(1e-6));
        assertThat(Asked.width(40).along(1000).across(60).told(Grade.LOOK_AGAIN))
                .anyMatch(text -> text.contains("round both ways"));
    }

    @ParameterizedTest
    @CsvSource({
        "14, stop, 'comes out 0.0 mm ahead of the lip'",
        "12, stop, 'comes out 15.4 mm ahead of the lip'",
        "12, stop, 'Up to 6.1 mm of entrance depth fits'",
        "12, stop, 'for the same area cut 3 inlets of 133 mm² each'",
        "17, look again, 'make it 42.3 mm wide, or cut 2 inlets of 200 mm² each'",
        "7, stop, 'No inlet worth cutting'",
        "16, look again, 'Only 1.2 mm of foam stay'",
        "20, fine, '5.2 mm of foam stay'"
    })
    void foamIsCheckedWithAWayOut(double foam, String grade, String text) throws Exception {
        assertThat(Asked.width(40).foam(foam).answer().findings())
                .anyMatch(finding ->
                        finding.grade().word().equals(grade) && finding.text().contains(text));
    }

    /** The way out that is told is one: what it proposes leaves the foam that is to be kept. */
    @Test
    void smallerInletsThatAreProposedFit() throws Exception {
        assertThat(Asked.area(400 / 3.0).foam(12).told(Grade.STOP)).isEmpty();
        assertThat(Asked.area(400 / 3.0)
                        .foam(12)
                        .answer()
                        .foamLeft()
                        .orElseThrow()
                        .in(Units.MILLIMETRE))
                .isGreaterThanOrEqualTo(3);
        assertThat(Asked.area(400 / 2.0)
                        .foam(12)
                        .answer()
                        .foamLeft()
                        .orElseThrow()
                        .in(Units.MILLIMETRE))
                .isLessThan(3);
    }

    @Test
    void rampsAndProportionsOutsideAreToldWithNumbers() throws Exception {
        assertThat(Asked.width(40).ramp(12).told(Grade.LOOK_AGAIN))
                .singleElement()
                .asString()
                .contains("12.0° is steep", "at 7° it gets 113.1 mm long");
        assertThat(Asked.width(40).ramp(3).told(Grade.LOOK_AGAIN))
                .singleElement()
                .asString()
                .contains("at 5° it gets");
        assertThat(Asked.width(40).ratio(2).told(Grade.LOOK_AGAIN))
                .singleElement()
                .asString()
                .contains("49.0 mm wide and 16.3 mm deep");
        assertThat(Asked.width(12).told(Grade.LOOK_AGAIN))
                .singleElement()
                .asString()
                .contains("only 3.0 mm deep");
    }

    /** First-order propagation against ten thousand draws; 5 % of the spread. */
    @Test
    void spreadAgreesWithMonteCarlo() throws Exception {
        var answer = Asked.width(Measured.of(40, 0.5, Units.MILLIMETRE))
                .ratio(Measured.of(4, 0.1, Units.NUMBER))
                .ramp(Measured.of(7, 0.25, Units.DEGREE))
                .across(Measured.of(60, 3, Units.MILLIMETRE))
                .foam(Measured.of(20, 0.4, Units.MILLIMETRE))
                .answer();
        var random = new Random(4711);
        double[] sums = new double[4];
        int draws = 10_000;
        for (int i = 0; i < draws; i++) {
            var drawn = Asked.width(40 + 0.5 * random.nextGaussian())
                    .ratio(4 + 0.1 * random.nextGaussian())
                    .ramp(7 + 0.25 * random.nextGaussian())
                    .across(60 + 3 * random.nextGaussian());
            var shape = InletAnswer.shape(drawn.inputs());
            double length = 1000 * shape.length();
            double left = 20 + 0.4 * random.nextGaussian() - 1000 * shape.floorDepth();
            sums[0] += length;
            sums[1] += length * length;
            sums[2] += left;
            sums[3] += left * left;
        }
        double length = Math.sqrt(sums[1] / draws - Math.pow(sums[0] / draws, 2));
        double left = Math.sqrt(sums[3] / draws - Math.pow(sums[2] / draws, 2));
        assertThat(answer.length().spreadIn(Units.MILLIMETRE)).isCloseTo(length, within(0.05 * length));
        assertThat(answer.foamLeft().orElseThrow().spreadIn(Units.MILLIMETRE)).isCloseTo(left, within(0.05 * left));
        assertThat(Asked.width(40).answer().length().plusMinus()).isEmpty();
    }

    @Test
    void cutLinesAreAsLargeAsTheInlet() throws Exception {
        var answer = Asked.width(40).across(60).foam(20).answer();
        var plan = paths(answer.drawing(), Use.CUT).get(0);
        assertThat(extent(plan, true)).isCloseTo(answer.length().in(Units.MILLIMETRE), within(1e-9));
        assertThat(extent(plan, false))
                .isCloseTo(2 * answer.stations().get(10).halfWidthOnSkin().in(Units.MILLIMETRE), within(2 * HUNDREDTH));
        var ramp = paths(answer.drawing(), Use.CUT).get(1);
        assertThat(extent(ramp, true)).isCloseTo(answer.room().in(Units.MILLIMETRE), within(1e-9));
        assertThat(extent(ramp, false)).isCloseTo(answer.floor().in(Units.MILLIMETRE), within(1e-9));
        var lip = paths(answer.drawing(), Use.CUT).get(2);
        assertThat(extent(lip, true)).isCloseTo(10, within(1e-9));
        assertThat(extent(lip, false)).isCloseTo(5, within(1e-9));
        var apex = paths(answer.drawing(), Use.FOLD).get(0);
        assertThat(extent(apex, false))
                .isCloseTo(2 * answer.stations().get(0).halfWidthOnSkin().in(Units.MILLIMETRE), within(2 * HUNDREDTH));
    }

    /** Plan and section stand clear of each other, so that both can be cut from one paper. */
    @ParameterizedTest
    @CsvSource({"40, 0", "12, 0", "400, 0", "40, 300"})
    void planAndSectionStandClear(double width, double radius) throws Exception {
        var asked = radius > 0 ? Asked.width(width).along(radius) : Asked.width(width);
        var cuts = paths(asked.foam(100).answer().drawing(), Use.CUT);
        double plan = cuts.get(0).points().stream().mapToDouble(Point::y).min().orElseThrow();
        double section =
                cuts.get(1).points().stream().mapToDouble(Point::y).max().orElseThrow();
        assertThat(plan - section).isGreaterThan(20);
    }

    @Test
    void measurementsAndTheOutlineAreProposed() throws Exception {
        var results = Asked.area(400).answer();
        assertThat(results.proposals())
                .extracting(Proposal::name)
                .containsExactly(
                        "inlet area", "inlet width", "inlet depth", "inlet length", "submerged inlet, 40 mm wide");
        var outline = ((Proposal.NewOutline) results.proposals().get(4)).outline();
        assertThat(outline.width()).isCloseTo(results.length().in(Units.MILLIMETRE), within(1e-9));
        assertThat(outline.height()).isCloseTo(results.width().in(Units.MILLIMETRE), within(1e-9));
        assertThat(outline.paths()).hasSize(1);
        assertThat(outline.paths().get(0).closed()).isTrue();
        // the outline is the cut-out: the surveyor's formula over its points gives the area that the answer tells
        double twice = 0;
        var at = outline.paths().get(0).start();
        for (var piece : outline.paths().get(0).pieces()) {
            twice += at.x() * piece.end().y() - piece.end().x() * at.y();
            at = piece.end();
        }
        assertThat(Math.abs(twice) / 2).isCloseTo(results.cutOut().in(Units.SQUARE_MILLIMETRE), withinPercentage(0.5));
    }

    @Test
    void whatDoesNotGoTogetherIsRefusedByName() {
        assertThatThrownBy(() -> Asked.nothing().answer())
                .isInstanceOf(UnsuitableInput.class)
                .hasMessageContaining("Width or area is missing")
                .hasMessageContaining("one of the two");
        assertThatThrownBy(() -> Asked.width(40)
                        .area(Measured.of(400, Units.SQUARE_MILLIMETRE))
                        .answer())
                .hasMessageContaining("given twice");
        assertThatThrownBy(() -> Asked.width(100).across(50).answer())
                .hasMessageContaining("Width of the inlet is 100.0 mm")
                .hasMessageContaining("up to 60.0 mm on a skin of radius 50 mm");
        assertThatThrownBy(() -> Asked.area(400).along(60).answer())
                .hasMessageContaining("Length of the inlet is 113.1 mm")
                .hasMessageContaining("up to 60.0 mm");
        assertThatThrownBy(
                        () -> Asked.width(Measured.of(40, 9, Units.MILLIMETRE)).answer())
                .hasMessageContaining("± of width is 9 mm")
                .hasMessageContaining("up to 8 mm");
    }

    private static List<Drawing.Path> paths(Drawing drawing, Use use) {
        return drawing.layers().stream()
                .filter(layer -> layer.use() == use)
                .flatMap(layer -> layer.shapes().stream())
                .map(Drawing.Path.class::cast)
                .toList();
    }

    private static double extent(Drawing.Path path, boolean along) {
        var range = path.points().stream()
                .mapToDouble(point -> along ? point.x() : point.y())
                .summaryStatistics();
        return range.getMax() - range.getMin();
    }
}
