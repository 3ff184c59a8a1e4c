package planewright.app.exchange;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.zip.ZipEntry;
import planewright.app.store.JournalFolder;

/** Looks at all that an archive claims before a byte of it is unpacked. One bad entry, and nothing of it is trusted. */
final class ArchiveCheck {
    private final Path archive;
    private final Limits limits;

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
        var known = new HashMap<String, Boolean>();
        long packed = 0;
        long unpacked = 0;
        for (int i = 0; i < entries.size(); i++) {
            var entry = entries.get(i);
            if (!listing.get(i).name().equals(entry.getName())) {
                throw misleading(entry.getName());
            }
            check(entry, listing.get(i).plain(), known);
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
        return named(entries);
    }

    private void check(ZipEntry entry, boolean plain, Map<String, Boolean> known) throws ExchangeRefused {
        var name = entry.isDirectory()
                ? entry.getName().substring(0, entry.getName().length() - 1)
                : entry.getName();
        var problem = ArchiveName.problem(name);
        if (problem.isPresent()) {
            throw refusal(entry.getName(), problem.get());
        }
        if (!plain) {
            throw refusal(entry.getName(), "it is a link or a device");
        }
        if (entry.getMethod() != ZipEntry.STORED && entry.getMethod() != ZipEntry.DEFLATED) {
            throw refusal(entry.getName(), "it is packed in an uncommon way");
        }
        if (entry.getSize() < 0 || entry.getCompressedSize() < 0 || entry.isDirectory() && entry.getSize() > 0) {
            throw refusal(entry.getName(), "its size is not told");
        }
        if (known.put(ArchiveName.key(name), entry.isDirectory()) != null) {
            throw refusal(entry.getName(), "another one has the same name, on some systems at least");
        }
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
    private List<Unpacking> named(List<? extends ZipEntry> entries) throws ExchangeRefused {
        var prefix = prefix(entries)
                .orElseThrow(() -> new ExchangeRefused(ExchangeWords.say(
                        "archive {0} holds no file {1}; accepted: that of a journal", archive, JournalFolder.HEAD)));
        var files = new ArrayList<Unpacking>();
        for (var entry : entries) {
            if (!entry.isDirectory()) {
                if (!entry.getName().startsWith(prefix)) {
                    throw refusal(entry.getName(), "it lies beside the journal");
                }
                files.add(new Unpacking(entry, entry.getName().substring(prefix.length())));
            }
        }
        return files;
    }

    private static Optional<String> prefix(List<? extends ZipEntry> entries) {
        Set<String> tops = new HashSet<>();
        for (var entry : entries) {
            if (entry.getName().equals(JournalFolder.HEAD)) {
                return Optional.of("");
            }
            tops.add(entry.getName().split("/", 2)[0] + "/");
        }
        return tops.stream()
                .filter(top -> tops.size() == 1)
                .filter(top ->
                        entries.stream().anyMatch(entry -> entry.getName().equals(top + JournalFolder.HEAD)))
                .findFirst();
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
