package planewright.app.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import planewright.app.Bench;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;
import planewright.app.pictures.PictureShelf;
import planewright.app.store.JournalFolder;
import planewright.app.store.UserFolders;

/** What goes out comes in again to the byte. */
class JournalArchiveTest {
    @TempDir
    private Path folder;

    private JournalFolder opened;
    private BuildRecord heron;
    private BuildRecord grebe;

    @BeforeEach
    void journal() throws IOException {
        opened = Bench.newJournal(folder.resolve("journal"));
        heron = Bench.fullBuild();
        grebe = Bench.build("Grebe").withLayout("Löwenzahn ½");
        opened.journal().apply(Edit.add("build", heron));
        opened.journal().apply(Edit.add("build", grebe));
        picture(heron, 0xAA0000);
        picture(grebe, 0x00AA00);
    }

    @AfterEach
    void close() throws IOException {
        opened.close();
    }

    @Test
    void aWholeJournalGoesRound() throws Exception {
        write("plans/fin.svg", "<svg/>");
        write("builds/strange folder/notes.txt", "left by another program");
        var taken = JournalArchive.take(opened, PictureForm.PLAIN, zip(), false, Watch.NONE);
        assertThat(taken.leftOut()).isEmpty();
        var unpacked = ArchiveIntake.bring(zip(), folder.resolve("copy"), user(), Watch.NONE);
        assertThat(unpacked).isEqualTo(new Unpacked("Loft workshop", 2, 2, List.of(), List.of()));
        assertThat(bytes(folder.resolve("copy")))
                .isEqualTo(bytes(folder.resolve("journal")))
                .hasSize(taken.things());
    }

    @Test
    void theCopyMakesTheSameArchive() throws Exception {
        JournalArchive.take(opened, PictureForm.PLAIN, zip(), false, Watch.NONE);
        ArchiveIntake.bring(zip(), folder.resolve("copy"), user(), Watch.NONE);
        try (var copy = JournalFolder.open(folder.resolve("copy"), user())) {
            JournalArchive.take(copy, PictureForm.PLAIN, folder.resolve("again.zip"), false, Watch.NONE);
        }
        assertThat(folder.resolve("again.zip")).hasSameBinaryContentAs(zip());
    }

    @Test
    void oneBuildGoesOutWithItsPicturesAlone() throws Exception {
        JournalArchive.take(opened, heron, PictureForm.PLAIN, zip(), false, Watch.NONE);
        var unpacked = ArchiveIntake.bring(zip(), folder.resolve("copy"), user(), Watch.NONE);
        assertThat(unpacked).isEqualTo(new Unpacked("Loft workshop: Grey heron", 1, 1, List.of(), List.of()));
        var all = bytes(folder.resolve("journal"));
        var copied = bytes(folder.resolve("copy"));
        assertThat(copied.keySet().stream().filter(name -> name.startsWith("photos/")))
                .hasSize(1);
        assertThat(copied.keySet()).noneMatch(name -> name.contains("grebe"));
        copied.remove("journal.json");
        assertThat(all).containsAllEntriesOf(copied);
        try (var copy = JournalFolder.open(folder.resolve("copy"), user())) {
            assertThat(copy.journal().log(heron.id()))
                    .isEqualTo(opened.journal().log(heron.id()));
            assertThat(copy.id()).isNotEqualTo(opened.id());
        }
    }

    @Test
    void whatCouldNotComeInAgainStaysBehindAndIsTold() throws Exception {
        write(".git/config", "history");
        write("builds/what?.txt", "x");
        write("Fin.txt", "x");
        write("fIN.txt", "x");
        write(".journal.json.1-2.tmp", "an unfinished save");
        Files.createSymbolicLink(folder.resolve("journal/link"), folder.resolve("outside"));
        var left = JournalArchive.take(opened, PictureForm.PLAIN, zip(), false, Watch.NONE).leftOut().stream()
                .map(LeftOut::what)
                .toList();
        assertThat(left).hasSize(4).contains(".git", "builds/what?.txt", "link").containsAnyOf("Fin.txt", "fIN.txt");
        ArchiveIntake.bring(zip(), folder.resolve("copy"), user(), Watch.NONE);
    }

