package planewright.app;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A program of the tests that runs in a process of its own; its output is read line by line. */
public final class ChildProgram implements AutoCloseable {
    private final Process process;
    private final BufferedReader lines;

    private ChildProgram(Process process) {
        this.process = process;
        this.lines = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    }

    public static ChildProgram start(Class<?> main, Map<String, String> environment, String... words)
            throws IOException {
        var java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        var command = new ArrayList<>(List.of(
                java,
                "-Xmx256m",
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                main.getName()));
        command.addAll(List.of(words));
        var builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment().putAll(environment);
        return new ChildProgram(builder.start());
    }

    public long pid() {
        return process.pid();
    }

    /** Waits for the next line; null when the program has ended. */
    public String line() throws IOException {
        return lines.readLine();
    }

    /** What it has still to say, until it ends. */
    public List<String> rest() {
        return lines.lines().toList();
    }

    /** Ends it at once, as a power cut of this program alone would, and waits until it is gone. */
    public void kill() throws InterruptedException {
        // unlike Process.destroyForcibly, this leaves the output open
        process.toHandle().destroyForcibly();
        process.waitFor();
    }

    /** Asks it to end, as Ctrl-C or a system that goes down does, and waits until it is gone; its exit code. */
    public int end() throws InterruptedException {
        process.toHandle().destroy();
        return process.waitFor();
    }

    public boolean isAlive() {
        return process.isAlive();
    }

    @Override
    public void close() {
        process.destroyForcibly();
    }
}
