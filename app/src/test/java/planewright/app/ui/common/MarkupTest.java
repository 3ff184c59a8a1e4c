package planewright.app.ui.common;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Insets;
import java.util.List;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;

/** Text of entries. */
class MarkupTest {
    @Test
    void textStandsWhereItStoodAfterTheLookHasChanged() throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            Look.install(new Look.Style(false, Look.Style.USUAL));
            var text = Markup.of(List.of("The *fin* waits."));
            assertThat(text.getInsets()).isEqualTo(new Insets(0, 0, 0, 0));
            Look.install(new Look.Style(true, Look.Style.USUAL));
            text.updateUI();
            assertThat(text.getInsets()).isEqualTo(new Insets(0, 0, 0, 0));
            assertThat(text.isOpaque()).isFalse();
        });
    }
}
