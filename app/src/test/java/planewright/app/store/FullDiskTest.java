package planewright.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIOException;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import planewright.app.Bench;
import planewright.app.disk.Disk;
import planewright.app.disk.Happening;
import planewright.app.exchange.JournalArchive;
import planewright.app.exchange.PictureForm;
import planewright.app.exchange.Watch;
import planewright.app.index.Question;
import planewright.app.index.SearchIndex;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.PictureRecord;
import planewright.app.pictures.ThumbnailSize;

/** A disk that fills up refuses what it has no room for; nothing that was there is lost, and there is a second try. */
class FullDiskTest {
    private final BuildRecord build = Bench.build("Grey heron");
    private final EntryRecord entry = Bench.entry(build, "First flight");
    private final Room room = new Room();

    @TempDir
    private Path temp;

    private Path journal;
    private UserFolders user;

    @BeforeEach
    void makeJournal() throws IOException {
        try (var open = Bench.newJournal(temp.resolve("journal"))) {
            open.journal().apply(Edit.add("build", build));
            open.journal().apply(Edit.add("entry", entry));
        }
        journal = Disk.at(temp.resolve("journal"), room);
        user = UserFolders.under(Disk.at(temp.resolve("user"), room));
    }

    /** At whichever byte of an edit the room ends. */
    @Test
    void aSaveThatHasNoRoomIsRefusedAndCanBeRepeated() throws IOException {
        var longer = entry.withTitle("Second flight").withText(List.of("Landed in the barley. ".repeat(40)));
        for (int bytes = 0; bytes < 900; bytes += 60) {
            try (var open = JournalFolder.open(journal, user)) {
                var before = Bench.records(temp.resolve("journal"));
                room.left(bytes);
                assertThatIOException()
                        .isThrownBy(() -> open.journal().apply(Edit.change("change", entry, longer)))
                        .withMessageContainingAll(
                                entry.id() + ".json", "No space left on device", "as it was", "make room", "repeat");
                assertThat(open.journal().log(build.id())).containsExactly(entry);
                assertThat(Bench.records(temp.resolve("journal"))).isEqualTo(before);
                assertThat(unfinished()).isEmpty();
                room.enough();
                open.journal().apply(Edit.change("change", entry, longer));
                assertThat(open.journal().log(build.id())).containsExactly(longer);
                open.journal().undo();
            }
        }
    }

    /** Taking back needs room too: what cannot be taken back is shown, for it is on the disk, and can be undone later. */
    @Test
    void whatIsShownOfAnEditOfSeveralRecordsIsWhatIsOnTheDisk() throws IOException {
        var edit = new Edit(
                "several",
                List.of(
                        added("one"),
                        new Edit.Change(Optional.of(entry), Optional.of(entry.withTitle("Changed"))),
                        added("two"),
                        added("three".repeat(500))));
        int refused = 0;
        for (int bytes = 0; bytes < 5_000; bytes += 350) {
            try (var open = JournalFolder.open(journal, user)) {
                room.left(bytes);
                try {
                    open.journal().apply(edit);
                } catch (IOException noRoom) {
                    refused++;
                    assertThat(noRoom).hasMessageContaining("No space left");
                }
                assertShownIsOnDisk(open);
                room.enough();
                while (open.journal().lastDone().isPresent()) {
                    open.journal().undo();
                }
                assertThat(open.journal().log(build.id())).containsExactly(entry);
                assertShownIsOnDisk(open);
            }
        }
        assertThat(refused).isBetween(5, 14);
    }

    /** What else would make room. */
    @Test
    void deletingNeedsNoRoomAndTheDeletedCanBeBroughtBack() throws IOException {
        Files.createDirectories(temp.resolve("journal/bin"));
        try (var open = JournalFolder.open(journal, user)) {
            room.left(0);
            open.journal().apply(Edit.remove("delete", entry));
            assertThat(open.journal().log(build.id())).isEmpty();
            room.enough();
            assertThat(open.binned()).extracting(Binned::record).containsExactly(entry);
            open.journal().undo();
            assertThat(open.journal().log(build.id())).containsExactly(entry);
        }
        try (var open = JournalFolder.open(journal, user)) {
            assertThat(open.journal().log(build.id())).containsExactly(entry);
        }
    }

