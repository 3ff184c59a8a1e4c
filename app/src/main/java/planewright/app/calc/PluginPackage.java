package planewright.app.calc;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.Properties;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipInputStream;

/**
 * A plugin as it is handed out: a zip with {@code plugin.properties} at its root and jars in {@code lib/}.
 *
 * @param file the zip
 * @param properties what the plugin says of itself
 */
record PluginPackage(Path file, Properties properties) {
    private static final String PROPERTIES = "plugin.properties";
    private static final long MOST_BYTES = 500L << 20;

    /**
     * Looks into a zip.
     *
     * @throws Faulty if it is no plugin; the message says why
     */
    static PluginPackage of(Path file) throws Faulty {
        try (var zip = new ZipFile(file.toFile())) {
            var entry = zip.getEntry(PROPERTIES);
            if (entry == null) {
                throw new Faulty("it holds no " + PROPERTIES + ", so it is no plugin");
            }
            var properties = new Properties();
            try (InputStream in = zip.getInputStream(entry)) {
                properties.load(new InputStreamReader(in, StandardCharsets.UTF_8));
            }
            var plugin = new PluginPackage(file, properties);
            plugin.requireSound();
            return plugin;
        } catch (IOException | IllegalArgumentException damaged) {
            throw new Faulty("it is no sound zip file (" + damaged.getMessage() + ")");
        }
    }

    String id() {
        return properties.getProperty("plugin.id", "");
    }

    String version() {
        return properties.getProperty("plugin.version", "");
    }

    /** The version of the API it asks for; {@code *} where it does not say. */
    String requires() {
        return properties.getProperty("plugin.requires", "*");
    }

    /**
     * Unpacks it under the hash of its content, unless that has been done. A zip that was changed, cut short or is being
     * unpacked by another program never mixes with a whole one.
     */
    Path unpackInto(Path folder) throws IOException, Faulty {
        var target = folder.resolve(id() + "-" + hash().substring(0, 16));
        if (Files.isDirectory(target)) {
            return target;
        }
        Files.createDirectories(folder);
        var beside = Files.createTempDirectory(folder, ".unpacking");
        try {
            unpack(beside);
            Files.move(beside, target, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException failure) {
            if (!Files.isDirectory(target)) {
                throw failure;
            }
        } finally {
            delete(beside);
        }
        return target;
    }

    private void requireSound() throws Faulty {
        if (!id().matches("[a-z][a-z0-9-]{0,39}")) {
            throw new Faulty("its plugin.id is '" + id() + "'; accepted: lower-case letters, digits and hyphens");
        }
        if (version().isBlank()) {
            throw new Faulty("it has no plugin.version");
        }
        if (!properties.getProperty("plugin.dependencies", "").isBlank()) {
            throw new Faulty("it depends on other plugins (" + properties.getProperty("plugin.dependencies")
                    + "); a plugin must bring what it needs");
        }
    }

    private void unpack(Path folder) throws IOException, Faulty {
        long bytes = 0;
        try (var zip = new ZipInputStream(Files.newInputStream(file))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                var path = folder.resolve(entry.getName()).normalize();
                if (!path.startsWith(folder)) {
                    throw new Faulty("its entry '" + entry.getName() + "' leads out of the plugin's folder");
                }
                if (entry.isDirectory()) {
                    Files.createDirectories(path);
                } else {
                    Files.createDirectories(path.getParent());
                    bytes += Files.copy(zip, path);
                }
                if (bytes > MOST_BYTES) {
                    throw new Faulty("it unpacks to more than " + (MOST_BYTES >> 20) + " MB");
                }
            }
        }
    }

    private String hash() throws IOException {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file)));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }

    private static void delete(Path folder) throws IOException {
        if (Files.isDirectory(folder)) {
            try (Stream<Path> files = Files.walk(folder)) {
                for (var each : files.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(each);
                }
            }
        }
    }
}
