package planewright.app;

import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import planewright.app.store.UserFolders;

/**
 * What the launcher and the environment say.
 *
 * @param user where the user's files go
 * @param pluginPlaces zips of the plugins that came with the program, and folders that hold some
 * @param journal the journal to use where a command names none
 */
public record Settings(UserFolders user, List<Path> pluginPlaces, Optional<Path> journal) {
    /**
     * Plugins of the system property {@code planewright.plugins}; the journal of the environment variable {@code PLANEWRIGHT_JOURNAL}, else of the property {@code planewright.journal}.
     */
    public static Settings ofSystem() {
        var user = UserFolders.ofSystem();
        var places = new ArrayList<Path>();
        for (var place : System.getProperty("planewright.plugins", "").split(File.pathSeparator)) {
            if (!place.isBlank()) {
                places.add(Path.of(place));
            }
        }
        places.removeIf(place -> !place.toFile().exists());
        var journal = named().or(() -> path(System.getProperty("planewright.journal")));
        return new Settings(user, List.copyOf(places), journal);
    }

    /** The journal that the builder has named in the environment. */
    public static Optional<Path> named() {
        return path(System.getenv("PLANEWRIGHT_JOURNAL"));
    }

    private static Optional<Path> path(String name) {
        return Optional.ofNullable(name).filter(known -> !known.isBlank()).map(Path::of);
    }
}
