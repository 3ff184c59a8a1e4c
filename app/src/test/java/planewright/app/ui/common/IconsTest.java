package planewright.app.ui.common;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.util.HashSet;
import javax.swing.JLabel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class IconsTest {
    @ParameterizedTest
    @EnumSource(Icons.class)
    void aSignIsDrawnInTheColourOfTheWordsWithinItsEdges(Icons sign) {
        var label = new JLabel("words");
        label.setForeground(Color.RED);
        int edge = sign.getIconWidth();
        var image = new BufferedImage(edge + 8, edge + 8, BufferedImage.TYPE_INT_ARGB);
        sign.paintIcon(label, image.createGraphics(), 4, 4);
        int drawn = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                var colour = new Color(image.getRGB(x, y), true);
                boolean inside = x >= 3 && y >= 3 && x < edge + 5 && y < edge + 5;
                if (colour.getAlpha() > 0) {
                    assertThat(inside).as("%d, %d", x, y).isTrue();
                    assertThat(colour.getGreen() + colour.getBlue()).isZero();
                    drawn++;
                }
            }
        }
        assertThat(drawn).isGreaterThan(edge);
    }

    @ParameterizedTest
    @ValueSource(ints = {16, 32, 256})
    void theProgramsSignIsTheSameOnBothSides(int edge) {
        var image = AppIcon.image(edge);
        var colours = new HashSet<Integer>();
        for (int y = 0; y < edge; y++) {
            for (int x = 0; x < edge; x++) {
                colours.add(image.getRGB(x, y));
                assertThat(light(image.getRGB(x, y))).isCloseTo(light(image.getRGB(edge - 1 - x, y)), within());
            }
        }
        assertThat(new Color(image.getRGB(0, 0), true).getAlpha()).isLessThan(128);
        assertThat(light(image.getRGB(edge / 2, edge * 3 / 10))).isGreaterThan(200);
        assertThat(colours.size()).isGreaterThan(8);
    }

    @Test
    void itComesInEverySizeThatSystemsAskFor() {
        assertThat(AppIcon.images()).extracting(image -> image.getWidth(null)).contains(16, 32, 48, 256);
    }

    private static org.assertj.core.data.Offset<Integer> within() {
        return org.assertj.core.data.Offset.offset(24);
    }

    private static int light(int rgb) {
        var colour = new Color(rgb);
        return (colour.getRed() + colour.getGreen() + colour.getBlue()) / 3;
    }
}
