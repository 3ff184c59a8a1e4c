package planewright.app.ui.calc;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.FontMetrics;
import javax.swing.JLabel;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WrappingTest {
    private final FontMetrics metrics = new JLabel().getFontMetrics(new JLabel().getFont());

    @ParameterizedTest
    @CsvSource({
        "1345 g·mm ± 2900 g·mm, 1345 g·mm|± 2900 g·mm",
        "213.6 mm to 226.7 mm, 213.6 mm|to 226.7 mm",
        "'213,6 mm bis 226,7 mm', '213,6 mm|bis 226,7 mm'",
        "-1.5 mm to -0.5 mm, -1.5 mm|to -0.5 mm",
        "'So. 29.11.2026, 18:52', 'So. 29.11.2026,|18:52'",
        "1331.0 g, 1331.0 g",
        "34.1 g/dm², 34.1 g/dm²"
    })
    void aQuantityBreaksBeforeItsSecondNumber(String text, String lines) {
        assertThat(Wrapping.QUANTITY.lines(text, metrics, metrics.stringWidth(text) - 1))
                .containsExactly(lines.split("\\|"));
        assertThat(Wrapping.QUANTITY.lines(text, metrics, metrics.stringWidth(text)))
                .containsExactly(text);
    }
}
