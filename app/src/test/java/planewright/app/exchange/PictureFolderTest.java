package planewright.app.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import planewright.app.Bench;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.PictureRecord;
import planewright.app.store.JournalFolder;

class PictureFolderTest {
    private static final LocalDateTime NOW = LocalDateTime.of(2025, 6, 1, 9, 0);

    @TempDir
    private Path folder;

    private JournalFolder opened;
    private BuildRecord build;

    @BeforeEach
    void journal() throws IOException {
        opened = Bench.newJournal(folder.resolve("journal"));
        build = Bench.build("Grey heron");
        opened.journal().apply(Edit.add("build", build));
        Files.createDirectories(card(""));
    }

    @AfterEach
    void close() throws IOException {
        opened.close();
    }

    @Test
    void picturesGoToTheDayTheyWereTakenInTheOrderOfTheirTimes() throws Exception {
        photo("b/late.jpg", 0xAA0000, "2025:03:14 22:10:00");
        photo("a/early.jpg", 0x00AA00, "2025:03:14 19:00:30");
        photo("next.jpg", 0x0000AA, "2025:03:15 10:00:00");
        var told = bring(Optional.empty());
        assertThat(told).isEqualTo(new Brought(3, 2, List.of(), List.of()));
        assertThat(log()).extracting(EntryRecord::at).containsExactly(at("2025-03-14T19:00"), at("2025-03-15T10:00"));
        assertThat(log().get(0).pictures().stream().map(this::content))
                .containsExactly(read(card("a/early.jpg")), read(card("b/late.jpg")));
    }

    @Test
    void picturesJoinWhatWasWrittenThatDay() throws Exception {
        var written = Bench.entry(build, "Glued the fin");
        opened.journal().apply(Edit.add("entry", written));
        photo("fin.jpg", 0xAA0000, "2025:03:14 08:00:00");
        bring(Optional.empty());
        assertThat(log()).hasSize(1);
        assertThat(log().get(0).title()).isEqualTo("Glued the fin");
        assertThat(log().get(0).pictures()).hasSize(1);
    }

    @Test
    void allOfItIsOneEditThatCanBeTakenBackAndMadeAgain() throws Exception {
        photo("one.jpg", 0xAA0000, "2025:03:14 08:00:00");
        photo("two.jpg", 0x00AA00, "2025:03:16 08:00:00");
        bring(Optional.empty());
        assertThat(opened.journal().undo().map(Edit::what)).contains("bring in pictures");
        assertThat(log()).isEmpty();
        opened.journal().redo();
        assertThat(log()).hasSize(2);
    }

    @Test
    void filesAndFoldersAreLookedAtTogetherAndAnyOfThemMayComeIn() throws Exception {
        photo("one.jpg", 0xAA0000, "2025:03:14 08:00:00");
        photo("day/two.jpg", 0x00AA00, "2025:03:16 08:00:00");
        photo("day/three.jpg", 0x0000AA, "2025:03:16 09:00:00");
        var seen = PictureFolder.see(
                opened, build, List.of(card("day"), card("one.jpg")), Optional.empty(), NOW, Watch.NONE);
        assertThat(seen.pictures())
                .extracting(SeenPictures.Seen::name)
                .containsExactly("one.jpg", "two.jpg", "three.jpg");
        assertThat(log()).isEmpty();
        var brought =
                seen.of(List.of(seen.pictures().get(0), seen.pictures().get(2))).write(Watch.NONE);
        assertThat(brought.things()).isEqualTo(2);
        assertThat(log()).extracting(EntryRecord::at).containsExactly(at("2025-03-14T08:00"), at("2025-03-16T09:00"));
        opened.journal().undo();
        assertThat(log()).isEmpty();
    }

    @Test
    void noPictureComesInTwice() throws Exception {
        photo("one.jpg", 0xAA0000, "2025:03:14 08:00:00");
        photo("copy of one.jpg", 0xAA0000, "2025:03:14 08:00:00");
        var first = bring(Optional.empty());
        assertThat(first.things()).isEqualTo(1);
        assertThat(first.known()).containsExactly(new LeftOut("one.jpg", "is the same picture as copy of one.jpg"));
        var second = bring(Optional.empty());
        assertThat(second.things()).isZero();
        assertThat(second.known())
                .hasSize(2)
                .allMatch(each -> each.reason().equals("is in the log already, on 2025-03-14"));
        assertThat(log()).hasSize(1);
        assertThat(opened.journal().lastDone().orElseThrow().what()).isEqualTo("bring in pictures");
    }

