package planewright.app.store;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.UUID;

/**
 * Where a user's own files go outside any journal.
 *
 * @param cache may be deleted at any time
 * @param data unpacked plugins, the copy of the sample journal
 */
public record UserFolders(Path cache, Path data) {
    /** As the XDG Base Directory Specification 0.8 says, which ignores relative paths; all under one folder where {@code planewright.user} names it. */
    public static UserFolders ofSystem() {
        var user = System.getProperty("planewright.user");
        if (user != null) {
            return under(Path.of(user));
        }
        var home = Path.of(System.getProperty("user.home"));
        return new UserFolders(
                base("XDG_CACHE_HOME", home.resolve(".cache")).resolve("planewright"),
                base("XDG_DATA_HOME", home.resolve(".local").resolve("share")).resolve("planewright"));
    }

    /** Both in one folder. */
    public static UserFolders under(Path folder) {
        return new UserFolders(folder.resolve("cache"), folder.resolve("data"));
    }

    /** The cache of one journal at one place: a copy of it has its own. */
    public Path cacheOf(String journalId, Path journal) {
        var place = journal.toAbsolutePath().normalize().toString();
        return cache.resolve(UUID.nameUUIDFromBytes((journalId + "\n" + place).getBytes(StandardCharsets.UTF_8))
                .toString());
    }

    private static Path base(String variable, Path otherwise) {
        var value = System.getenv(variable);
        return value != null && Path.of(value).isAbsolute() ? Path.of(value) : otherwise;
    }
}
