package planewright.app.pictures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.IntStream;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import planewright.api.figure.Point;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;

/** Lengths and angles on pictures against figures whose measures are known from geometry and from standards of paper and cards. */
class PictureScaleTest {
    private static final double ROUNDING = 1e-9;

    private static PictureMark mark(double x, double y) {
        return new PictureMark(new Point(x, y), 1);
    }

    /** A figure of true size, as a camera shows it that is turned by 33° and gives 7.3 pixels for a millimetre. */
    private static PictureMark seen(double x, double y) {
        double turn = Math.toRadians(33);
        return mark(
                400 + 7.3 * (x * Math.cos(turn) - y * Math.sin(turn)),
                300 + 7.3 * (x * Math.sin(turn) + y * Math.cos(turn)));
    }

    private static Measured<Length> mm(double length) {
        return Measured.of(length, Units.MILLIMETRE);
    }

    /** ISO 216: A4 is 210 mm × 297 mm; the diagonal by Euclid, Elements, I.47. */
    @Test
    void aSheetOfPaperTellsItsOtherSideAndItsDiagonal() {
        var scale = new PictureScale(seen(0, 0), seen(0, 297), mm(297));
        assertThat(scale.between(seen(0, 0), seen(210, 0)).in(Units.MILLIMETRE)).isCloseTo(210, within(ROUNDING));
        assertThat(scale.between(seen(210, 0), seen(0, 297)).in(Units.MILLIMETRE))
                .isCloseTo(Math.sqrt(210 * 210 + 297 * 297), within(ROUNDING));
    }

    /** ISO/IEC 7810: a card of size ID-1 is 85.60 mm × 53.98 mm; NIST SP 811 (2008), B.8: an inch is 25.4 mm. */
    @Test
    void aCardInInchesGivesInches() {
        var scale = new PictureScale(seen(0, 0), seen(85.60, 0), Measured.of(85.60 / 25.4, Units.INCH));
        var height = scale.between(seen(0, 0), seen(0, 53.98));
        assertThat(height.value().getUnit()).isEqualTo(Units.INCH);
        assertThat(height.in(Units.MILLIMETRE)).isCloseTo(53.98, within(1e-6));
    }

    /** Euclid, Elements, XIII.8: in a regular pentagon diagonal and side stand in the golden ratio; its angles are 108° (I.32). */
    @Test
    void aPentagonHasItsDiagonalsAndAngles() {
        var corners = IntStream.range(0, 5)
                .mapToObj(i -> seen(40 * Math.cos(2 * Math.PI * i / 5), 40 * Math.sin(2 * Math.PI * i / 5)))
                .toList();
        var scale = new PictureScale(corners.get(0), corners.get(1), mm(10));
        assertThat(scale.between(corners.get(0), corners.get(2)).in(Units.MILLIMETRE))
                .isCloseTo(10 * (1 + Math.sqrt(5)) / 2, within(ROUNDING));
        assertThat(PictureScale.angle(corners.get(1), corners.get(0), corners.get(2))
                        .in(Units.DEGREE))
                .isCloseTo(108, within(ROUNDING));
    }

    /** The triangle of 3, 4 and 5 has a right angle (Elements, I.48), whichever arm is marked first; a straight line has 180°. */
    @Test
    void rightAndStraightAngles() {
        var corner = seen(0, 0);
        assertThat(PictureScale.angle(corner, seen(3, 0), seen(0, 4)).in(Units.DEGREE))
                .isCloseTo(90, within(ROUNDING));
        assertThat(PictureScale.angle(corner, seen(0, 4), seen(3, 0)).in(Units.DEGREE))
                .isCloseTo(90, within(ROUNDING));
        assertThat(PictureScale.angle(corner, seen(-50, 0), seen(20, 0)).in(Units.DEGREE))
                .isCloseTo(180, within(ROUNDING));
        assertThat(PictureScale.angle(corner, seen(50, 0), seen(20, 0)).in(Units.DEGREE))
                .isCloseTo(0, within(1e-6));
    }

