package planewright.benchmark;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A Java virtual machine of its own for a measurement, with the options of the launcher.
 *
 * @param journal what the program opens there
 * @param user a folder for the user's files: the cache above all
 * @param plugins plugin zips, as the launcher names them
 * @param archive options that name an archive of loaded classes
 */
record ChildJvm(Path journal, Path user, String plugins, List<String> archive) {
    private static final String SEPARATOR = "\t";

    /**
     * The same with the archive of loaded classes that the launcher's starts after the first have: here a main class is run once to
     * make it.
     */
    ChildJvm archivedFor(Class<?> main, String... words) throws IOException, InterruptedException {
        var file = ClassArchive.in(user.toAbsolutePath().getParent(), main.getSimpleName());
        new ChildJvm(journal, user, plugins, file.making()).run(main, words);
        return new ChildJvm(journal, user, plugins, file.using());
    }

    /** In the child: says a number on standard output. */
    static void tell(String name, double number) {
        System.out.println(name + SEPARATOR + number);
    }

    /** Runs a main class that tells numbers; they come in its order. */
    Map<String, Double> run(Class<?> main, String... words) throws IOException, InterruptedException {
        var command = new ArrayList<String>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(archive);
        command.addAll(Launcher.options(
                "-Djava.util.logging.config.class=planewright.app.QuietLibraries",
                "-Dplanewright.plugins=" + plugins,
                "-Dplanewright.journal=" + journal,
                "-Dplanewright.user=" + user,
                "-Dplanewright.announceFirstPaint=true"));
        command.add(main.getName());
        command.addAll(List.of(words));
        var builder = new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT);
        builder.environment().remove("PLANEWRIGHT_JOURNAL");
        var process = builder.start();
        var told = new LinkedHashMap<String, Double>();
        try (var out = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            for (var line = out.readLine(); line != null; line = out.readLine()) {
                int at = line.indexOf(SEPARATOR);
                if (at > 0) {
                    told.put(line.substring(0, at), Double.parseDouble(line.substring(at + 1)));
                }
            }
        } finally {
            process.destroy();
        }
        if (process.waitFor() != 0 || told.isEmpty()) {
            throw new IOException(main.getSimpleName() + " ended with code " + process.exitValue() + " and told "
                    + told.size() + " numbers; its messages stand above");
        }
        return told;
    }

    /** The one number that a main class tells. */
    double measure(Class<?> main, String... words) throws IOException, InterruptedException {
        return run(main, words).values().iterator().next();
    }
}
