package planewright.app;

import java.awt.GraphicsEnvironment;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Locale;
import java.util.Optional;
import planewright.app.cli.CommandLineProgram;
import planewright.app.cli.Tour;
import planewright.app.ui.MainWindow;

/** Starts the window, or the command line where there are words. */
public final class Main {
    private Main() {}

    public static void main(String[] words) {
        QuietLibraries.use();
        var settings = Settings.ofSystem();
        boolean window = words.length == 0
                || words[0].equals("open") && words.length <= 2 && !words[words.length - 1].startsWith("-");
        if (window && !GraphicsEnvironment.isHeadless()) {
            var journal = words.length > 1 ? Optional.of(Path.of(words[1])) : Settings.named();
            MainWindow.start(settings, journal, Clock.systemDefaultZone());
            return;
        }
        Locale.setDefault(Locale.Category.DISPLAY, Locale.ENGLISH);
        var out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        var err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        int code = words.length == 0
                ? new Tour(settings, Clock.systemDefaultZone(), out, err).run()
                : new CommandLineProgram(settings, Clock.systemDefaultZone(), out, err).run(words);
        System.exit(code);
    }
}
