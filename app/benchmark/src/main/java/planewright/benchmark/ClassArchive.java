package planewright.benchmark;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * The archive of a program's loaded classes, with which the launcher starts it: made at the end of a first session. Java archives
 * classes of jars only; of a program that runs from class folders there is none, and it starts without.
 *
 * @param file where it lies, or shall
 */
record ClassArchive(Path file) {
    private static final int JDK_WITH_CACHE = 25;

    /** The archive of that name in a folder. */
    static ClassArchive in(Path folder, String name) {
        return new ClassArchive(folder.resolve(name + (hasCache() ? ".aot" : ".jsa")));
    }

    /** Whether there can be one. */
    static boolean isPossible() {
        return Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
                .noneMatch(place -> Files.isDirectory(Path.of(place)));
    }

    boolean isMade() {
        return Files.isRegularFile(file);
    }

    /** The option with which a session makes it at its end. */
    List<String> making() {
        return option("-XX:AOTCacheOutput=", "-XX:ArchiveClassesAtExit=");
    }

    /** The option that uses it. */
    List<String> using() {
        return option("-XX:AOTCache=", "-XX:SharedArchiveFile=");
    }

    private List<String> option(String cache, String archive) {
        return isPossible() ? List.of((hasCache() ? cache : archive) + file) : List.of();
    }

    private static boolean hasCache() {
        return Runtime.version().feature() >= JDK_WITH_CACHE;
    }
}
