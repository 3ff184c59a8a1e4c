package planewright.app.exchange;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import planewright.app.files.SafeFile;
import planewright.app.journal.Ids;
import planewright.app.journal.OpenJournal;
import planewright.app.journal.Slow;
import planewright.app.pictures.PictureShelf;
import planewright.app.store.JournalFolder;
import planewright.app.store.JournalRefused;
import planewright.app.store.UserFolders;

/**
 * Brings a journal in from a ZIP file, into a new folder. The archive is mistrusted: it is unpacked beside the folder, within
 * limits, and gets the folder's name only when it is whole and opens as a journal. Archives within it stay files.
 */
public final class ArchiveIntake {
    private final Path archive;
    private final Limits limits;
    private final Watch watch;
    private final ArchiveCheck check;

    ArchiveIntake(Path archive, Limits limits, Watch watch) {
        this.archive = archive;
        this.limits = limits;
        this.watch = watch;
        this.check = new ArchiveCheck(archive, limits);
    }

    /**
     * @param folder empty, or not there yet
     * @throws ExchangeRefused if there is something in the folder, or the archive is damaged, harmful or not a journal's;
     *     then nothing was written
     */
    public static Unpacked bring(Path archive, Path folder, UserFolders user, Watch watch) throws IOException {
        return new ArchiveIntake(archive, Limits.USUAL, watch).bring(folder, user);
    }

    Unpacked bring(Path folder, UserFolders user) throws IOException {
        Slow.work("bringing a journal in");
        if (!Files.isRegularFile(archive)) {
            throw new ExchangeRefused(
                    ExchangeWords.say("archive {0} is not there; accepted: a ZIP file of a journal", archive));
        }
        var target = folder.toAbsolutePath().normalize();
        requireFree(target);
        var listing = ZipListing.read(archive, limits);
        try (var zip = new ZipFile(archive.toFile())) {
            var entries = zip.stream().toList();
            var files = check.files(listing, entries, Files.size(archive));
            return unpack(zip, files, target, user);
        } catch (ZipException | EOFException | IllegalArgumentException broken) {
            throw new ExchangeRefused(ExchangeWords.say(
                    "archive {0} is damaged ({1}); take it from its source again", archive, broken.getMessage()));
        }
    }

    private static void requireFree(Path folder) throws IOException {
        if (Files.exists(folder)) {
            if (!Files.isDirectory(folder)) {
                throw new ExchangeRefused(ExchangeWords.say("'{0}' is a file; accepted: a folder", folder));
            }
            try (Stream<Path> files = Files.list(folder)) {
                if (files.findAny().isPresent()) {
                    throw new ExchangeRefused(ExchangeWords.say(
                            "folder {0} is not empty; accepted: an empty folder or one that does not exist yet",
                            folder));
                }
            }
        }
    }

    private Unpacked unpack(ZipFile zip, List<ArchiveCheck.Unpacking> files, Path target, UserFolders user)
            throws IOException {
        Files.createDirectories(target.getParent());
        requireRoom(files, target.getParent());
        var part = target.resolveSibling("." + target.getFileName() + "." + Ids.small() + ".part");
        Files.createDirectory(part);
        try {
            for (var file : files) {
                watch.reached(file.name());
                write(zip, file, part);
            }
            var unpacked = open(part, user);
            watch.reached(target.toString());
            forceFolders(part);
            Files.deleteIfExists(target);
            Files.move(part, target, StandardCopyOption.ATOMIC_MOVE);
            SafeFile.force(target.getParent());
            return unpacked;
        } finally {
            Tree.delete(part);
        }
    }

    private void requireRoom(List<ArchiveCheck.Unpacking> files, Path place) throws IOException {
        long needed = files.stream().mapToLong(file -> file.entry().getSize()).sum();
        long free = Files.getFileStore(place).getUsableSpace();
        if (needed > free) {
            throw new ExchangeRefused(ExchangeWords.say(
                    "archive {0} needs {1} MB; the disk has {2} MB left", archive, (needed >> 20), (free >> 20)));
        }
    }

    private void write(ZipFile zip, ArchiveCheck.Unpacking file, Path part) throws IOException {
        var to = part.resolve(file.name()).normalize();
        if (!to.startsWith(part)) {
            throw check.refusal(file.entry().getName(), "its name leads to another place");
        }
        Files.createDirectories(to.getParent());
        try (var in = zip.getInputStream(file.entry());
                var channel = FileChannel.open(to, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            copy(in, channel, file.entry());
            channel.force(true);
        }
    }

    /** No more than was told, and the content that was packed: what the archive says of itself may be a lie. */
    private void copy(InputStream in, FileChannel channel, ZipEntry entry) throws IOException {
        var out = Channels.newOutputStream(channel);
        var sum = new CRC32();
        var buffer = new byte[1 << 16];
        long length = 0;
        for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
            length += read;
            if (length > entry.getSize()) {
                break;
            }
            sum.update(buffer, 0, read);
            out.write(buffer, 0, read);
        }
        if (length != entry.getSize() || sum.getValue() != entry.getCrc()) {
            throw check.refusal(entry.getName(), "its content is not what the archive tells of it");
        }
    }

    private Unpacked open(Path part, UserFolders user) throws IOException {
        try (var opened = JournalFolder.open(part, user)) {
            var wrong = new ArrayList<LeftOut>();
            opened.setAside()
                    .forEach(each ->
                            wrong.add(new LeftOut(part.relativize(each.file()).toString(), each.reason())));
            var journal = opened.journal();
            int entries = 0;
            for (var build : journal.builds()) {
                entries += journal.log(build.id()).size();
            }
            checkPictures(part, opened.pictures(), journal, wrong);
            checkOutlines(part, opened, wrong);
            return new Unpacked(journal.name(), journal.builds().size(), entries, wrong, check.leftOut());
        } catch (JournalRefused refused) {
            throw new ExchangeRefused(ExchangeWords.say(
                    "archive {0} holds no journal that can be opened: {1}",
                    archive, refused.getMessage().replace(part.toString(), "in it")));
        } finally {
            Files.deleteIfExists(part.resolve(".lock"));
        }
    }

    private void checkPictures(Path part, PictureShelf shelf, OpenJournal journal, List<LeftOut> wrong)
            throws IOException {
        for (var build : journal.builds()) {
            for (var entry : journal.log(build.id())) {
                for (var picture : entry.pictures()) {
                    var file = shelf.file(picture);
                    var name = part.relativize(file).toString();
                    watch.reached(name);
                    if (!Files.isRegularFile(file)) {
                        wrong.add(new LeftOut(name, ExchangeWords.say("it is missing")));
                    } else if (!PictureShelf.hash(file).equals(picture.hash())) {
                        wrong.add(new LeftOut(name, ExchangeWords.say("its content is not what its name says")));
                    }
                }
            }
        }
    }

    private static void checkOutlines(Path part, JournalFolder opened, List<LeftOut> wrong) {
        for (var template : opened.journal().templates()) {
            template.outline().ifPresent(hash -> {
                try {
                    opened.outlines().read(hash);
                } catch (IOException reason) {
                    wrong.add(new LeftOut(
                            part.relativize(opened.outlines().file(hash)).toString(), reason.getLocalizedMessage()));
                }
            });
        }
    }

    private static void forceFolders(Path part) throws IOException {
        try (Stream<Path> folders = Files.walk(part)) {
            folders.filter(Files::isDirectory).forEach(SafeFile::force);
        }
    }
}
