package planewright.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import planewright.app.ChildProgram;

class UserFoldersTest {
    @TempDir
    private Path temp;

    @Test
    void theXdgVariablesAreHonoured() throws IOException {
        assertThat(told(temp + "/c", temp + "/d"))
                .isEqualTo(temp.resolve("c/planewright") + " " + temp.resolve("d/planewright"));
    }

    @Test
    void emptyAndRelativeOnesAreIgnored() throws IOException {
        // XDG Base Directory Specification 0.8: empty means the default; a relative path is invalid and to be ignored
        var home = Path.of(System.getProperty("user.home"));
        assertThat(told("", "some/where"))
                .isEqualTo(home.resolve(".cache/planewright") + " " + home.resolve(".local/share/planewright"));
    }

    @Test
    void aCopyOfAJournalHasACacheOfItsOwn() {
        var folders = UserFolders.under(temp);
        var here = folders.cacheOf("1234", Path.of("journal"));
        assertThat(here).startsWithRaw(temp).isNotEqualTo(folders.cacheOf("1234", Path.of("copy")));
        assertThat(here).isNotEqualTo(folders.cacheOf("4321", Path.of("journal")));
        assertThat(here)
                .isEqualTo(folders.cacheOf("1234", Path.of("copy/../journal").toAbsolutePath()));
    }

    private static String told(String cache, String data) throws IOException {
        try (var child = ChildProgram.start(Teller.class, Map.of("XDG_CACHE_HOME", cache, "XDG_DATA_HOME", data))) {
            return child.line();
        }
    }

    /** Says where a user's files go. */
    static final class Teller {
        private Teller() {}

        public static void main(String[] words) {
            var folders = UserFolders.ofSystem();
            System.out.println(folders.cache() + " " + folders.data());
        }
    }
}
