package planewright.app.calc;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import planewright.app.files.SafeFile;
import planewright.app.store.JsonFiles;

/**
 * What the user has said about plugins, kept in a file of the user's data.
 *
 * @param trusted the content that may run, as the SHA-256 of its zip, by the ids of plugins
 * @param off the ids of plugins that shall not run
 */
record PluginChoices(Map<String, String> trusted, Set<String> off) {
    private static final String TRUSTED = "trusted";
    private static final String OFF = "off";

    PluginChoices {
        trusted = Map.copyOf(trusted);
        off = Set.copyOf(off);
    }

    /** What was said; nothing where there is no file, or one that says nothing: then nothing is trusted. */
    static PluginChoices read(Path file) {
        if (!Files.isRegularFile(file)) {
            return new PluginChoices(Map.of(), Set.of());
        }
        try {
            var tree = JsonFiles.read(file);
            var trusted = new TreeMap<String, String>();
            tree.path(TRUSTED)
                    .properties()
                    .forEach(each -> trusted.put(each.getKey(), each.getValue().asText()));
            var off = new TreeSet<String>();
            tree.path(OFF).forEach(id -> off.add(id.asText()));
            return new PluginChoices(trusted, off);
        } catch (IOException unreadable) {
            return new PluginChoices(Map.of(), Set.of());
        }
    }

    void write(Path file) throws IOException {
        ObjectNode tree = JsonFiles.object();
        var hashes = tree.putObject(TRUSTED);
        new TreeMap<>(trusted).forEach(hashes::put);
        var ids = tree.putArray(OFF);
        new TreeSet<>(off).forEach(ids::add);
        SafeFile.write(file, JsonFiles.text(tree).getBytes(StandardCharsets.UTF_8));
    }

    Optional<String> trusted(String id) {
        return Optional.ofNullable(trusted.get(id));
    }

    PluginChoices trusting(String id, String hash) {
        var changed = new TreeMap<>(trusted);
        changed.put(id, hash);
        return new PluginChoices(changed, off);
    }

    PluginChoices forgetting(String id) {
        var changed = new TreeMap<>(trusted);
        changed.remove(id);
        return new PluginChoices(changed, off).switched(id, true);
    }

    PluginChoices switched(String id, boolean on) {
        var changed = new HashSet<>(off);
        if (on) {
            changed.remove(id);
        } else {
            changed.add(id);
        }
        return new PluginChoices(trusted, changed);
    }
}
