package planewright.app.ui.bench;

import java.awt.AWTException;
import java.awt.SystemTray;
import java.awt.TrayIcon;
import java.util.Optional;
import java.util.function.Consumer;
import planewright.app.ui.common.AppIcon;
import planewright.app.ui.common.Texts;

/** Tells that something on the bench is ready: as a notice of the system where there is a tray, and always in the window. */
final class ReadyNotice {
    private static final int EDGE = 64;

    private final Consumer<String> window;
    private Optional<TrayIcon> tray = Optional.empty();

    ReadyNotice(Consumer<String> window) {
        this.window = window;
    }

    void tell(String words) {
        window.accept(words);
        if (SystemTray.isSupported()) {
            icon().ifPresent(shown -> shown.displayMessage(Texts.BENCH.text(), words, TrayIcon.MessageType.INFO));
        }
    }

    /** Leaves the tray. */
    void stop() {
        tray.ifPresent(shown -> SystemTray.getSystemTray().remove(shown));
        tray = Optional.empty();
    }

    private Optional<TrayIcon> icon() {
        if (tray.isEmpty()) {
            var made = new TrayIcon(AppIcon.image(EDGE), Texts.PRODUCT.text());
            made.setImageAutoSize(true);
            try {
                SystemTray.getSystemTray().add(made);
                tray = Optional.of(made);
            } catch (AWTException noTray) {
                return Optional.empty();
            }
        }
        return tray;
    }
}
