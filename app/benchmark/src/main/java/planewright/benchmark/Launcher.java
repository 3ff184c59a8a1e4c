package planewright.benchmark;

import java.util.ArrayList;
import java.util.List;

/** What the script {@code planewright} gives the Java virtual machine; what is measured runs with the same. */
final class Launcher {
    private static final List<String> MACHINE = List.of(
            "-XX:Tier4InvocationThreshold=50000",
            "-XX:Tier4MinInvocationThreshold=6000",
            "-XX:Tier4CompileThreshold=150000",
            "-XX:Tier4BackEdgeThreshold=400000",
            "-XX:+UseG1GC",
            "--enable-native-access=ALL-UNNAMED",
            "-Xlog:disable",
            "-Xlog:all=warning:stderr",
            "-Dfile.encoding=UTF-8");

    private Launcher() {}

    /** The options, and after them others; the class path is the one that this program runs with. */
    static List<String> options(String... others) {
        var options = new ArrayList<>(MACHINE);
        options.addAll(List.of(others));
        options.addAll(List.of("-cp", System.getProperty("java.class.path")));
        return options;
    }
}