    @Test
    void thePlaceStaysAtHomeAndTheArchiveIsAWholeJournal() throws Exception {
        var before = photoOnTheField();
        var taken = JournalArchive.take(opened, PictureForm.PLAIN, zip(), false, Watch.NONE);
        assertThat(taken.tellPlace()).isEqualTo(1);
        var unpacked = ArchiveIntake.bring(zip(), folder.resolve("copy"), user(), Watch.NONE);
        assertThat(unpacked.wrong()).as("every picture is what its name says").isEmpty();
        try (var copy = JournalFolder.open(folder.resolve("copy"), user())) {
            var entry = copy.journal().entry(before.build(), before.id()).orElseThrow();
            assertThat(entry.withPictures(before.pictures())).isEqualTo(before);
            var picture = entry.pictures().get(0);
            assertThat(picture.caption()).isEqualTo("the field");
            var file = copy.pictures().file(picture);
            assertThat(PictureShelf.tellsPlace(file)).isFalse();
            assertThat(copy.pictures().taken(file)).contains(LocalDateTime.of(2025, 3, 14, 20, 15));
        }
        assertThat(bytes(folder.resolve("copy")).toString())
                .as("neither place nor old name is anywhere")
                .doesNotContain(before.pictures().get(0).hash());
        assertThat(PictureShelf.tellsPlace(
                        opened.pictures().file(before.pictures().get(0))))
                .as("in the journal all is as it was")
                .isTrue();
        JournalArchive.take(opened, heron, PictureForm.PLAIN, zip(), true, Watch.NONE);
        try (var zip = new java.util.zip.ZipFile(zip().toFile())) {
            assertThat(zip.stream().map(each -> each.getName()))
                    .noneMatch(name -> name.contains(before.pictures().get(0).hash()));
        }
    }

    @Test
    void aBackupKeepsEveryByte() throws Exception {
        photoOnTheField();
        var taken = JournalArchive.take(opened, PictureForm.AS_TAKEN, zip(), false, Watch.NONE);
        assertThat(taken.tellPlace()).isEqualTo(1);
        ArchiveIntake.bring(zip(), folder.resolve("copy"), user(), Watch.NONE);
        assertThat(bytes(folder.resolve("copy"))).isEqualTo(bytes(folder.resolve("journal")));
    }

    @Test
    void twoPicturesThatDifferOnlyInTheirPlaceBecomeOne() throws Exception {
        var plain = Camera.plain(0x0000AA);
        var entry = Bench.entry(heron, "Twice")
                .withPictures(List.of(
                        opened.pictures().add(Camera.write(folder.resolve("a.jpg"), plain), "one"),
                        opened.pictures()
                                .add(
                                        Camera.write(folder.resolve("b.jpg"), Camera.commented(plain, "at home")),
                                        "two")));
        opened.journal().apply(Edit.add("entry", entry));
        JournalArchive.take(opened, PictureForm.PLAIN, zip(), false, Watch.NONE);
        assertThat(ArchiveIntake.bring(zip(), folder.resolve("copy"), user(), Watch.NONE)
                        .wrong())
                .isEmpty();
    }

    @Test
    void aPictureTooDamagedToBeCutStaysAtHome() throws Exception {
        var picture = photoOnTheField().pictures().get(0);
        var file = opened.pictures().file(picture);
        Files.write(file, Arrays.copyOf(Files.readAllBytes(file), 400));
        assertThat(JournalArchive.take(opened, PictureForm.PLAIN, zip(), false, Watch.NONE)
                        .leftOut())
                .singleElement()
                .satisfies(left -> assertThat(left.reason()).contains("the place cannot be cut out"));
        assertThat(JournalArchive.take(opened, PictureForm.AS_TAKEN, zip(), true, Watch.NONE)
                        .leftOut())
                .isEmpty();
    }

