package planewright.app.store;

import com.github.f4b6a3.ulid.Ulid;
import java.nio.file.Path;
import java.text.Normalizer;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.regex.Pattern;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.TemplateRecord;

/** Names of files and folders that every file system takes. */
public final class Names {
    private static final String BASE_32 = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
    private static final int ULID_LENGTH = 26;
    private static final Pattern FOLDER = Pattern.compile("[a-z0-9-]{1,40}-[0-9a-z]{6}");
    private static final Pattern DEVICE = Pattern.compile("con|prn|aux|nul|com\\d|lpt\\d");

    private Names() {}

    /** The folder of a build that has none yet; it keeps it whatever its name becomes. */
    public static String folderOf(BuildRecord build) {
        return slug(build.name(), "build") + "-" + ending(build.id());
    }

    /** The file of a template that has none yet; it keeps it likewise. */
    static String fileOf(TemplateRecord template) {
        return slug(template.name(), "template") + "-" + ending(template.id()) + ".json";
    }

    /** Where an entry lies within its build's folder: by the year it was created in, which its ULID tells. */
    public static Path pathOf(String entryId) {
        return Path.of("entries", yearOf(entryId), entryId + ".json");
    }

    /** Whether a folder of a build, or without its ending the file of a template, could bear this name. */
    static boolean isOurs(String name) {
        return FOLDER.matcher(name).matches();
    }

    static boolean isUlid(String id) {
        if (id.length() != ULID_LENGTH || id.charAt(0) > '7') {
            return false;
        }
        for (int i = 0; i < ULID_LENGTH; i++) {
            if (BASE_32.indexOf(id.charAt(i)) < 0) {
                return false;
            }
        }
        return true;
    }

    /** The folder within a build's entries where an entry lies: the year it was created in, which its ULID tells. */
    static String yearOf(String entryId) {
        return Integer.toString(
                Ulid.from(entryId).getInstant().atZone(ZoneOffset.UTC).getYear());
    }

    private static String ending(String id) {
        return id.substring(20).toLowerCase(Locale.ROOT);
    }

    private static String slug(String name, String otherwise) {
        var plain = Normalizer.normalize(name, Normalizer.Form.NFKD)
                .toLowerCase(Locale.ROOT)
                .replaceAll("\\p{M}", "")
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-+|-+$", "");
        var cut = plain.substring(0, Math.min(40, plain.length())).replaceAll("-+$", "");
        return cut.isEmpty() || DEVICE.matcher(cut).matches() ? otherwise : cut;
    }
}
