package planewright.benchmark;

import java.io.IOException;
import java.time.Clock;
import planewright.app.Program;
import planewright.app.Settings;

/** The program on the journal that the child's options name, opened as the window opens it. */
final class Opened {
    private Opened() {}

    static Program program() throws IOException {
        var settings = Settings.ofSystem();
        return Program.openAsKnown(
                settings.journal().orElseThrow(),
                settings.user(),
                settings.pluginPlaces(),
                Clock.systemDefaultZone(),
                (done, all) -> {});
    }
}
