package planewright.app.ui.common;

import static org.assertj.core.api.Assertions.assertThat;

import javax.swing.JLabel;
import javax.swing.JPanel;
import org.junit.jupiter.api.Test;

/** Words beside a value never break within one of them: rather they stand above it. */
class PairsTest {
    private static final int BETWEEN = 14;

    private final JPanel pairs = new JPanel(new Pairs(3));
    private final JLabel value = new JLabel("217 mm ± 2 mm");

    @Test
    void wordsStandAboveWhereOneWouldBreak() {
        var words = Words.of("of gravitation");
        pairs.add(words);
        pairs.add(value);
        int beside = value.getPreferredSize().width + BETWEEN + Words.longestOf(words);
        pairs.setSize(beside, 200);
        pairs.doLayout();
        assertThat(value.getX()).isGreaterThanOrEqualTo(words.getWidth());
        pairs.setSize(beside - 1, 200);
        pairs.doLayout();
        assertThat(value.getX()).isZero();
        assertThat(value.getY()).isGreaterThanOrEqualTo(words.getY() + words.getHeight());
    }
}
