package planewright.app.ui.common;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import java.util.function.Predicate;
import planewright.app.journal.Slow;

/**
 * Whether the system shows itself dark. Java has no word for it, so that each system is asked in its own way: Windows by its
 * registry, macOS by its defaults, others by GNOME's settings, which other desktops fill too. Where nothing answers it is light.
 */
public final class SystemLook {
    private static final int PATIENCE_MILLIS = 1000;

    private SystemLook() {}

    /** Asks; waits for another program, so not on the event thread. */
    public static boolean isDark() {
        Slow.work("asking the system for its look");
        return isDark(System.getProperty("os.name", ""), SystemLook::answer);
    }

    /**
     * The same.
     *
     * @param system the name of the system, as Java tells it
     * @param asking what a command prints; empty where it cannot be run
     */
    static boolean isDark(String system, Function<List<String>, Optional<String>> asking) {
        var question = question(system.toLowerCase(Locale.ROOT));
        return asking.apply(question.command())
                .map(answer -> answer.toLowerCase(Locale.ROOT))
                .filter(question.dark())
                .isPresent();
    }

    private record Question(List<String> command, Predicate<String> dark) {}

    private static Question question(String system) {
        if (system.startsWith("windows")) {
            return new Question(
                    List.of(
                            "reg",
                            "query",
                            "HKCU\\Software\\Microsoft\\Windows\\CurrentVersion\\Themes\\Personalize",
                            "/v",
                            "AppsUseLightTheme"),
                    answer -> answer.strip().endsWith("0x0"));
        }
        if (system.startsWith("mac")) {
            return new Question(
                    List.of("defaults", "read", "-g", "AppleInterfaceStyle"),
                    answer -> answer.strip().equals("dark"));
        }
        return new Question(
                List.of("gsettings", "get", "org.gnome.desktop.interface", "color-scheme"),
                answer -> answer.contains("prefer-dark"));
    }

    private static Optional<String> answer(List<String> command) {
        try {
            var process = new ProcessBuilder(command)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            process.getOutputStream().close();
            if (!process.waitFor(PATIENCE_MILLIS, TimeUnit.MILLISECONDS)) {
                process.destroyForcibly();
                return Optional.empty();
            }
            return Optional.of(new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException notThere) {
            return Optional.empty();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        }
    }
}
