package planewright.app.ui.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import planewright.app.ui.common.Icons;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.Texts;

class PageTabsTest {
    private static final int WIDE = 1000;
    private static final int NARROW = 360;

    @Test
    void titlesGoLastAndAllTabsStandOnALineAtEveryWidth() throws Exception {
        var told = new ArrayList<String>();
        SwingUtilities.invokeAndWait(() -> {
            Look.install(new Look.Style(false, 100));
            var tabs = tabs();
            for (int width = WIDE; width >= NARROW; width -= 10) {
                tabs.setBounds(0, 0, width, 400);
                tabs.validate();
                var signs = IntStream.range(0, tabs.getTabCount())
                        .filter(i -> tabs.getIconAt(i) != null)
                        .count();
                var titles = IntStream.range(0, tabs.getTabCount())
                        .filter(i -> tabs.getBoundsAt(i).width >= titleWidth(tabs, i))
                        .count();
                var words = titles + " titles, " + signs + " signs";
                if (told.isEmpty() || !told.get(told.size() - 1).equals(words)) {
                    told.add(words);
                }
                var last = tabs.getBoundsAt(tabs.getTabCount() - 1);
                assertThat(last.x + last.width).as("at %s", width).isLessThanOrEqualTo(width);
                assertThat(last.y).isEqualTo(tabs.getBoundsAt(0).y);
            }
        });
        assertThat(told).containsExactly("7 titles, 7 signs", "7 titles, 0 signs", "1 titles, 7 signs");
    }

    /** Of a title with its sign, if it has one. */
    private static int titleWidth(PageTabs tabs, int tab) {
        var sign = tabs.getIconAt(tab);
        return tabs.getFontMetrics(tabs.getFont()).stringWidth(tabs.getTitleAt(tab))
                + (sign == null ? 0 : sign.getIconWidth() + 4);
    }

    private static PageTabs tabs() {
        var tabs = new PageTabs();
        for (var title : List.of(
                Texts.LOG,
                Texts.PICTURES,
                Texts.MEASUREMENTS,
                Texts.PARTS,
                Texts.PLANFORM,
                Texts.SET_UP_PAGE,
                Texts.CALCULATORS)) {
            tabs.add(title, Icons.LOG, new JPanel());
        }
        return tabs;
    }
}
