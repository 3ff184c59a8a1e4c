package planewright.app.ui.common;

import java.awt.event.HierarchyEvent;
import javax.swing.JComponent;

/** Pages that nobody sees do no work: they are brought up to date when they come to the front. */
public final class WhenShown {
    private WhenShown() {}

    /** Runs at every change while the page can be seen, and whenever it comes to be seen. */
    public static void refresh(JComponent page, Workroom room, Runnable refresh) {
        room.onChange(() -> {
            if (page.isShowing()) {
                refresh.run();
            }
        });
        page.addHierarchyListener(event -> {
            if ((event.getChangeFlags() & HierarchyEvent.SHOWING_CHANGED) != 0 && page.isShowing()) {
                refresh.run();
            }
        });
    }

    /** Runs whenever the page is no longer to be seen. */
    public static void onHide(JComponent page, Runnable hidden) {
        page.addHierarchyListener(event -> {
            if ((event.getChangeFlags() & HierarchyEvent.SHOWING_CHANGED) != 0 && !page.isShowing()) {
                hidden.run();
            }
        });
    }
}
