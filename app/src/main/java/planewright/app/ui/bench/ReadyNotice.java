package planewright.app.ui.bench;

import java.awt.AWTException;
import java.awt.Color;
import java.awt.SystemTray;
import java.awt.TrayIcon;
import java.awt.image.BufferedImage;
import java.util.Optional;
import java.util.function.Consumer;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.Texts;

/** Tells that something on the bench is ready: as a notice of the system where there is a tray, and always in the window. */
final class ReadyNotice {
    private static final int EDGE = 16;

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
            var made = new TrayIcon(picture(), Texts.PRODUCT.text());
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

    /** A swept wing from above. */
    private static BufferedImage picture() {
        var image = new BufferedImage(EDGE, EDGE, BufferedImage.TYPE_INT_ARGB);
        var graphics = image.createGraphics();
        graphics.setColor(Optional.ofNullable(Look.colour("second")).orElse(Color.GRAY));
        graphics.fillPolygon(new int[] {8, 16, 16, 8, 0, 0}, new int[] {2, 10, 13, 9, 13, 10}, 6);
        graphics.dispose();
        return image;
    }
}
