package planewright.app.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import planewright.api.figure.Chart;

/** Dots lie where the picture says that they lie; those that do not count are hollow. */
class FittedPictureTest {
    private static final Rectangle AREA = new Rectangle(30, 20, 500, 360);
    private static final FigureColours COLOURS = FigureColours.onPaper();

    @Test
    void tellsWhereItsDotsLie() {
        var dots = List.of(dot("one", 1, 10, true), dot("two", 2, 20, true), dot("off", 3, 12, false));
        var image = new BufferedImage(560, 400, BufferedImage.TYPE_INT_RGB);
        var g = image.createGraphics();
        var places = FittedPicture.paint(fitted(dots, Optional.empty()), g, AREA, COLOURS);
        g.dispose();
        assertThat(places).hasSize(3).allMatch(AREA::contains);
        assertThat(places.get(0).getX()).isLessThan(places.get(1).getX());
        assertThat(places.get(0).getY()).isGreaterThan(places.get(1).getY());
        for (int i = 0; i < 3; i++) {
            var seen = new Color(image.getRGB((int) Math.round(places.get(i).getX()), (int)
                    Math.round(places.get(i).getY())));
            assertThat(seen.equals(COLOURS.accent()))
                    .as(dots.get(i).name())
                    .isEqualTo(dots.get(i).counts());
        }
    }

    /** With three dots the band is four times as wide as they lie apart; they are still seen apart. */
    @Test
    void aBandThatIsVeryWideLeavesTheDotsApart() {
        var band = new Chart.Band("", List.of(new Chart.Span(1, -500, 10, 520), new Chart.Span(2, -490, 20, 530)));
        var g = new BufferedImage(560, 400, BufferedImage.TYPE_INT_RGB).createGraphics();
        var places = FittedPicture.paint(
                fitted(List.of(dot("one", 1, 10, true), dot("two", 2, 20, true)), Optional.of(band)), g, AREA, COLOURS);
        g.dispose();
        assertThat(places.get(0).getY() - places.get(1).getY()).isGreaterThan(AREA.height / 6.0);
    }

    /** Dots at a hundredth of the height are at the foot of an axis that begins at 0, and would not be where it began below. */
    @Test
    void anAxisOfMassesBeginsAt0() {
        var band = new Chart.Band("", List.of(new Chart.Span(1, 0, 1, 100), new Chart.Span(2, 0, 100, 200)));
        var dots = List.of(dot("one", 1, 1, true), dot("two", 2, 100, true));
        var g = new BufferedImage(560, 400, BufferedImage.TYPE_INT_RGB).createGraphics();
        var from0 = fitted(dots, Optional.of(band));
        var free = new Fitted(from0.title(), from0.across(), from0.values(), dots, from0.band(), from0.asked(), false);
        double lowest = FittedPicture.paint(from0, g, AREA, COLOURS).get(0).getY();
        assertThat(lowest)
                .isGreaterThan(
                        FittedPicture.paint(free, g, AREA, COLOURS).get(0).getY() + 5);
        g.dispose();
    }

    @Test
    void nothingAtAllIsPaintedToo() {
        var g = new BufferedImage(560, 400, BufferedImage.TYPE_INT_RGB).createGraphics();
        assertThat(FittedPicture.paint(fitted(List.of(), Optional.empty()), g, AREA, COLOURS))
                .isEmpty();
        g.dispose();
    }

    private static Fitted.Dot dot(String name, double x, double y, boolean counts) {
        return new Fitted.Dot(name, x, 0, y, 0.5, counts);
    }

    private static Fitted fitted(List<Fitted.Dot> dots, Optional<Chart.Band> band) {
        return new Fitted(
                "y against x", new Chart.Axis("x", "mm"), new Chart.Axis("y", "g"), dots, band, Optional.empty(), true);
    }
}
