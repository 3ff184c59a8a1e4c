package planewright.api.contract;

import java.io.DataInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * What the compiled classes of a plugin speak of: the names in their constant pools, laid out as The Java Virtual Machine
 * Specification, 4.4, says.
 */
final class ForbiddenUses {
    private static final List<String> FORBIDDEN = List.of(
            "javax/swing/",
            "java/awt/event/",
            "java/awt/image/",
            "java/awt/print/",
            "java/awt/Toolkit",
            "java/awt/Desktop",
            "java/io/File",
            "java/nio/file/",
            "java/nio/channels/",
            "java/net/",
            "java/time/Clock",
            "java/time/InstantSource",
            "java/lang/ProcessBuilder",
            "java/util/Date",
            "java/util/Calendar");

    /** Calls that read the system's clock or the place where the program runs. */
    private static final List<String> CALLS =
            List.of("java/lang/System.currentTimeMillis(", "java/lang/System.nanoTime(", "java/lang/System.getenv(");

    private ForbiddenUses() {}

    /** Looks at the calculator's class and all that were compiled with it. */
    static void check(Class<?> calculator) throws IOException {
        var folder = folder(calculator);
        Checks.require(Files.isDirectory(folder), folder + " is no folder of compiled classes");
        var used = new ArrayList<String>();
        try (var files = Files.walk(folder)) {
            for (var file :
                    files.filter(each -> each.toString().endsWith(".class")).toList()) {
                try (var in = Files.newInputStream(file)) {
                    var found = forbidden(in);
                    if (!found.isEmpty()) {
                        used.add(folder.relativize(file) + " uses " + found);
                    }
                }
            }
        }
        Checks.require(used.isEmpty(), String.join("; ", used));
    }

    /** Where the classes lie that were compiled with one. */
    static Path folder(Class<?> calculator) {
        try {
            return Path.of(calculator
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
        } catch (URISyntaxException impossible) {
            throw new AssertionError(impossible);
        }
    }

    /** The forbidden types and calls in a compiled class. */
    static Set<String> forbidden(InputStream compiled) throws IOException {
        var found = new LinkedHashSet<String>();
        for (var name : names(new DataInputStream(compiled))) {
            if (isClock(name)
                    || CALLS.stream().anyMatch(name::startsWith)
                    || FORBIDDEN.stream().anyMatch(part -> name.startsWith(part) || name.contains("L" + part))) {
                found.add(name);
            }
        }
        return found;
    }

    /** {@code LocalDateTime.now()} and its like. */
    private static boolean isClock(String call) {
        return call.startsWith("java/time/") && call.contains(".now(");
    }

    /** All texts of the constant pool, and each call as {@code type.name(parameters)result}. */
    static List<String> names(DataInputStream in) throws IOException {
        in.readInt();
        in.readInt();
        int size = in.readUnsignedShort();
        var texts = new String[size];
        var pairs = new int[size][];
        var calls = new ArrayList<int[]>();
        for (int i = 1; i < size; i++) {
            int tag = in.readUnsignedByte();
            switch (tag) {
                case 1 -> texts[i] = in.readUTF();
                case 7 -> pairs[i] = new int[] {in.readUnsignedShort()};
                case 10, 11 -> calls.add(new int[] {in.readUnsignedShort(), in.readUnsignedShort()});
                case 12 -> pairs[i] = new int[] {in.readUnsignedShort(), in.readUnsignedShort()};
                case 3, 4, 9, 17, 18 -> in.readInt();
                case 5, 6 -> {
                    in.readLong();
                    i++;
                }
                case 8, 16, 19, 20 -> in.readUnsignedShort();
                case 15 -> {
                    in.readUnsignedByte();
                    in.readUnsignedShort();
                }
                default -> throw new IOException("constant of unknown kind " + tag);
            }
        }
        var names = new ArrayList<String>(
                Arrays.stream(texts).filter(Objects::nonNull).toList());
        for (var call : calls) {
            var pair = pairs[call[1]];
            names.add(texts[pairs[call[0]][0]] + "." + texts[pair[0]] + texts[pair[1]]);
        }
        return names;
    }
}
