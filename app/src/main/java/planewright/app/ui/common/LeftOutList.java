package planewright.app.ui.common;

import java.util.List;
import javax.swing.JPanel;
import planewright.app.exchange.LeftOut;

/** What does not come in, and why. */
public final class LeftOutList {
    private static final int MOST_LINES = 20;

    private LeftOutList() {}

    /**
     * Adds the list below what a panel shows; nothing where it is empty.
     *
     * @param heading takes their number
     */
    public static void addTo(JPanel panel, Texts heading, List<LeftOut> items) {
        if (items.isEmpty()) {
            return;
        }
        panel.add(Look.heading(heading.text(items.size()), 0.95));
        var lines = new StringBuilder();
        items.stream()
                .limit(MOST_LINES)
                .forEach(each -> lines.append(each.what())
                        .append(": ")
                        .append(each.reason())
                        .append('\n'));
        if (items.size() > MOST_LINES) {
            lines.append(Texts.PREVIEW_MORE.text(items.size() - MOST_LINES));
        }
        panel.add(Words.quiet(lines.toString().stripTrailing()));
    }
}
