package planewright.app.ui.build;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Insets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.JTabbedPane;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.Icons;
import planewright.app.ui.common.Texts;

/**
 * The pages of a build. Where they do not fit on a line as they are, first the room around their titles goes, then their signs;
 * the titles of those that are not in front go last.
 */
final class PageTabs extends JTabbedPane {
    private static final long serialVersionUID = 1L;
    private static final int LEAST = 100;
    private static final int SIGN_GAP = 4;
    private static final int ABOVE = 4;

    private final transient List<Icons> signs = new ArrayList<>();
    private transient Fit fit = Fit.ROOMY;

    /** How tabs stand on their line, the first that has room being taken. */
    private enum Fit {
        ROOMY(12, true),
        SNUG(5, true),
        TITLES(5, false),
        ONE_TITLE(12, true);

        private final int beside;
        private final boolean signed;

        Fit(int beside, boolean signed) {
            this.beside = beside;
            this.signed = signed;
        }
    }

    PageTabs() {
        setName("pages");
    }

    void add(Texts title, Icons sign, Component page) {
        var words = title.text();
        signs.add(sign);
        addTab(words, sign, page, words + " (" + Buttons.keyText(key(getTabCount())) + ")");
    }

    /** The key that brings a page to the front. */
    static String key(int page) {
        return "ctrl " + (page + 1);
    }

    /** As large as there is room: all pages would be measured for an answer that nobody uses. */
    @Override
    public Dimension getPreferredSize() {
        return new Dimension(LEAST, LEAST);
    }

    @Override
    public Dimension getMinimumSize() {
        return getPreferredSize();
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        take(Stream.of(Fit.values())
                .filter(each -> needed(each) <= width)
                .findFirst()
                .orElse(Fit.ONE_TITLE));
        super.setBounds(x, y, width, height);
    }

    private void take(Fit wanted) {
        if (wanted == fit) {
            return;
        }
        fit = wanted;
        putClientProperty("JTabbedPane.tabInsets", new Insets(ABOVE, wanted.beside, ABOVE, wanted.beside));
        putClientProperty("JTabbedPane.tabWidthMode", wanted == Fit.ONE_TITLE ? "compact" : "preferred");
        for (int i = 0; i < getTabCount(); i++) {
            setIconAt(i, wanted.signed ? signs.get(i) : null);
        }
    }

    private int needed(Fit wanted) {
        var metrics = getFontMetrics(getFont());
        int needed = 0;
        for (int i = 0; i < getTabCount(); i++) {
            needed += metrics.stringWidth(getTitleAt(i)) + 2 * UIScale.scale(wanted.beside);
            if (wanted.signed) {
                needed += signs.get(i).getIconWidth() + UIScale.scale(SIGN_GAP);
            }
        }
        return needed;
    }
}
