package planewright.app.index;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;
import org.apache.lucene.store.Directory;
import org.apache.lucene.store.FSDirectory;
import org.apache.lucene.store.NRTCachingDirectory;

/** Where indexes lie in the user's cache. */
final class IndexFolders {
    private IndexFolders() {}

    /** Deletes indexes that other versions of the program have made. */
    static void forgetOthers(Path cacheFolder, Path own) throws IOException {
        if (Files.isDirectory(cacheFolder)) {
            try (var others = Files.newDirectoryStream(cacheFolder, "search-*")) {
                for (var other : others) {
                    if (!other.equals(own)) {
                        delete(other);
                    }
                }
            }
        }
    }

    static Directory open(Path folder) throws IOException {
        return new NRTCachingDirectory(FSDirectory.open(folder), 5, 60);
    }

    static void delete(Path folder) throws IOException {
        if (Files.isDirectory(folder)) {
            try (Stream<Path> files = Files.walk(folder)) {
                for (var file : files.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(file);
                }
            }
        }
    }
}
