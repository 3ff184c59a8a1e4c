package planewright.app.exchange;

import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Which names a file in an archive may have: those that lie below the folder it is unpacked into, on every system. Names
 * that Windows does not take: Microsoft, Naming Files, Paths, and Namespaces.
 */
final class ArchiveName {
    private static final int LONGEST_PART = 200;
    private static final int LONGEST = 1000;
    private static final Pattern STRANGE = Pattern.compile("[\\p{Cntrl}\\p{Cf}<>:\"|?*\\\\]");
    private static final Pattern DEVICE =
            Pattern.compile("(?i)(con|prn|aux|nul|conin\\$|conout\\$|com[0-9¹²³]|lpt[0-9¹²³])(\\..*)?");

    /** The hidden files that belong to a journal. */
    private static final Set<String> OURS = Set.of(".gitignore", ".gitattributes");

    private ArchiveName() {}

    /** What is wrong with a name whose parts are divided by slashes; empty where nothing is. */
    static Optional<String> problem(String name) {
        if (name.isEmpty() || name.length() > LONGEST) {
            return Optional.of("its name is empty or too long");
        }
        if (name.startsWith("/")) {
            return Optional.of("its name leads to another place");
        }
        return List.of(name.split("/", -1)).stream()
                .flatMap(part -> problemOfPart(part).stream())
                .findFirst()
                .or(() -> hidden(name));
    }

    /** Equal for names that some system takes for one. */
    static String key(String name) {
        return Normalizer.normalize(name, Normalizer.Form.NFKC)
                .toUpperCase(Locale.ROOT)
                .toLowerCase(Locale.ROOT);
    }

    private static Optional<String> problemOfPart(String part) {
        if (part.isEmpty() || part.equals(".") || part.equals("..")) {
            return Optional.of("its name leads to another place");
        }
        if (STRANGE.matcher(part).find()) {
            return Optional.of("its name has signs that not every system takes");
        }
        if (DEVICE.matcher(part).matches() || part.endsWith(".") || part.endsWith(" ") || part.startsWith(" ")) {
            return Optional.of("its name is one that not every system takes");
        }
        return part.getBytes(StandardCharsets.UTF_8).length > LONGEST_PART
                ? Optional.of("its name is too long")
                : Optional.empty();
    }

    private static Optional<String> hidden(String name) {
        boolean hidden = List.of(name.split("/")).stream().anyMatch(part -> part.startsWith("."));
        return hidden && !OURS.contains(name) ? Optional.of("it is hidden") : Optional.empty();
    }
}