    /** A picture comes into an entry after the files were listed and before the entry is written. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void whatComesInMeanwhileIsWithinTheArchive(boolean whole) throws Exception {
        var entry = opened.journal().log(heron.id()).get(0);
        Watch watch = what -> {
            if (what.startsWith("photos/") && opened.journal().log(heron.id()).contains(entry)) {
                addPictureTo(entry);
            }
        };
        for (var form : PictureForm.values()) {
            var taken = whole
                    ? JournalArchive.take(opened, form, zip(), true, watch)
                    : JournalArchive.take(opened, heron, form, zip(), true, watch);
            assertThat(taken.leftOut()).isEmpty();
            var copied = folder.resolve("copy" + form);
            assertThat(ArchiveIntake.bring(zip(), copied, user(), Watch.NONE).wrong())
                    .isEmpty();
            try (var copy = JournalFolder.open(copied, user())) {
                assertThat(copy.journal().log(heron.id()).get(0).pictures()).hasSize(2);
            }
            opened.journal().undo();
        }
    }

    private void addPictureTo(EntryRecord entry) {
        try {
            var photo = Camera.write(folder.resolve("new.jpg"), Camera.taken(0x0000AA, "2025:03:14 20:15:00"));
            var pictures = Stream.concat(
                            entry.pictures().stream(),
                            Stream.of(opened.pictures().add(photo, "new")))
                    .toList();
            opened.journal().apply(Edit.change("picture", entry, entry.withPictures(pictures)));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    @Test
    void whatVanishesMeanwhileIsTold() throws Exception {
        write("plans/fin.svg", "<svg/>");
        write("plans/rib.svg", "<svg/>");
        var taken = JournalArchive.take(opened, PictureForm.PLAIN, zip(), false, what -> {
            if (what.equals("plans/fin.svg")) {
                delete(folder.resolve("journal").resolve(what));
            }
        });
        assertThat(taken.leftOut()).containsExactly(new LeftOut("plans/fin.svg", "it is missing"));
        assertThat(ArchiveIntake.bring(zip(), folder.resolve("copy"), user(), Watch.NONE)
                        .wrong())
                .isEmpty();
        assertThat(folder.resolve("copy/plans/rib.svg")).hasContent("<svg/>");
        assertThat(folder.resolve("copy/plans/fin.svg")).doesNotExist();
    }

    private static void delete(Path file) {
        try {
            Files.delete(file);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private EntryRecord photoOnTheField() throws IOException {
        var photo = Camera.write(folder.resolve("photo.jpg"), Camera.taken(0x0000AA, "2025:03:14 20:15:00"));
        var entry = Bench.entry(heron, "On the field")
                .withPictures(List.of(opened.pictures().add(photo, "the field")));
        opened.journal().apply(Edit.add("entry", entry));
        return entry;
    }

    @Test
    void damagedAndMissingPicturesAreTold() throws Exception {
        var pictures = opened.journal().log(heron.id()).get(0).pictures();
        Files.delete(opened.pictures().file(pictures.get(0)));
        var other = opened.journal().log(grebe.id()).get(0).pictures().get(0);
        Files.writeString(opened.pictures().file(other), "scratched");
        assertThat(JournalArchive.take(opened, heron, PictureForm.PLAIN, zip(), false, Watch.NONE)
                        .leftOut())
                .extracting(LeftOut::reason)
                .containsExactly("it is missing");
        JournalArchive.take(opened, PictureForm.PLAIN, zip(), true, Watch.NONE);
        assertThat(ArchiveIntake.bring(zip(), folder.resolve("copy"), user(), Watch.NONE)
                        .wrong())
                .extracting(LeftOut::reason)
                .containsExactlyInAnyOrder("it is missing", "its content is not what its name says");
    }

    @Test
    void aFileThatIsThereIsReplacedOnlyWhenThatIsSaid() throws Exception {
        Files.writeString(zip(), "mine");
        assertThatThrownBy(() -> JournalArchive.take(opened, PictureForm.PLAIN, zip(), false, Watch.NONE))
                .isInstanceOf(ExchangeRefused.class)
                .hasMessageContaining("is there already");
        assertThat(zip()).hasContent("mine");
        assertThatThrownBy(() -> JournalArchive.take(opened, PictureForm.PLAIN, zip(), true, what -> {
                    throw new CancellationException("enough");
                }))
                .isInstanceOf(CancellationException.class);
        assertThat(zip()).hasContent("mine");
        JournalArchive.take(opened, PictureForm.PLAIN, zip(), true, Watch.NONE);
        assertThat(Files.size(zip())).isGreaterThan(1000);
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).noneMatch(file -> file.toString().endsWith(".tmp"));
        }
        assertThatThrownBy(() -> JournalArchive.take(opened, PictureForm.PLAIN, folder, true, Watch.NONE))
                .hasMessageContaining("is a folder");
        assertThatThrownBy(() -> JournalArchive.take(
                        opened, PictureForm.PLAIN, folder.resolve("journal/plans/x.zip"), false, Watch.NONE))
                .hasMessageContaining("lies in the journal");
    }

    private void picture(BuildRecord build, int colour) throws IOException {
        var photo = Camera.write(folder.resolve("photo.jpg"), Camera.plain(colour));
        EntryRecord entry =
                Bench.entry(build, "Fin").withPictures(List.of(opened.pictures().add(photo, "the fin")));
        opened.journal().apply(Edit.add("entry", entry));
    }

    private void write(String name, String text) throws IOException {
        var file = folder.resolve("journal").resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    private Path zip() {
        return folder.resolve("out.zip");
    }

    private UserFolders user() {
        return UserFolders.under(folder.resolve("user"));
    }

    private static TreeMap<String, String> bytes(Path journal) throws IOException {
        var bytes = new TreeMap<String, String>();
        try (Stream<Path> files = Files.walk(journal)) {
            files.filter(Files::isRegularFile)
                    .filter(file -> !file.getFileName().toString().equals(".lock"))
                    .forEach(file -> bytes.put(journal.relativize(file).toString(), hex(file)));
        }
        return bytes;
    }

    private static String hex(Path file) {
        try {
            return HexFormat.of().formatHex(Files.readAllBytes(file));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
