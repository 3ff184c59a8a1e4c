package planewright.acceptance.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** What a Java speaks from its start, and how it writes days. */
enum Speech {
    ENGLISH("en", "GB"),
    GERMAN("de", "DE");

    private final String language;
    private final String country;

    Speech(String language, String country) {
        this.language = language;
        this.country = country;
    }

    /** From now on the program ends once its work fails, although its window is open. */
    static void endWithFailure() {
        Thread.currentThread().setUncaughtExceptionHandler((thread, failure) -> {
            System.getLogger(Speech.class.getName()).log(System.Logger.Level.ERROR, "failed", failure);
            System.exit(1);
        });
    }

    /** What a program of these tests prints in this language. */
    List<String> run(Class<?> program, Path folder, String... arguments) throws Exception {
        var out = folder.resolve("out.txt");
        var err = folder.resolve("err.txt");
        var words = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Dfile.encoding=UTF-8",
                "-Duser.language=" + language,
                "-Duser.country=" + country,
                "-Dplanewright.root=" + OpenWindow.root(),
                "-cp",
                System.getProperty("java.class.path"),
                program.getName()));
        words.addAll(List.of(arguments));
        int code = new ProcessBuilder(words)
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start()
                .waitFor();
        assertThat(code).as(Files.readString(err)).isZero();
        return Files.readAllLines(out, StandardCharsets.UTF_8);
    }
}
