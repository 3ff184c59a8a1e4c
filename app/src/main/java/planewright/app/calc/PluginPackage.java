package planewright.app.calc;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.Locale;
import java.util.Optional;
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
 * @param hash SHA-256 of the zip, in hexadecimal
 */
record PluginPackage(Path file, Properties properties, String hash) {
    private static final System.Logger LOGGER = System.getLogger(PluginPackage.class.getName());
    private static final String PROPERTIES = "plugin.properties";

    /** Beside what was unpacked: which build of the program has looked through it. */
    private static final String SOUND = "sound.txt";

    private static final long MOST_BYTES = 500L << 20;
    private static final long MOST_PACKED_BYTES = 200L << 20;
    private static final int MOST_FILES = 20_000;
    private static final int MOST_PROPERTIES = 100_000;

    /**
     * Looks into a zip.
     *
     * @throws Faulty if it is no plugin; the message says why
     */
    static PluginPackage of(Path file) throws Faulty {
        requireSize(file);
        try (var zip = new ZipFile(file.toFile())) {
            var entry = zip.getEntry(PROPERTIES);
            if (entry == null) {
                throw new Faulty("it holds no {0}, so it is no plugin", PROPERTIES);
            }
            var properties = new Properties();
            try (InputStream in = zip.getInputStream(entry)) {
                properties.load(new InputStreamReader(
                        new ByteArrayInputStream(in.readNBytes(MOST_PROPERTIES)), StandardCharsets.UTF_8));
            }
            var plugin = new PluginPackage(file, properties, hash(Files.readAllBytes(file)));
            plugin.requireSound();
            return plugin;
        } catch (IOException | IllegalArgumentException damaged) {
            throw new Faulty("it is no sound zip file ({0})", damaged.getMessage());
        }
    }

    String id() {
        return properties.getProperty("plugin.id", "");
    }

    String version() {
        return properties.getProperty("plugin.version", "");
    }

    /** What it says it does. */
    String description() {
        return properties.getProperty("plugin.description", "");
    }

    /** The same in the language of a place, where it says it in that: {@code plugin.description.de}. */
    String description(Locale locale) {
        return properties.getProperty("plugin.description." + locale.getLanguage(), description());
    }

    /** Who says to have made it. */
    String provider() {
        return properties.getProperty("plugin.provider", "");
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
        var target = unpacked(folder);
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

    /** Whether this program has read all descriptions of its calculators before, and found nothing wrong with any. */
    boolean isKnownSound(Path folder) {
        try {
            return program().isPresent()
                    && Files.readString(unpacked(folder).resolve(SOUND))
                            .equals(program().get());
        } catch (IOException never) {
            return false;
        }
    }

    /** Lets the next start know that all descriptions of its calculators are sound. */
    void rememberSound(Path folder) {
        try {
            if (program().isPresent()) {
                Files.writeString(unpacked(folder).resolve(SOUND), program().get());
            }
        } catch (IOException notKept) {
            LOGGER.log(System.Logger.Level.DEBUG, "what is known of plugin " + id() + " was not kept", notKept);
        }
    }

    private Path unpacked(Path folder) {
        return folder.resolve(id() + "-" + hash.substring(0, 16));
    }

    /** Tells this build of the program from others; empty where it runs from a folder of classes. */
    private static Optional<String> program() {
        try {
            var jar = Path.of(PluginPackage.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
            return Files.isRegularFile(jar)
                    ? Optional.of(Files.size(jar) + " " + Files.getLastModifiedTime(jar))
                    : Optional.empty();
        } catch (URISyntaxException | IOException nowhere) {
            return Optional.empty();
        }
    }

    private static void requireSize(Path file) throws Faulty {
        try {
            long size = Files.size(file);
            if (size > MOST_PACKED_BYTES) {
                throw new Faulty("it has {0} MB; accepted: up to {1} MB", size >> 20, MOST_PACKED_BYTES >> 20);
            }
        } catch (IOException gone) {
            throw new Faulty("it is not there or cannot be read");
        }
    }

    private void requireSound() throws Faulty {
        if (!id().matches("[a-z][a-z0-9-]{0,39}")) {
            throw new Faulty("its plugin.id is '{0}'; accepted: lower-case letters, digits and hyphens", id());
        }
        if (version().isBlank()) {
            throw new Faulty("it has no plugin.version");
        }
        if (!properties.getProperty("plugin.dependencies", "").isBlank()) {
            throw new Faulty(
                    "it depends on other plugins ({0}); a plugin must bring what it needs",
                    properties.getProperty("plugin.dependencies"));
        }
    }

    private void unpack(Path folder) throws IOException, Faulty {
        long left = MOST_BYTES;
        int files = 0;
        try (var zip = new ZipInputStream(Files.newInputStream(file))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                var path = folder.resolve(entry.getName()).normalize();
                if (!path.startsWith(folder)) {
                    throw new Faulty("its entry '{0}' leads out of the plugin's folder", entry.getName());
                }
                if (++files > MOST_FILES) {
                    throw new Faulty("it holds more than {0} files", MOST_FILES);
                }
                if (entry.isDirectory()) {
                    Files.createDirectories(path);
                } else {
                    Files.createDirectories(path.getParent());
                    left -= copy(zip, path, left);
                    scan(path);
                }
            }
        }
    }

    /** Copies no more than there is room for, whatever the zip says of its sizes. */
    private static long copy(InputStream from, Path to, long most) throws IOException, Faulty {
        long copied = 0;
        var piece = new byte[1 << 16];
        try (var out = Files.newOutputStream(to)) {
            for (int count = from.read(piece); count >= 0; count = from.read(piece)) {
                copied += count;
                if (copied > most) {
                    throw new Faulty("it unpacks to more than {0} MB", MOST_BYTES >> 20);
                }
                out.write(piece, 0, count);
            }
        }
        return copied;
    }

    private static void scan(Path file) throws IOException, Faulty {
        var name = file.getFileName().toString();
        if (name.endsWith(".class")) {
            scan(name, Files.readAllBytes(file));
        } else if (name.endsWith(".jar")) {
            try (var jar = new ZipInputStream(Files.newInputStream(file))) {
                long left = MOST_BYTES;
                for (ZipEntry entry = jar.getNextEntry(); entry != null; entry = jar.getNextEntry()) {
                    if (entry.getName().endsWith(".class")) {
                        var bytes = jar.readNBytes((int) Math.min(left, Integer.MAX_VALUE >> 2));
                        left -= bytes.length;
                        if (left <= 0) {
                            throw new Faulty("its {0} unpacks to more than {1} MB", name, MOST_BYTES >> 20);
                        }
                        scan(entry.getName(), bytes);
                    }
                }
            }
        }
    }

    private static void scan(String name, byte[] bytes) throws Faulty {
        try {
            var forbidden = ClassScan.forbidden(bytes);
            if (forbidden.isPresent()) {
                throw new Faulty(
                        "its class {0} calls {1}; a calculator may not",
                        name.replace('/', '.').replaceFirst("[.]class$", ""), forbidden.get());
            }
        } catch (IOException broken) {
            throw new Faulty("its class {0} cannot be read: {1}", name, broken.getMessage());
        }
    }

    /** SHA-256 in hexadecimal. */
    static String hash(byte[] content) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
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