    /** JCGM 100:2008, 5.1.6: relative uncertainties of factors add in squares: 0.5 %, √2/1000 and √2/200. */
    @Test
    void theSpreadOfALengthCountsTheKnownLengthAndAllFourMarks() {
        var scale = new PictureScale(mark(0, 0), mark(1000, 0), Measured.of(100, 0.5, Units.MILLIMETRE));
        var length = scale.between(mark(0, 50), mark(200, 50));
        assertThat(length.in(Units.MILLIMETRE)).isCloseTo(20, within(ROUNDING));
        assertThat(length.spreadIn(Units.MILLIMETRE))
                .isCloseTo(20 * Math.sqrt(0.005 * 0.005 + 2e-6 + 2.0 / 40_000), within(1e-9));
    }

    /**
     * JCGM 101:2008: marks thrown at random around their places spread results as the formulas say; with 200,000 throws the spread
     * itself is known to 0.16 %, and what is left of second order is below 1 % here.
     */
    @Test
    void marksThrownAtRandomSpreadAsTheFormulasSay() {
        var random = new Random(7);
        var known = Measured.of(150, 0.3, Units.MILLIMETRE);
        var points = new Point[] {
            new Point(100, 80), new Point(900, 260), new Point(300, 500), new Point(620, 700), new Point(500, 200)
        };
        var told = new PictureScale(at(points[0]), at(points[1]), known);
        int throwCount = 200_000;
        var lengths = new double[throwCount];
        var angles = new double[throwCount];
        for (int i = 0; i < throwCount; i++) {
            var scale = new PictureScale(
                    thrown(points[0], random), thrown(points[1], random), mm(150 + 0.3 * random.nextGaussian()));
            var first = thrown(points[2], random);
            var second = thrown(points[3], random);
            lengths[i] = scale.between(first, second).in(Units.MILLIMETRE);
            angles[i] =
                    PictureScale.angle(first, second, thrown(points[4], random)).in(Units.DEGREE);
        }
        assertThat(told.between(at(points[2]), at(points[3])).spreadIn(Units.MILLIMETRE))
                .isCloseTo(spread(lengths), org.assertj.core.data.Percentage.withPercentage(1.5));
        assertThat(PictureScale.angle(at(points[2]), at(points[3]), at(points[4]))
                        .spreadIn(Units.DEGREE))
                .isCloseTo(spread(angles), org.assertj.core.data.Percentage.withPercentage(1.5));
    }

    private static PictureMark at(Point point) {
        return new PictureMark(point, 2);
    }

    private static PictureMark thrown(Point point, Random random) {
        return new PictureMark(
                new Point(point.x() + 2 * random.nextGaussian(), point.y() + 2 * random.nextGaussian()), 2);
    }

    private static double spread(double[] values) {
        double mean = IntStream.range(0, values.length)
                .mapToDouble(i -> values[i])
                .average()
                .orElseThrow();
        return Math.sqrt(IntStream.range(0, values.length)
                        .mapToDouble(i -> (values[i] - mean) * (values[i] - mean))
                        .sum()
                / (values.length - 1));
    }

    @Test
    void whatHasNoLengthIsRefusedByName() {
        assertThatThrownBy(() -> new PictureScale(mark(3, 4), mark(3, 4), mm(100)))
                .hasMessageContaining("lie on one pixel");
        assertThatThrownBy(() -> new PictureScale(mark(0, 0), mark(3, 4), mm(0)))
                .hasMessageContaining("0.0 mm");
        var scale = new PictureScale(mark(0, 0), mark(3, 4), mm(100));
        assertThatThrownBy(() -> scale.between(mark(1, 1), mark(1, 1))).hasMessageContaining("lie on one pixel");
        assertThatThrownBy(() -> PictureScale.angle(mark(1, 1), mark(1, 1), mark(5, 1)))
                .hasMessageContaining("the corner and an end");
        assertThatThrownBy(() -> new PictureMark(new Point(0, 0), 0)).hasMessageContaining("0.0 px");
    }
}
