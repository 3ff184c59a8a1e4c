package planewright.app.outline;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Shape;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.io.StringReader;
import java.util.Locale;
import java.util.Random;
import org.apache.batik.parser.AWTPathProducer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Path data against the Apache Batik parser, which reads it apart from us. It departs from the specification in two things,
 * which are left out here: radii that are too small are made a little larger than need be, and a smooth curve of one kind
 * takes up the control point of the other kind.
 */
class SvgReferenceTest {
    /** Ours and theirs are each cut into straight pieces within 1e-2 mm and 1e-3 mm of the curve; theirs are floats. */
    private static final double CUTTING = 1.5e-2;

    /** Theirs draws a quarter of an ellipse as one curve, which strays by 2.73e-4 of the radius; Riškus (2006). */
    private static final double QUARTER = 2.8e-4;

    private static final double LARGEST_RADIUS = 200;
    private static final double TOLERANCE = CUTTING + QUARTER * LARGEST_RADIUS;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "M600,350 l 50,-25 a60,60 -30 0,1 50,-25 l 50,-25 a70,90 -30 0,1 50,-25 l 50,-25 a100,60 -30 0,1 50,-25",
                "M10 10 20 30 40 10z m5 5 h10 v10 h-10 z l 3 3",
                "M100 100 a 26 26 0 0 1 50 0",
                "M100 100 a 30 20 45 1 1 0.001 0",
                "M100 100 a -30 20 200 0 0 20 20 A 0 5 0 0 1 300 300",
                "M5 5 t 20 20 t 20 -20 q 5 5 10 0 t 10 0 l 1 1 s 5 5 10 0 c 1 2 3 4 5 6 s 7 8 9 1"
            })
    void hardCasesAreDrawnAlike(String data) throws OutlineRefused {
        assertAlike(data);
    }

    @Test
    void twoHundredRandomPathsAreDrawnAlike() throws OutlineRefused {
        var random = new Random(7);
        for (int i = 0; i < 200; i++) {
            assertAlike(random(random));
        }
    }

    private static void assertAlike(String data) throws OutlineRefused {
        var theirs = Sketch.lines(AwtShape.of(data));
        var ours = Sketch.flat(Sketch.path(data), 1e-2);
        assertThat(ours).as(data).hasSameSizeAs(theirs);
        for (int i = 0; i < theirs.size(); i++) {
            var points = Sketch.points(ours.get(i));
            assertThat(Sketch.stray(points, theirs.get(i)))
                    .as("%s, path %s", data, i)
                    .isLessThan(TOLERANCE);
            assertThat(Sketch.stray(theirs.get(i), points))
                    .as("%s, path %s", data, i)
                    .isLessThan(TOLERANCE);
        }
    }

    private static String random(Random random) {
        var data = new StringBuilder("M 500 300");
        int commands = 1 + random.nextInt(6);
        for (int i = 0; i < commands; i++) {
            char command = "LHVCQalhvcqa".charAt(random.nextInt(12));
            data.append(' ').append(command);
            switch (Character.toUpperCase(command)) {
                case 'H', 'V' -> numbers(data, random, 1);
                case 'C' -> {
                    numbers(data, random, 6);
                    numbers(data.append(random.nextBoolean() ? " S" : " s"), random, 4);
                }
                case 'Q' -> {
                    numbers(data, random, 4);
                    numbers(data.append(random.nextBoolean() ? " T" : " t"), random, 2);
                }
                case 'A' -> arc(data, random);
                default -> numbers(data, random, 2);
            }
        }
        return data + (random.nextBoolean() ? " z" : "");
    }

    /** Its radii reach over its chord. */
    private static void arc(StringBuilder data, Random random) {
        data.append(String.format(
                Locale.ROOT,
                " %.3f %.3f %.3f %d %d %.3f %.3f",
                90 + random.nextDouble() * 110,
                90 + random.nextDouble() * 110,
                random.nextDouble() * 400 - 200,
                random.nextInt(2),
                random.nextInt(2),
                random.nextDouble() * 120 - 60,
                random.nextDouble() * 120 - 60));
    }

    private static void numbers(StringBuilder data, Random random, int many) {
        for (int i = 0; i < many; i++) {
            data.append(String.format(Locale.ROOT, " %.3f", 20 + random.nextDouble() * 200));
        }
    }

    private static final class AwtShape {
        static Shape of(String data) {
            try {
                return AWTPathProducer.createShape(new StringReader(data), PathIterator.WIND_NON_ZERO);
            } catch (IOException impossible) {
                throw new IllegalStateException(impossible);
            }
        }
    }
}
