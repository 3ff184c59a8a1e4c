package planewright.benchmark;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * A program whose start is measured.
 *
 * @param name for messages and for the file of its class archive
 * @param options of the Java virtual machine, the class path among them, without the archive
 * @param main its main class
 * @param session main class and words of a session that ends by itself
 * @param lines what it says on standard output as it comes up; measuring ends at the last
 */
record Candidate(String name, List<String> options, String main, List<String> session, List<String> lines) {
    private static final int JDK_WITH_CACHE = 25;

    /**
     * Runs a session that ends normally, which writes the archive of its loaded classes to a folder. Java archives classes of jars
     * only; of a program that runs from class folders there is none.
     */
    void makeArchive(Path folder) throws IOException, InterruptedException {
        if (!runsFromJars()) {
            return;
        }
        var option = hasCache() ? "-XX:AOTCacheOutput=" : "-XX:ArchiveClassesAtExit=";
        var process = command(List.of(option + archive(folder)), session)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        if (!process.waitFor(3, TimeUnit.MINUTES)) {
            process.destroyForcibly();
            throw new IOException("the session of " + name + " that makes the class archive has not ended");
        }
        if (process.exitValue() != 0 || !Files.isRegularFile(archive(folder))) {
            throw new IOException("the session of " + name + " ended with code " + process.exitValue()
                    + " and without a class archive; is there a display?");
        }
    }

    /** Starts it once with the archive in the folder; milliseconds from before its start to each of its lines. */
    Map<String, Double> measure(Path folder) throws IOException, InterruptedException {
        var option = hasCache() ? "-XX:AOTCache=" : "-XX:SharedArchiveFile=";
        var watch = new Stopwatch();
        var process = command(runsFromJars() ? List.of(option + archive(folder)) : List.of(), List.of(main))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try (var out = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            var times = new LinkedHashMap<String, Double>();
            while (times.size() < lines.size()) {
                var line = out.readLine();
                if (line == null) {
                    throw new IOException(name + " ended before it said '" + lines.get(times.size()) + "'");
                }
                if (line.equals(lines.get(times.size()))) {
                    times.put(line, watch.milliseconds());
                }
            }
            return times;
        } finally {
            process.destroy();
            process.waitFor();
        }
    }

    private ProcessBuilder command(List<String> archive, List<String> program) {
        var words = new ArrayList<String>();
        words.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        words.addAll(options);
        words.addAll(archive);
        words.addAll(program);
        var builder = new ProcessBuilder(words);
        builder.environment().remove("PLANEWRIGHT_JOURNAL");
        return builder;
    }

    private Path archive(Path folder) {
        return folder.resolve(name + (hasCache() ? ".aot" : ".jsa"));
    }

    private static boolean runsFromJars() {
        return Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
                .noneMatch(place -> Files.isDirectory(Path.of(place)));
    }

    private static boolean hasCache() {
        return Runtime.version().feature() >= JDK_WITH_CACHE;
    }
}