    @Test
    void aPictureThatHasNoRoomIsRefusedNamingIt() throws IOException {
        try (var open = JournalFolder.open(journal, user)) {
            var picture = new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB);
            for (int bytes : new int[] {0, 50}) {
                room.left(bytes);
                assertThatIOException()
                        .isThrownBy(() -> open.pictures().add(picture, "fin"))
                        .withMessageContainingAll("photos", ".png", "No space left", "make room");
                assertThat(unfinished()).isEmpty();
            }
            room.enough();
            assertThat(open.pictures().file(open.pictures().add(picture, "fin")))
                    .exists();
        }
    }

    @Test
    void aPictureIsShownThoughItsViewHasNoRoom() throws IOException {
        try (var open = JournalFolder.open(journal, user)) {
            var picture = open.pictures().add(new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB), "fin");
            var views = open.pictures().thumbnail(picture, ThumbnailSize.SMALL);
            var kept = views(picture);
            assertThat(kept).isNotEmpty();
            for (var view : kept) {
                Files.delete(view);
            }
            for (int bytes : new int[] {0, 50}) {
                room.left(bytes);
                assertThat(open.pictures().thumbnail(picture, ThumbnailSize.SMALL))
                        .extracting(BufferedImage::getWidth, BufferedImage::getHeight)
                        .containsExactly(views.getWidth(), views.getHeight());
                open.pictures().prepare(picture);
                assertThat(views(picture)).isEmpty();
                assertThat(unfinished()).isEmpty();
            }
            room.enough();
            open.pictures().prepare(picture);
            assertThat(views(picture)).isEqualTo(kept);
        }
    }

    private List<Path> views(PictureRecord picture) throws IOException {
        try (Stream<Path> files = Files.walk(temp.resolve("user"))) {
            return files.filter(file -> file.getFileName().toString().startsWith(picture.hash()))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void anArchiveThatHasNoRoomLeavesTheOldOne() throws IOException {
        var out = Disk.at(Files.createDirectories(temp.resolve("out")), room);
        var zip = out.resolve("journal.zip");
        try (var open = JournalFolder.open(journal, user)) {
            JournalArchive.take(open, PictureForm.AS_TAKEN, zip, false, Watch.NONE);
            var before = Files.readAllBytes(zip);
            for (int bytes : new int[] {0, 1_000, before.length - 1}) {
                room.left(bytes);
                assertThatIOException()
                        .isThrownBy(() -> JournalArchive.take(open, PictureForm.AS_TAKEN, zip, true, Watch.NONE))
                        .withMessageContainingAll("journal.zip", "No space left", "make room");
                assertThat(zip).hasBinaryContent(before);
                assertThat(unfinished()).isEmpty();
            }
            room.enough();
            JournalArchive.take(open, PictureForm.AS_TAKEN, zip, true, Watch.NONE);
            assertThat(zip).hasBinaryContent(before);
        }
    }

    /** Neither lock nor catalogue need their words to be written. */
    @Test
    void aJournalOnAFullDiskOpensAndCloses() throws IOException {
        Files.delete(temp.resolve("journal/.lock"));
        room.left(0);
        try (var open = JournalFolder.open(journal, user)) {
            assertThat(open.readOnly()).isEmpty();
            assertThat(open.journal().log(build.id())).containsExactly(entry);
            room.enough();
            open.journal().apply(Edit.change("change", entry, entry.withTitle("Changed")));
        }
        try (var open = JournalFolder.open(journal, user)) {
            assertThat(open.journal().log(build.id()))
                    .extracting(EntryRecord::title)
                    .containsExactly("Changed");
        }
    }

    @Test
    void anIndexThatHasNoRoomHarmsNoSave() throws IOException {
        var cache = Disk.at(Files.createDirectories(temp.resolve("index")), room);
        var added = new ArrayList<EntryRecord>();
        try (var open = JournalFolder.open(temp.resolve("journal"), UserFolders.under(temp.resolve("other")))) {
            var index = SearchIndex.open(cache, open.journal(), (done, all) -> {});
            room.left(0);
            for (int i = 0; i < 20; i++) {
                var more = Bench.entry(build, "Sanding").withText(List.of("Dust. ".repeat(2_000)));
                open.journal().apply(Edit.add("add", more));
                added.add(more);
            }
            assertThatIOException().isThrownBy(index::close);
            room.enough();
            try (var again = SearchIndex.open(cache, open.journal(), (done, all) -> {})) {
                assertThat(again.find(Question.of("sanding ").most(1)).total()).isEqualTo(20);
            }
            assertThat(open.journal().log(build.id())).containsAll(added);
            assertShownIsOnDisk(open);
        }
    }

    private Edit.Change added(String title) {
        return new Edit.Change(Optional.empty(), Optional.of(Bench.entry(build, title)));
    }

    private void assertShownIsOnDisk(JournalFolder open) throws IOException {
        var found = new ArrayList<EntryRecord>();
        for (var file : Bench.records(temp.resolve("journal")).entrySet()) {
            if (file.getKey().contains("entries")) {
                found.add(FileKind.ENTRY.read(JsonFiles.parse(file.getValue())));
            }
        }
        assertThat(found).containsExactlyInAnyOrderElementsOf(open.journal().log(build.id()));
        assertThat(unfinished()).isEmpty();
    }

    private List<Path> unfinished() throws IOException {
        try (Stream<Path> files = Files.walk(temp)) {
            return files.filter(file -> file.toString().endsWith(".tmp")).toList();
        }
    }

    /** The room on a disk: how many bytes may still be written. Names need none, and what is deleted gives none back. */
    private static final class Room implements Happening {
        private volatile long left = Long.MAX_VALUE;

        void left(long bytes) {
            left = bytes;
        }

        void enough() {
            left = Long.MAX_VALUE;
        }

        @Override
        public void writing(Path file, int bytes) throws IOException {
            if (bytes > left) {
                throw new IOException("No space left on device");
            }
            left -= bytes;
        }
    }
}