    @Test
    void aPictureThatTheJournalHasLostIsPutBack() throws Exception {
        photo("one.jpg", 0xAA0000, "2025:03:14 08:00:00");
        bring(Optional.empty());
        var shelved = opened.pictures().file(log().get(0).pictures().get(0));
        var whole = Files.readAllBytes(shelved);
        var changed = whole.clone();
        changed[whole.length / 2] ^= 1;
        for (var damage : List.of(new byte[0], changed)) {
            Files.delete(shelved);
            if (damage.length > 0) {
                Files.write(shelved, damage);
            }
            var told = bring(Optional.empty());
            assertThat(told.known())
                    .containsExactly(new LeftOut(
                            "one.jpg",
                            "is in the log already, on 2025-03-14; the journal's own copy was missing or damaged and "
                                    + "has been put back"));
            assertThat(shelved).hasBinaryContent(whole);
            assertThat(bring(Optional.empty()).known())
                    .containsExactly(new LeftOut("one.jpg", "is in the log already, on 2025-03-14"));
        }
        assertThat(log()).hasSize(1);
        assertThat(onShelf()).isEqualTo(1);
    }

    @Test
    void aPictureThatCannotBePutBackIsTold() throws Exception {
        photo("one.jpg", 0xAA0000, "2025:03:14 08:00:00");
        bring(Optional.empty());
        var shelved = opened.pictures().file(log().get(0).pictures().get(0));
        Files.delete(shelved);
        Files.createDirectories(shelved.resolve("in the way"));
        var told = bring(Optional.empty());
        assertThat(told.known()).isEmpty();
        assertThat(reason(told, "one.jpg")).contains("cannot be put back").contains(shelved.toString());
    }

    /** The second entry cannot be written, and the first one cannot be taken back, for there is no bin to put it into. */
    @Test
    void picturesOfAnEntryThatStandsStay() throws Exception {
        var broken = Bench.entry(build, "Fin");
        opened.journal().apply(Edit.add("entry", broken));
        photo("one.jpg", 0xAA0000, "2025:03:10 08:00:00");
        photo("two.jpg", 0x00AA00, "2025:03:14 08:00:00");
        var seen = PictureFolder.look(opened, build, card(""), Optional.empty(), NOW, Watch.NONE);
        Files.writeString(opened.fileOf(broken), "{");
        Files.writeString(opened.folder().resolve("bin"), "in the way");
        assertThatThrownBy(() -> seen.write(Watch.NONE)).isInstanceOf(IOException.class);
        assertThat(log().get(0).at()).isEqualTo(at("2025-03-10T08:00"));
        assertThat(content(log().get(0).pictures().get(0))).isEqualTo(read(card("one.jpg")));
        assertThat(onShelf()).isEqualTo(1);
    }

    @Test
    void whatEndsItIsToldThoughAPictureCannotBeTakenBack() throws Exception {
        photo("one.jpg", 0xAA0000, "2025:03:14 08:00:00");
        photo("two.jpg", 0x00AA00, "2025:03:16 08:00:00");
        var seen = PictureFolder.see(opened, build, List.of(card("")), Optional.empty(), NOW, Watch.NONE);
        var shelved = opened.pictures().file(seen.pictures().get(0).picture());
        var intake = seen.of(seen.pictures());
        assertThatThrownBy(() -> intake.write(what -> {
                    if (what.endsWith("two.jpg")) {
                        putInTheWay(shelved);
                        throw new CancellationException("enough");
                    }
                }))
                .isInstanceOf(CancellationException.class)
                .satisfies(ended -> assertThat(ended.getSuppressed()).hasSize(1));
        assertThat(log()).isEmpty();
    }

    private static void putInTheWay(Path file) {
        try {
            Files.delete(file);
            Files.createDirectories(file.resolve("in the way"));
        } catch (IOException failure) {
            throw new java.io.UncheckedIOException(failure);
        }
    }

