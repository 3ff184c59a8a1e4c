package planewright.app.ui;

import java.awt.Component;
import java.awt.Container;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JPanel;
import planewright.app.ui.common.Cards;

/** The build, or a page that is laid over it. The keyboard goes to such a page, and comes back once it goes. */
final class Middle extends JPanel {
    private static final long serialVersionUID = 1L;

    /** Where everything else leads back to. */
    static final String BUILD = "build";

    private final Cards cards = new Cards();
    private final transient Map<String, AbstractButton> buttons = new HashMap<>();
    private String shown = BUILD;
    private transient KeyboardPlace keyboard;
    private transient Runnable laid = () -> {};

    Middle() {
        setLayout(cards);
    }

    /**
     * Says where the keyboard may come from and go to.
     *
     * @param bar what pages are called from
     * @param otherwise takes the keyboard where what had it is gone
     */
    void keepKeyboard(Container bar, Runnable otherwise) {
        keyboard = new KeyboardPlace(bar, otherwise);
    }

    /** Hears when a page is wanted. */
    void onLaid(Runnable listener) {
        laid = listener;
    }

    /** The button that leads to a page is marked while the page is shown. */
    <T extends AbstractButton> T leadsTo(String page, T button) {
        buttons.put(page, button);
        return button;
    }

    boolean isShown(String page) {
        return shown.equals(page);
    }

    /** Shows a page together with the keyboard; the build gives it back to whoever had it before. */
    void show(String page) {
        boolean covered = !isShown(BUILD);
        lay(page);
        if (!page.equals(BUILD)) {
            Stream.of(getComponents()).filter(Component::isVisible).forEach(Component::transferFocus);
        } else if (covered) {
            keyboard.giveBack();
        }
    }

    /** Shows a page, or where it is shown, the build. */
    void toggle(String page) {
        show(isShown(page) ? BUILD : page);
    }

    /** Leads back to the build and to whoever had the keyboard there. */
    void leave() {
        lay(BUILD);
        keyboard.giveBack();
    }

    /** Shows a page and leaves the keyboard where it is. */
    void lay(String page) {
        if (page.equals(BUILD)) {
            keyboard.uncover();
        } else if (isShown(BUILD)) {
            keyboard.cover();
        }
        shown = page;
        buttons.forEach((name, button) -> button.setSelected(name.equals(page)));
        laid.run();
        cards.show(this, page);
    }
}
