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
import java.util.concurrent.TimeUnit;

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
    /** Runs a session that ends normally, which writes the archive of its loaded classes to a folder. */
    void makeArchive(Path folder) throws IOException, InterruptedException {
        if (!ClassArchive.isPossible()) {
            return;
        }
        var archive = ClassArchive.in(folder, name);
        var process = command(archive.making(), session)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        if (!process.waitFor(3, TimeUnit.MINUTES)) {
            process.destroyForcibly();
            throw new IOException("the session of " + name + " that makes the class archive has not ended");
        }
        if (process.exitValue() != 0 || !archive.isMade()) {
            throw new IOException("the session of " + name + " ended with code " + process.exitValue()
                    + " and without a class archive; is there a display?");
        }
    }

    /** Starts it once with the archive in the folder; milliseconds from before its start to each of its lines. */
    Map<String, Double> measure(Path folder) throws IOException, InterruptedException {
        var watch = new Stopwatch();
        var process = command(ClassArchive.in(folder, name).using(), List.of(main))
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
}
