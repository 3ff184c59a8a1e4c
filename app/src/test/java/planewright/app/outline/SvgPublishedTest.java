package planewright.app.outline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import planewright.api.figure.Outline;
import planewright.api.figure.Point;

/**
 * Examples of the SVG 1.1 specification (W3C Recommendation, second edition, 2011), chapters 8 and 9, against what their
 * shapes must measure. The path data is quoted from memory; areas and points follow from geometry. Tolerances: straight
 * pieces within 1e-4 mm of the curve change an area by less than that times the length of the curve.
 */
class SvgPublishedTest {
    private static final double FINE = 1e-4;

    /** 8.3.2, triangle01: base 200, height 200. */
    @Test
    void theTriangle() throws OutlineRefused {
        var triangle = Sketch.path("M 100 100 L 300 100 L 200 300 z");
        assertThat(Sketch.area(Sketch.flat(triangle, FINE).get(0))).isEqualTo(20_000, within(1e-9));
        assertThat(triangle.paths().get(0).closed()).isTrue();
        assertThat(triangle.paths().get(0).start()).isEqualTo(new Point(100, 500));
    }

    /** 8.3.8, arcs01: three quarters of a disc of radius 150, and the quarter that is moved out of it. */
    @Test
    void thePieOfArcs() throws OutlineRefused {
        var most = Sketch.path("M300,200 h-150 a150,150 0 1,0 150,-150 z");
        assertThat(Sketch.area(Sketch.flat(most, FINE).get(0))).isEqualTo(0.75 * Math.PI * 150 * 150, within(0.1));
        var slice = Sketch.path("M275,175 v-150 a150,150 0 0,0 -150,150 z");
        assertThat(Sketch.area(Sketch.flat(slice, FINE).get(0))).isEqualTo(0.25 * Math.PI * 150 * 150, within(0.1));
    }

    /** 8.3.8, arcs02: the four ways between two points on ellipses of half axes 100 and 50, which two of them share. */
    @Test
    void theFourArcsBetweenTwoPoints() throws OutlineRefused {
        double whole = Math.PI * 100 * 50;
        double small = Sketch.area(Sketch.flat(Sketch.path("M 125,75 a100,50 0 0,0 100,50 z"), FINE)
                .get(0));
        double large = Sketch.area(Sketch.flat(Sketch.path("M 125,75 a100,50 0 1,0 100,50 z"), FINE)
                .get(0));
        // the chord from (0,0) to (100,50) cuts a quarter less its triangle off: π·100·50/4 - 100·50/2
        assertThat(small).isEqualTo(whole / 4 - 2_500, within(0.1));
        assertThat(large).isEqualTo(whole - small, within(0.1));
        double other = Sketch.area(Sketch.flat(Sketch.path("M 125,75 a100,50 0 0,1 100,50 z"), FINE)
                .get(0));
        assertThat(other).isEqualTo(small, within(1e-3));
    }

    /** 8.3.6, cubic01: the second curve begins with the control point of the first seen from the other side, (250, 300). */
    @Test
    void theSmoothCubic() throws OutlineRefused {
        var curve = Sketch.path("M100,200 C100,100 250,100 250,200 S400,300 400,200");
        assertThat(curve.paths().get(0).pieces().get(1))
                .isEqualTo(new Outline.Curve(new Point(250, 300), new Point(400, 300), new Point(400, 400)));
    }

    /** 8.3.7, quad01: its crests are half way to its control points, at y 175 and 425 downwards. */
    @Test
    void theSmoothQuadratic() throws OutlineRefused {
        var wave = Sketch.flat(Sketch.path("M200,300 Q400,50 600,300 T1000,300"), FINE)
                .get(0);
        assertThat(wave.points().stream().mapToDouble(Point::y).max().orElseThrow())
                .isEqualTo(600 - 175, within(FINE));
        assertThat(wave.points().stream().mapToDouble(Point::y).min().orElseThrow())
                .isEqualTo(600 - 425, within(FINE));
        assertThat(wave.points().get(wave.points().size() - 1)).isEqualTo(new Point(1000, 300));
    }

    /** 9.2 to 9.7: areas of the basic shapes; the corners of a rounded rectangle lack (4 - π)·rx·ry together. */
    @Test
    void theBasicShapes() throws OutlineRefused {
        assertThat(area("<rect x='400' y='100' width='400' height='200'/>")).isEqualTo(80_000, within(1e-9));
        assertThat(area("<rect x='100' y='100' width='400' height='200' rx='50'/>"))
                .isEqualTo(80_000 - (4 - Math.PI) * 50 * 50, within(0.1));
        assertThat(area("<circle cx='600' cy='200' r='100'/>")).isEqualTo(Math.PI * 1e4, within(0.1));
        assertThat(area("<ellipse rx='250' ry='100' transform='translate(450 200) rotate(-30)'/>"))
                .isEqualTo(Math.PI * 250 * 100, within(0.2));
        assertThat(area("<polygon points='850,75  958,137.5 958,262.5 850,325 742,262.6 742,137.5'/>"))
                .isEqualTo(108 * 2 * (250 + 125) / 2.0, within(15.0));
        var open =
                Sketch.read("<polyline points='50,375 150,375 150,325 250,325'/><line x1='0' y1='0' x2='3' y2='4'/>");
        assertThat(open.paths()).hasSize(2).noneMatch(Outline.Path::closed);
    }

    /** 8.3.9: separators may be left out where nothing is lost by it. */
    @Test
    void numbersMayStandCloseTogether() throws OutlineRefused {
        var loose = Sketch.path("M 100 200 L 200 100 L -100 -200 l 0.5 0.25 a 5 5 0 0 1 5 5");
        var close = Sketch.path("M100 200L200 100-100-200l.5.25a5 5 0 015 5");
        assertThat(close).isEqualTo(loose);
        assertThat(Sketch.path("m100,200 1e1-5E-1")).isEqualTo(Sketch.path("M 100 200 L 110 199.5"));
    }

    /** 7.6: a group's transform is applied after its children's own. */
    @Test
    void transformsAreNested() throws OutlineRefused {
        var nested = Sketch.read("<g transform='translate(100,200)'><g transform='scale(2) rotate(90)'>"
                + "<line x1='0' y1='0' x2='10' y2='0' transform='translate(1 0)'/></g></g>");
        var line = nested.paths().get(0);
        assertThat(line.start().x()).isEqualTo(100, within(1e-12));
        assertThat(line.start().y()).isEqualTo(600 - 202, within(1e-12));
        assertThat(line.pieces().get(0).end().y()).isEqualTo(600 - 222, within(1e-12));
    }

    /** CSS Values 3, 5.2: an inch is 25.4 mm; 7.11: the viewBox is stretched over width and height. */
    @Test
    void aSheetInInchesHasItsTrueSize() throws OutlineRefused {
        var square = SvgReader.read(Sketch.bytes("<svg xmlns='http://www.w3.org/2000/svg' width='4in' height='2in'"
                + " viewBox='-10 -20 400 200'><rect x='-10' y='-20' width='100' height='100'/></svg>"));
        assertThat(square.width()).isEqualTo(101.6, within(1e-9));
        assertThat(Sketch.area(Sketch.flat(square, FINE).get(0))).isEqualTo(25.4 * 25.4, within(1e-9));
        assertThat(square.paths().get(0).start()).isEqualTo(new Point(0, 50.8));
    }

    private static double area(String shape) throws OutlineRefused {
        return Sketch.area(Sketch.flat(Sketch.read(shape), FINE).get(0));
    }
}
