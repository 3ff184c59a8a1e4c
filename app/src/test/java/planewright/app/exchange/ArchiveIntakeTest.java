package planewright.app.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import planewright.app.ChildProgram;
import planewright.app.store.JournalFolder;
import planewright.app.store.UserFolders;

/** Archives that would do harm are refused as a whole, and nothing of them stays on the disk. */
class ArchiveIntakeTest {
    private static final Limits SMALL = new Limits(10, 40 << 20, 1 << 20, 100);

    @TempDir
    private Path folder;

    @AfterEach
    void nothingElseWasWritten() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .isSubsetOf("archive.zip", "brought", "user", "other");
        }
    }

    @Test
    void anHonestArchiveComesIn() throws Exception {
        var unpacked = bring(ZipBench.journal().with("plans/fin 1.svg", "<svg/>"));
        assertThat(unpacked.name()).isEqualTo("Loft workshop");
        assertThat(folder.resolve("brought/plans/fin 1.svg")).hasContent("<svg/>");
        assertThat(folder.resolve("brought/.lock")).doesNotExist();
    }

    @Test
    void theJournalMayLieInOneFolder() throws Exception {
        var head = JournalFolder.head(new UUID(1, 2), "Loft workshop");
        bring(new ZipBench().with("loft/", "").with("loft/journal.json", head).with("loft/README.md", "hello"));
        assertThat(folder.resolve("brought/README.md")).hasContent("hello");
        Tree.delete(folder.resolve("brought"));
        refused(new ZipBench().with("loft/journal.json", head).with("other.txt", "x"), "holds no file journal.json");
        refused(new ZipBench().with("loft/journal.json", head).with("loft/.git/config", "x"), "it is hidden");
        refused(new ZipBench().with("loft/journal.json", head).with("loft/../x", "x"), "leads to another place");
        refused(new ZipBench().with("../journal.json", head).with("../x", "x"), "leads to another place");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/etc/x",
                "../x",
                "a/../../x",
                "a/./x",
                "a//x",
                "..",
                "C:/x",
                "C:x",
                "\\\\server\\x",
                "..\\x",
                "a\\x",
                "con",
                "builds/AUX.json",
                "com1.txt",
                "lpt¹",
                "end.",
                "end ",
                " start",
                "a /x",
                "x:stream",
                "what?",
                "star*",
                "pipe|",
                "tab\tname",
                "line\nname",
                "zero\0name",
                "left\u202Egnp.exe",
                ".git/hooks/post-checkout",
                ".GIT/config",
                "builds/.gitattributes",
                "builds/.lock",
                ".lock/x",
                ".DS_Store/x",
                "builds/.x.1-2.tmp"
            })
    void namesThatLeadAwayOrThatNotEverySystemTakes(String name) throws Exception {
        refused(ZipBench.journal().with(name, "x"), "is not unpacked: entry '");
    }

    @Test
    void namesThatTheDirectoryHides() throws Exception {
        refused(ZipBench.journal().named("aa/bb", "../bb"), "'../bb': its name leads to another place");
        refused(
                ZipBench.journal().with("aaaaaaaa", "x").changed("aaaaaaaa", (zip, at) -> zip.put(at + 46, (byte) '/')),
                "'/aaaaaaa'");
    }

    @Test
    void twoOfOneName() throws Exception {
        refused(ZipBench.journal().with("aa", "1").named("ab", "aa"), "another one has the same name");
        refused(ZipBench.journal().with("Fin.txt", "1").with("fIN.TXT", "2"), "another one has the same name");
        refused(ZipBench.journal().with("Fl\u00fcgel", "1").with("Flu\u0308gel", "2"), "another one has the same name");
        refused(ZipBench.journal().with("fin", "1").with("FIN/x", "2"), "it lies in a file");
        refused(ZipBench.journal().named("journal.jso_", "journal.json"), "another one has the same name");
    }

    @Test
    void linksAndDevices() throws Exception {
        for (int kind : new int[] {0120777, 0020666, 0010644, 0140777}) {
            refused(ZipBench.journal().with("photos", "/etc").mode("photos", kind), "it is a link or a device");
        }
        bring(ZipBench.journal().with("plain", "x").mode("plain", 0100644));
    }

    @Test
    void tooManyEntries() throws Exception {
        var zip = ZipBench.journal();
        for (int i = 0; i < 10; i++) {
            zip.with("file" + i, "");
        }
        refused(zip, "has 11 entries; accepted: up to 10");
    }

    @Test
    void moreThanMayBe() throws Exception {
        refused(ZipBench.journal().with("zeros", new byte[2 << 20]), "more than 100 times its size");
        refused(ZipBench.journal().with("noise", noise(600_000)).with("zeros", new byte[40 << 20]), "more than 40 MB");
        bring(ZipBench.journal().with("zeros", new byte[1 << 19]));
    }

    @Test
    void anArchiveWithinIsAFileAndIsNotUnpacked() throws Exception {
        var inner = ZipBench.journal().with("zeros", new byte[30 << 20]).bytes();
        bring(ZipBench.journal().with("plans/inner.zip", inner));
        assertThat(folder.resolve("brought/plans/inner.zip")).hasBinaryContent(inner);
        try (Stream<Path> files = Files.list(folder.resolve("brought/plans"))) {
            assertThat(files).hasSize(1);
        }
    }

    @Test
    void sizesAndContentsThatAreNotAsTold() throws Exception {
        var text = "{\"x\": \"" + "abc".repeat(100) + "\"}";
        refused(
                ZipBench.journal().with("x", text).changed("x", (zip, at) -> zip.putInt(at + 24, 10)),
                "its content is not what the archive tells of it");
        refused(
                ZipBench.journal().with("x", text).changed("x", (zip, at) -> zip.putInt(at + 24, 1000)),
                "its content is not what the archive tells of it");
        refused(
                ZipBench.journal().with("x", text).changed("x", (zip, at) -> zip.putInt(at + 16, 7)),
                "its content is not what the archive tells of it");
        refused(
                ZipBench.journal().with("x", text).changed("x", (zip, at) -> zip.putInt(at + 20, 1 << 20)),
                "more bytes than");
    }

    /** As in the bombs whose entries all unpack the same bytes: the packed sizes add up to more than there is. */
    @Test
    void entriesThatLieOverEachOther() throws Exception {
        var zip = ZipBench.journal();
        for (var name : new String[] {"a", "b", "c"}) {
            zip.with(name, noise(10_000));
        }
        var first = new int[3];
        zip.changed("a", (bytes, at) -> {
            first[0] = bytes.getInt(at + 42);
            first[1] = bytes.getInt(at + 20);
        });
        for (var name : new String[] {"b", "c"}) {
            zip.changed(name, (bytes, at) -> bytes.putInt(at + 42, first[0]).putInt(at + 20, 20_000));
        }
        refused(zip, "built to do harm");
    }

    @Test
    void lockedAndUncommonlyPackedEntries() throws Exception {
        refused(
                ZipBench.journal().with("x", "x").changed("x", (zip, at) -> zip.put(at + 8, (byte) 9)),
                "is locked with a password");
        refused(
                ZipBench.journal().with("x", "x").changed("x", (zip, at) -> zip.putShort(at + 10, (short) 99)),
                "archive.zip is");
    }

    @Test
    void cutAndChangedArchives() throws Exception {
        var whole = ZipBench.journal().with("README.md", "hello").bytes();
        var random = new Random(7);
        int refused = 0;
        for (int i = 0; i < 300; i++) {
            var bytes = i % 3 == 0 ? Arrays.copyOf(whole, random.nextInt(whole.length)) : whole.clone();
            if (bytes.length == whole.length) {
                bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
            }
            var target = folder.resolve("other").resolve("brought" + i);
            try {
                new ArchiveIntake(Files.write(folder.resolve("archive.zip"), bytes), SMALL, Watch.NONE)
                        .bring(target, user());
            } catch (ExchangeRefused told) {
                refused++;
                assertThat(told).hasMessageStartingWith("archive " + folder.resolve("archive.zip"));
                assertThat(target).doesNotExist();
            }
        }
        assertThat(refused).isGreaterThan(150);
    }

    @Test
    void whatIsNoJournal() throws Exception {
        refused(new ZipBench().with("x", "x"), "holds no file journal.json");
        refused(new ZipBench().with("journal.json", "{}"), "holds no journal that can be opened");
        var other = JournalFolder.head(new UUID(1, 2), "x").replace("planewright journal", "diary");
        refused(new ZipBench().with("journal.json", other), "field 'format' is 'diary'");
        Files.writeString(folder.resolve("archive.zip"), "no archive");
        assertThatThrownBy(() -> bringFile(SMALL)).hasMessageContaining("is not a whole ZIP file");
        Files.delete(folder.resolve("archive.zip"));
        assertThatThrownBy(() -> bringFile(SMALL)).hasMessageContaining("is not there");
    }

    @Test
    void aFolderThatHoldsSomethingIsLeftAlone() throws Exception {
        ZipBench.journal().write(folder.resolve("archive.zip"));
        Files.createDirectories(folder.resolve("brought"));
        Files.writeString(folder.resolve("brought/mine.txt"), "mine");
        assertThatThrownBy(() -> bringFile(SMALL)).hasMessageContaining("is not empty");
        assertThat(folder.resolve("brought/mine.txt")).hasContent("mine");
        Files.delete(folder.resolve("brought/mine.txt"));
        bringFile(SMALL);
        assertThat(folder.resolve("brought/journal.json")).exists();
    }

    @Test
    void endedOnTheWayItLeavesNothing() throws Exception {
        ZipBench.journal().with("a", "a").with("b", "b").write(folder.resolve("archive.zip"));
        for (var stop : new String[] {"a", "b", "brought"}) {
            Watch watch = what -> {
                if (what.endsWith(stop)) {
                    throw new CancellationException("enough");
                }
            };
            assertThatThrownBy(() -> new ArchiveIntake(folder.resolve("archive.zip"), SMALL, watch)
                            .bring(folder.resolve("brought"), user()))
                    .isInstanceOf(CancellationException.class);
            assertThat(folder.resolve("brought")).doesNotExist();
        }
    }

    /** 4.3.16: a record of the end stands in the comment of the true one; readers differ in which they take. */
    @Test
    void anArchiveThatEndsInTwoWays() throws Exception {
        var zip = ZipBench.journal().bytes();
        var forged = Arrays.copyOfRange(zip, zip.length - 22, zip.length);
        forged[20] = 7;
        var both = Arrays.copyOf(zip, zip.length + 22);
        both[zip.length - 2] = 22;
        System.arraycopy(forged, 0, both, zip.length, 22);
        Files.write(folder.resolve("archive.zip"), both);
        assertThatThrownBy(() -> bringFile(SMALL)).hasMessageContaining("ends in two ways");
    }

    /** Both say what would take more memory than there is: one lies, one has that many entries indeed. */
    @Test
    void memoryStaysBoundedWhateverAnArchiveSays() throws Exception {
        var archive = folder.resolve("archive.zip");
        try (var channel = FileChannel.open(archive, StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
            long length = 400L << 20;
            var end = ByteBuffer.allocate(22).order(ByteOrder.LITTLE_ENDIAN);
            end.putInt(0x06054b50).putShort(10, (short) 60_000).putInt(12, (int) length);
            channel.write(end.rewind(), length);
        }
        assertThat(inChild()).contains("damaged");
        try (var zip = new ZipOutputStream(new BufferedOutputStream(Files.newOutputStream(archive)))) {
            for (int i = 0; i < 220_000; i++) {
                zip.putNextEntry(
                        new ZipEntry("a-folder-with-a-name-that-is-not-quite-short/and-a-file/" + i + ".json"));
            }
        }
        assertThat(inChild()).contains("holds no file journal.json");
        try (var zip = new ZipOutputStream(new BufferedOutputStream(Files.newOutputStream(archive)))) {
            var name = "n".repeat(500);
            for (int i = 0; i < 64_000; i++) {
                zip.putNextEntry(new ZipEntry(name + i));
            }
        }
        assertThat(inChild()).contains("directory of");
    }

    private String inChild() throws IOException {
        var words = new String[] {
            folder.resolve("archive.zip").toString(),
            folder.resolve("brought").toString(),
            folder.resolve("user").toString()
        };
        try (var child = ChildProgram.start(BringingProgram.class, Map.of(), words)) {
            return String.join("\n", child.rest());
        }
    }

    private void refused(ZipBench zip, String reason) throws Exception {
        assertThatThrownBy(() -> bring(zip)).isInstanceOf(ExchangeRefused.class).hasMessageContaining(reason);
        assertThat(folder.resolve("brought")).doesNotExist();
    }

    private Unpacked bring(ZipBench zip) throws IOException {
        zip.write(folder.resolve("archive.zip"));
        return bringFile(SMALL);
    }

    private Unpacked bringFile(Limits limits) throws IOException {
        return new ArchiveIntake(folder.resolve("archive.zip"), limits, Watch.NONE)
                .bring(folder.resolve("brought"), user());
    }

    private UserFolders user() {
        return UserFolders.under(folder.resolve("user"));
    }

    private static byte[] noise(int length) {
        var bytes = new byte[length];
        new Random(1).nextBytes(bytes);
        return bytes;
    }
}
