package planewright.app.exchange;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.zip.ZipEntry;
import planewright.app.store.JournalFolder;

/** Looks at all that an archive claims before a byte of it is unpacked. One bad entry, and nothing of it is trusted. */
final class ArchiveCheck {
    private static final String LOCK = ".lock";
    private static final String VIEW = ".DS_Store";
    private static final String SYSTEM = "__MACOSX/";

    private final Path archive;
    private final Limits limits;
    private final Set<LeftOut> leftOut = new LinkedHashSet<>();

    ArchiveCheck(Path archive, Limits limits) {
        this.archive = archive;
        this.limits = limits;
    }

    /** A file to unpack. */
    record Unpacking(ZipEntry entry, String name) {}

    /**
     * The files of an archive by the names that they get.
     *
     * @param listing what its directory says
     * @param entries the same in Java's reading
     * @param size of the archive in bytes
     */
    List<Unpacking> files(List<ZipListing.Item> listing, List<? extends ZipEntry> entries, long size)
            throws ExchangeRefused {
        if (listing.size() != entries.size()) {
            throw misleading("its directory");
        }
        var prefix = prefix(entries);
        var known = new HashMap<String, Boolean>();
        var files = new ArrayList<Unpacking>();
        long packed = 0;
        long unpacked = 0;
        for (int i = 0; i < entries.size(); i++) {
            var entry = entries.get(i);
            if (!listing.get(i).name().equals(entry.getName())) {
                throw misleading(entry.getName());
            }
            checkContent(entry, listing.get(i).plain());
            if (!isLeftOut(entry, prefix)) {
                checkName(entry, prefix, known);
                if (!entry.isDirectory()) {
                    files.add(new Unpacking(entry, entry.getName().substring(prefix.length())));
                }
            }
            packed += entry.getCompressedSize();
            unpacked += entry.getSize();
            if (packed > size) {
                throw refusal(
                        entry.getName(),
                        "it claims more bytes than the archive has: the archive is damaged, or built to do harm");
            }
            checkSum(unpacked, size);
        }
        checkFolders(known);
        return files;
    }

    /** Entries that are no part of a journal and are not unpacked. */
    List<LeftOut> leftOut() {
        return List.copyOf(leftOut);
    }

    private void checkContent(ZipEntry entry, boolean plain) throws ExchangeRefused {
        if (!plain) {
            throw refusal(entry.getName(), "it is a link or a device");
        }
        if (entry.getMethod() != ZipEntry.STORED && entry.getMethod() != ZipEntry.DEFLATED) {
            throw refusal(entry.getName(), "it is packed in an uncommon way");
        }
        if (entry.getSize() < 0 || entry.getCompressedSize() < 0 || entry.isDirectory() && entry.getSize() > 0) {
            throw refusal(entry.getName(), "its size is not told");
        }
    }

    private void checkName(ZipEntry entry, String prefix, Map<String, Boolean> known) throws ExchangeRefused {
        if (!entry.getName().startsWith(prefix)) {
            throw refusal(entry.getName(), "it lies beside the journal");
        }
        if (entry.isDirectory() && entry.getName().equals(prefix)) {
            return;
        }
        var name = bare(entry.getName().substring(prefix.length()));
        var problem = ArchiveName.problem(name);
        if (problem.isPresent()) {
            throw refusal(entry.getName(), problem.get());
        }
        if (known.put(ArchiveName.key(name), entry.isDirectory()) != null) {
            throw refusal(entry.getName(), "another one has the same name, on some systems at least");
        }
    }

    /** What a system, or a program that has the journal open, puts beside its files. */
    private boolean isLeftOut(ZipEntry entry, String prefix) {
        var name = entry.getName();
        if (name.startsWith(SYSTEM)) {
            leftOut.add(leftOut(bare(SYSTEM)));
            return true;
        }
        if (name.equals(prefix + LOCK) || name.equals(VIEW) || name.endsWith("/" + VIEW)) {
            leftOut.add(leftOut(name));
            return true;
        }
        return false;
    }

    private static LeftOut leftOut(String name) {
        return new LeftOut(printable(name), ExchangeWords.say("it is no part of the journal"));
    }

    private void checkSum(long unpacked, long size) throws ExchangeRefused {
        if (unpacked > limits.bytes()) {
            throw new ExchangeRefused(ExchangeWords.say(
                    "archive {0} would grow to more than {1} MB; accepted: up to that",
                    archive, (limits.bytes() >> 20)));
        }
        if (unpacked > limits.freely() && unpacked / limits.ratio() > size) {
            throw new ExchangeRefused(ExchangeWords.say(
                    "archive {0} would grow to more than {1} times its size; accepted: up to that, "
                            + "for no journal does",
                    archive, limits.ratio()));
        }
    }

    /** No file may stand where another entry needs a folder. */
    private void checkFolders(Map<String, Boolean> known) throws ExchangeRefused {
        for (var name : known.keySet()) {
            for (int slash = name.lastIndexOf('/'); slash > 0; slash = name.lastIndexOf('/', slash - 1)) {
                if (Boolean.FALSE.equals(known.get(name.substring(0, slash)))) {
                    throw refusal(name, "it lies in a file");
                }
            }
        }
    }

    /** Archives made by other programs may hold the journal's folder and not its content. */
    private String prefix(List<? extends ZipEntry> entries) throws ExchangeRefused {
        Set<String> names = new HashSet<>();
        Set<String> tops = new HashSet<>();
        for (var entry : entries) {
            var name = entry.getName();
            names.add(name);
            if (!name.startsWith(SYSTEM) && !name.equals(VIEW)) {
                tops.add(name.split("/", 2)[0] + "/");
            }
        }
        if (names.contains(JournalFolder.HEAD)) {
            return "";
        }
        var prefix = tops.stream()
                .filter(top -> tops.size() == 1 && names.contains(top + JournalFolder.HEAD))
                .findFirst()
                .orElseThrow(() -> new ExchangeRefused(ExchangeWords.say(
                        "archive {0} holds no file {1}; accepted: that of a journal", archive, JournalFolder.HEAD)));
        var problem = ArchiveName.problem(bare(prefix));
        if (problem.isPresent()) {
            throw refusal(prefix, problem.get());
        }
        return prefix;
    }

    private static String bare(String name) {
        return name.endsWith("/") ? name.substring(0, name.length() - 1) : name;
    }

    private ExchangeRefused misleading(String name) {
        return refusal(name, ExchangeWords.say("it is told in two ways: the archive is damaged, or built to mislead"));
    }

    ExchangeRefused refusal(String name, String reason) {
        return new ExchangeRefused(
                ExchangeWords.say("archive {0} is not unpacked: entry '{1}': {2}", archive, printable(name), reason));
    }

    private static String printable(String name) {
        var plain = name.replaceAll("[\\p{Cntrl}\\p{Cf}]", "?");
        return plain.length() > 100 ? plain.substring(0, 100) + "…" : plain;
    }
}
