package planewright.app.ui.common;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import javax.swing.LookAndFeel;
import javax.swing.UIManager;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Words stand out from what is behind them by 4.5 to 1, and what is drawn by 3 to 1 (WCAG 2.2, 1.4.3 and 1.4.11, level AA). */
class ContrastTest {
    private static final double TEXT = 4.5;
    private static final double DRAWN = 3;

    private LookAndFeel before;

    @BeforeEach
    void remember() {
        before = UIManager.getLookAndFeel();
    }

    @AfterEach
    void giveBack() throws Exception {
        UIManager.setLookAndFeel(before);
    }

    /** The formula's own extremes, and the worked value of grey 118 on white (WCAG technique G18; the value from memory). */
    @Test
    void theRatioIsThatOfTheGuideline() {
        assertThat(ratio(Color.BLACK, Color.WHITE)).isEqualTo(21.0, org.assertj.core.data.Offset.offset(1e-9));
        assertThat(ratio(Color.RED, Color.RED)).isEqualTo(1.0, org.assertj.core.data.Offset.offset(1e-9));
        assertThat(ratio(new Color(118, 118, 118), Color.WHITE))
                .isEqualTo(4.54, org.assertj.core.data.Offset.offset(0.01));
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void wordsAndLinesStandOut(boolean dark) {
        Look.install(new Look.Style(dark, Look.Style.USUAL));
        var grounds = List.of("Panel.background", "Planewright.card", "TextField.background", "Table.background");
        var words = List.of(
                "Label.foreground",
                "TextField.foreground",
                "Button.foreground",
                "Table.foreground",
                "Planewright.quiet",
                "Planewright.warn",
                "Planewright.stop",
                "Planewright.fine");
        var weak = new ArrayList<String>();
        for (var ground : grounds) {
            words.forEach(word -> check(word, ground, TEXT, weak));
            check("Component.accentColor", ground, DRAWN, weak);
            check("Planewright.second", ground, DRAWN, weak);
        }
        check("List.selectionForeground", "List.selectionBackground", TEXT, weak);
        check("List.selectionInactiveForeground", "List.selectionInactiveBackground", TEXT, weak);
        check("Table.selectionForeground", "Table.selectionBackground", TEXT, weak);
        check("TextField.placeholderForeground", "TextField.background", TEXT, weak);
        check("Label.foreground", "Planewright.mark", TEXT, weak);
        check("ToggleButton.selectedForeground", "ToggleButton.selectedBackground", TEXT, weak);
        check("ToolTip.foreground", "ToolTip.background", TEXT, weak);
        assertThat(weak).isEmpty();
    }

    private static void check(String over, String ground, double least, List<String> weak) {
        double ratio = ratio(UIManager.getColor(over), UIManager.getColor(ground));
        if (ratio < least) {
            weak.add("%s on %s: %.2f, wanted %.1f".formatted(over, ground, ratio, least));
        }
    }

    private static double ratio(Color one, Color other) {
        double a = luminance(one) + 0.05;
        double b = luminance(other) + 0.05;
        return Math.max(a, b) / Math.min(a, b);
    }

    /** Relative luminance (WCAG 2.2, glossary). */
    private static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
