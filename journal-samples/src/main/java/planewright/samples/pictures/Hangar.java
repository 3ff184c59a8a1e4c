package planewright.samples.pictures;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import planewright.samples.studio.Thing;

/** The journal's builds by name, ready to be photographed. */
final class Hangar {
    private final Map<String, Airframe> builds = new HashMap<>();

    private Hangar() {}

    static Hangar of(Path journal) throws IOException {
        var hangar = new Hangar();
        try (var folders = Files.newDirectoryStream(journal.resolve("builds"))) {
            for (var folder : folders) {
                var build = Airframe.read(folder.resolve("build.json"));
                hangar.builds.put(build.name(), build);
            }
        }
        return hangar;
    }

    Airframe build(String name) {
        var build = builds.get(name);
        if (build == null) {
            throw new IllegalArgumentException("no build '" + name + "' in the journal; there are " + builds.keySet());
        }
        return build;
    }

    /** A whole aircraft, nose towards −x, in its colours. */
    List<Thing> whole(String name) {
        return Liveries.whole(build(name));
    }
}
