package planewright.benchmark;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** A command of the system as a yardstick. */
final class SystemCommand {
    private SystemCommand() {}

    /**
     * The median time of a command, its output thrown away, in milliseconds; empty where the system has no such command.
     *
     * @throws IOException if it ends with another code than 0
     */
    static OptionalDouble milliseconds(Path folder, int rounds, String... command)
            throws IOException, InterruptedException {
        var times = new ArrayList<Double>();
        for (int i = 0; i < rounds; i++) {
            var watch = new Stopwatch();
            Process process;
            try {
                process = new ProcessBuilder(command)
                        .directory(folder.toFile())
                        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                        .redirectError(ProcessBuilder.Redirect.DISCARD)
                        .start();
            } catch (IOException absent) {
                return OptionalDouble.empty();
            }
            process.getOutputStream().close();
            if (process.waitFor() != 0) {
                throw new IOException(String.join(" ", List.of(command)) + " in " + folder + " ended with code "
                        + process.exitValue());
            }
            times.add(watch.milliseconds());
        }
        return OptionalDouble.of(Median.of(times));
    }
}