    @Test
    void whatIsRefusedIsToldWithItsReasonAndTheRestComesIn() throws Exception {
        photo("good.jpg", 0xAA0000, "2025:03:14 08:00:00");
        photo("tomorrow.jpg", 0x00AA00, "2031:01:01 00:00:00");
        Camera.write(card("undated.jpg"), Camera.plain(0x0000AA));
        Files.writeString(card("list.txt"), "no picture");
        Files.write(card("cut.jpg"), java.util.Arrays.copyOf(Camera.taken(0x123456, "2025:03:14 08:00:00"), 400));
        Files.writeString(card(".hidden"), "of the system");
        Files.createSymbolicLink(card("link.jpg"), card("good.jpg"));
        var told = bring(Optional.empty());
        assertThat(told.things()).isEqualTo(1);
        assertThat(told.leftOut())
                .extracting(LeftOut::what)
                .containsExactlyInAnyOrder("cut.jpg", "link.jpg", "list.txt", "tomorrow.jpg", "undated.jpg");
        assertThat(reason(told, "list.txt")).isEqualTo("is of another kind; export it as JPEG; accepted: JPEG or PNG");
        assertThat(reason(told, "cut.jpg")).contains("copy it from the camera again");
        assertThat(reason(told, "undated.jpg")).contains("does not say when it was taken; name the day");
        assertThat(reason(told, "tomorrow.jpg")).contains("2031-01-01").contains("set the camera's clock");
        assertThat(reason(told, "link.jpg")).contains("is a link");
    }

    @Test
    void aDayCanBeNamedForPicturesThatDoNotSay() throws Exception {
        Camera.write(card("undated.jpg"), Camera.plain(0x0000AA));
        assertThat(bring(Optional.of(LocalDate.of(2025, 4, 2))).things()).isEqualTo(1);
        assertThat(log().get(0).at()).isEqualTo(at("2025-04-02T12:00"));
    }

    @Test
    void whenItIsEndedOnTheWayNothingHasChanged() throws Exception {
        photo("one.jpg", 0xAA0000, "2025:03:14 08:00:00");
        photo("two.jpg", 0x00AA00, "2025:03:16 08:00:00");
        for (int steps = 0; steps < 4; steps++) {
            int left = steps;
            var count = new int[1];
            assertThatThrownBy(() -> PictureFolder.bring(opened, build, card(""), Optional.empty(), NOW, what -> {
                        if (count[0]++ == left) {
                            throw new CancellationException("enough");
                        }
                    }))
                    .isInstanceOf(CancellationException.class);
            assertThat(log()).isEmpty();
            assertThat(onShelf()).isZero();
        }
        assertThat(bring(Optional.empty()).things()).isEqualTo(2);
        assertThat(onShelf()).isEqualTo(2);
    }

    @Test
    void aJournalForReadingOnlyIsNotWrittenInto() throws Exception {
        photo("one.jpg", 0xAA0000, "2025:03:14 08:00:00");
        var head = opened.folder().resolve(JournalFolder.HEAD);
        opened.close();
        Files.writeString(head, Files.readString(head).replace("\"minReader\": 3", "\"minReader\": 99"));
        opened = Bench.open(folder.resolve("journal"));
        assertThatThrownBy(() -> bring(Optional.empty()))
                .isInstanceOf(ExchangeRefused.class)
                .hasMessageContaining("is open for reading only");
        assertThat(onShelf()).isZero();
    }

    @Test
    void aFolderThatIsNotThereIsTold() {
        assertThatThrownBy(() -> PictureFolder.bring(opened, build, card("none"), Optional.empty(), NOW, Watch.NONE))
                .isInstanceOf(ExchangeRefused.class)
                .hasMessageContaining("none is not there");
    }

    private Brought bring(Optional<LocalDate> otherwise) throws IOException {
        return PictureFolder.bring(opened, build, card(""), otherwise, NOW, Watch.NONE);
    }

    private static String reason(Brought told, String what) {
        return told.leftOut().stream()
                .filter(each -> each.what().equals(what))
                .findFirst()
                .orElseThrow()
                .reason();
    }

    private void photo(String name, int colour, String time) throws IOException {
        Camera.write(card(name), Camera.taken(colour, time));
    }

    private Path card(String name) {
        return folder.resolve("card").resolve(name);
    }

    private List<EntryRecord> log() {
        return opened.journal().log(build.id());
    }

    private long onShelf() throws IOException {
        var photos = opened.folder().resolve("photos");
        if (!Files.isDirectory(photos)) {
            return 0;
        }
        try (Stream<Path> files = Files.walk(photos)) {
            return files.filter(Files::isRegularFile).count();
        }
    }

    private String content(PictureRecord picture) {
        return read(opened.pictures().file(picture));
    }

    private static String read(Path file) {
        try {
            return java.util.HexFormat.of().formatHex(Files.readAllBytes(file));
        } catch (IOException failure) {
            throw new java.io.UncheckedIOException(failure);
        }
    }

    private static LocalDateTime at(String time) {
        return LocalDateTime.parse(time);
    }
}
