package planewright.app.ui.common;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import org.junit.jupiter.api.Test;

/** Buttons leave out as many words as it takes to stand on one line, and have them again once there is room. */
class SignBarTest {
    private static final int HIGH = 30;

    private final List<AbstractButton> buttons = Stream.of("Previous", "Copy", "Save a copy")
            .<AbstractButton>map(words -> Buttons.with(Icons.COPY, Buttons.plain(words, words, () -> {})))
            .toList();
    private final SignBar bar = new SignBar(6);

    SignBarTest() {
        buttons.forEach(bar::put);
    }

    @Test
    void wordsGoFromTheFirstOnAndComeBack() {
        int wide = wanted();
        bar.setBounds(0, 0, wide, HIGH);
        assertThat(buttons).extracting(AbstractButton::getText).containsExactly("Previous", "Copy", "Save a copy");
        bar.setBounds(0, 0, wide - 1, HIGH);
        assertThat(buttons).extracting(AbstractButton::getText).containsExactly(null, "Copy", "Save a copy");
        bar.setBounds(0, 0, 1, HIGH);
        assertThat(buttons).extracting(AbstractButton::getText).containsOnlyNulls();
        assertThat(buttons).extracting(AbstractButton::getToolTipText).contains("Previous", "Copy", "Save a copy");
        assertThat(buttons.get(0).getAccessibleContext().getAccessibleName()).isEqualTo("Previous");
        bar.setBounds(0, 0, wide, HIGH);
        assertThat(buttons).extracting(AbstractButton::getText).doesNotContainNull();
    }

    private int wanted() {
        return buttons.stream()
                        .mapToInt(each -> each.getPreferredSize().width + 6)
                        .sum()
                - 6;
    }
}
