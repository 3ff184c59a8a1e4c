package planewright.app.ui.build;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import javax.swing.JTabbedPane;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.Icons;
import planewright.app.ui.common.Texts;

/** The pages of a build. Where all titles would need more than a line, those that are not in front show their signs alone. */
final class PageTabs extends JTabbedPane {
    private static final long serialVersionUID = 1L;
    private static final int ROUND_TITLE = 32;

    PageTabs() {
        setName("pages");
    }

    void add(Texts title, Icons sign, Component page) {
        var words = title.text();
        addTab(words, sign, page, words + " (" + Buttons.keyText(key(getTabCount())) + ")");
    }

    /** The key that brings a page to the front. */
    static String key(int page) {
        return "ctrl " + (page + 1);
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        putClientProperty("JTabbedPane.tabWidthMode", width < needed() ? "compact" : "preferred");
        super.setBounds(x, y, width, height);
    }

    private int needed() {
        var metrics = getFontMetrics(getFont());
        int needed = 0;
        for (int i = 0; i < getTabCount(); i++) {
            needed += metrics.stringWidth(getTitleAt(i)) + getIconAt(i).getIconWidth() + UIScale.scale(ROUND_TITLE);
        }
        return needed;
    }
}
