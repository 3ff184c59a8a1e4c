package planewright.benchmark;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import planewright.app.synthetic.SyntheticJournal;

/**
 * What the sections of a run share.
 *
 * @param root the project's folder, with its sample journal and packaged plugins
 * @param synthetic what is invented
 * @param journal a synthetic journal that may be written into, where one was asked for
 * @param user a folder for the program's cache
 * @param rounds how often a whole process is measured
 * @param report takes what was measured
 */
record Run(Path root, SyntheticJournal synthetic, Path journal, Path user, int rounds, Report report) {
    ChildJvm child() throws IOException {
        return new ChildJvm(journal, user, plugins(), List.of());
    }

    /** The zips of all plugins that are packaged, as the launcher names them. */
    String plugins() throws IOException {
        var zips = new ArrayList<Path>();
        var folder = root.resolve("plugins");
        if (Files.isDirectory(folder)) {
            try (Stream<Path> files = Files.find(
                    folder,
                    3,
                    (file, attributes) -> file.toString().matches(".*[/\\\\]target[/\\\\][^/\\\\]*[.]zip"))) {
                files.sorted().forEach(zips::add);
            }
        }
        return zips.stream().map(Path::toString).collect(Collectors.joining(File.pathSeparator));
    }
}
