package planewright.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Both ways to go through files see the same. */
class FileWalkTest {
    @TempDir
    private Path folder;

    private interface Way {
        void go(Path folder, FileWalk.Seen seen) throws IOException;
    }

    @BeforeEach
    void layFiles() throws IOException {
        Files.writeString(folder.resolve("first.json"), "{}");
        var deep = Files.createDirectories(folder.resolve("2025/March – über"));
        Files.writeString(deep.resolve("second.json"), "longer");
        Files.createDirectories(folder.resolve("empty"));
        Files.createSymbolicLink(folder.resolve("link-to-folder"), deep);
        Files.createSymbolicLink(deep.resolve("link-to-nothing"), folder.resolve("nothing"));
        Files.createSymbolicLink(deep.resolve("link-around"), folder);
    }

    @Test
    void filesAndLinksAreSeenAndNoLinkIsFollowed() throws IOException {
        var seen = seen(FileWalk::under, folder);
        assertThat(seen)
                .containsEntry(Path.of("first.json"), "file of 2 bytes")
                .containsEntry(Path.of("2025/March – über/second.json"), "file of 6 bytes")
                .containsEntry(Path.of("2025/March – über/link-around"), "link")
                .hasSize(5)
                .isEqualTo(seen(FileWalk::byPath, folder));
    }

    @Test
    void whatIsNoFolderIsSeenItself() throws IOException {
        for (var name : new String[] {"first.json", "link-to-folder", "2025/March – über/link-to-nothing"}) {
            assertThat(seen(FileWalk::under, folder.resolve(name)))
                    .hasSize(1)
                    .isEqualTo(seen(FileWalk::byPath, folder.resolve(name)));
        }
    }

    @Test
    void whatIsNotThereIsTold() throws IOException {
        assertThat(seen(FileWalk::under, folder.resolve("nothing")))
                .containsEntry(Path.of("nothing"), "NoSuchFileException")
                .isEqualTo(seen(FileWalk::byPath, folder.resolve("nothing")));
    }

    private Map<Path, String> seen(Way way, Path under) throws IOException {
        var seen = new TreeMap<Path, String>();
        way.go(under, new FileWalk.Seen() {
            @Override
            public void file(Path file, BasicFileAttributes attributes) {
                seen.put(
                        folder.relativize(file),
                        attributes.isSymbolicLink() ? "link" : "file of " + attributes.size() + " bytes");
            }

            @Override
            public void failed(Path file, IOException failure) {
                seen.put(folder.relativize(file), failure.getClass().getSimpleName());
            }
        });
        return seen;
    }
}
