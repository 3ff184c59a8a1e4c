package planewright.app.ui;

import java.nio.file.Path;
import java.util.Optional;
import planewright.app.Settings;

/** The window. */
public final class MainWindow {
    private MainWindow() {}

    public static void start(Settings settings, Optional<Path> journal) {
        throw new UnsupportedOperationException();
    }
}
