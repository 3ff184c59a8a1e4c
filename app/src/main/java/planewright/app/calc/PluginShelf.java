package planewright.app.calc;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import planewright.app.files.SafeFile;
import planewright.app.journal.Slow;

/**
 * The plugins that a user has added, and what the user has said of all plugins. A zip that lies here runs only while its content is
 * what was trusted; what another program lays here or changes does not.
 */
public final class PluginShelf {
    private final Path zips;
    private final Path choices;
    private final Path unpacked;

    /**
     * @param user the folder of the user's data
     */
    public PluginShelf(Path user) {
        this.zips = user.resolve("plugins");
        this.choices = user.resolve("plugins.json");
        this.unpacked = user.resolve("plugins-unpacked");
    }

    /**
     * Looks at a zip that somebody offers, without running anything of it.
     *
     * @throws IOException if it cannot be read or is no plugin; the message says why
     */
    public static Offer look(Path zip) throws IOException {
        Slow.work("looking at a plugin");
        try {
            var plugin = PluginPackage.of(zip);
            return new Offer(
                    zip,
                    plugin.id(),
                    plugin.version(),
                    plugin.description(),
                    plugin.description(PluginWords.locale()),
                    plugin.provider(),
                    plugin.requires(),
                    plugin.hash());
        } catch (Faulty faulty) {
            throw new IOException(PluginWords.say("plugin {0}: {1}", zip, faulty.getMessage()));
        }
    }

    /**
     * A plugin that could be added, and what there is to know before one trusts it.
     *
     * @param told its description in the language that is shown, as far as it says it in that
     * @param hash SHA-256 of the zip, in hexadecimal
     */
    public record Offer(
            Path file,
            String id,
            String version,
            String description,
            String told,
            String provider,
            String requires,
            String hash) {}

    /**
     * Adds a plugin that the user trusts; one of the same id is replaced.
     *
     * @throws IOException if the file is no longer what was looked at, or cannot be copied
     */
    public void add(Offer offer) throws IOException {
        Slow.work("adding a plugin");
        var content = Files.readAllBytes(offer.file());
        if (!PluginPackage.hash(content).equals(offer.hash())) {
            throw new IOException(PluginWords.say(
                    "plugin {0} has changed since it was looked at; look at it again before you trust it",
                    offer.file()));
        }
        // The word before the deed: a zip without trust does not run, trust without its zip does nothing.
        said().trusting(offer.id(), offer.hash()).switched(offer.id(), true).write(choices);
        var place = place(offer.id());
        for (var other : of(offer.id())) {
            if (!other.equals(place)) {
                SafeFile.delete(other);
            }
        }
        SafeFile.write(place, content);
    }

    /**
     * Takes a plugin off the disk that was added.
     *
     * @throws IOException if none of that id was added
     */
    public void remove(String id) throws IOException {
        Slow.work("removing a plugin");
        var files = of(id);
        if (files.isEmpty()) {
            throw new IOException(PluginWords.say(
                    "plugin '{0}' was not added by you, so it cannot be removed; accepted: {1}",
                    id, added().isEmpty() ? PluginWords.say("none, no plugin was added") : String.join(", ", added())));
        }
        for (var file : files) {
            SafeFile.delete(file);
        }
        said().forgetting(id).write(choices);
    }

    /** Lets a plugin run, or not; the host has to be opened anew. */
    public void switchTo(String id, boolean on) throws IOException {
        Slow.work("switching a plugin");
        said().switched(id, on).write(choices);
    }

    PluginChoices said() {
        return PluginChoices.read(choices);
    }

    Path unpacked() {
        return unpacked;
    }

    /** All zips that lie here. */
    List<Path> zips() throws IOException {
        if (!Files.isDirectory(zips)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(zips)) {
            return files.filter(file -> file.getFileName().toString().endsWith(".zip"))
                    .sorted()
                    .toList();
        }
    }

    private Path place(String id) {
        return zips.resolve(id + ".zip");
    }

    private List<String> added() throws IOException {
        return zips().stream().flatMap(file -> idOf(file).stream()).sorted().toList();
    }

    private List<Path> of(String id) throws IOException {
        var found = new ArrayList<Path>();
        for (var file : zips()) {
            if (idOf(file).filter(id::equals).isPresent() || file.equals(place(id))) {
                found.add(file);
            }
        }
        return found;
    }

    private static Optional<String> idOf(Path zip) {
        try {
            return Optional.of(PluginPackage.of(zip).id());
        } catch (Faulty damaged) {
            return Optional.empty();
        }
    }
}
