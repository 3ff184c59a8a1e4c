package planewright.app.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.drew.imaging.ImageMetadataReader;
import com.drew.metadata.exif.ExifDirectoryBase;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import planewright.api.quantity.Units;
import planewright.app.Bench;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.MeasurementRecord;
import planewright.app.journal.PictureRecord;
import planewright.app.pictures.PictureShelf;
import planewright.app.store.JournalFolder;
import planewright.shared.quantity.Written;

class JournalPagesTest {
    private static final String EVIL = "<script>alert('x')</script>\"><img src=x onerror=alert(1)>&amp;";
    private static final Pattern LOADED = Pattern.compile(
            "<(?:img|script|link|iframe|audio|video|source|object|embed)\\b[^>]*?(?:src|href)=\"([^\"]*)\"");

    @TempDir
    private Path folder;

    private JournalFolder opened;
    private BuildRecord heron;

    @BeforeEach
    void journal() throws IOException {
        opened = Bench.newJournal(folder.resolve("journal"));
        heron = Bench.build("Grey heron");
        opened.journal().apply(Edit.add("build", heron));
    }

    @AfterEach
    void close() throws IOException {
        opened.close();
    }

    @Test
    void everythingOfALogIsOnThePage() throws Exception {
        var build = Bench.fullBuild().withName("Full");
        opened.journal().apply(Edit.add("build", build));
        opened.journal().apply(Edit.add("entry", Bench.fullEntry(build)));
        take();
        assertThat(page(build))
                .contains(
                        "<h1>Full</h1>",
                        "flying · tailless with elevons · begun 2024-10-05",
                        "Foam core, 38 g/dm².",
                        "<td>left wing panel</td><td>airframe</td><td class=\"number\">212",
                        "<time datetime=\"2025-03-14T20:15\">2025-03-14 20:15</time>",
                        "First hand launch &quot;over&quot; tall grass",
                        "Nose heavy, by a <em>lot</em>.",
                        "Löwenzahn 🌼 everywhere.",
                        "<td class=\"number\">3 1/2 in ± 1/16 in</td><td>steel rule</td>",
                        "<td>balance point</td><td class=\"number\">0.850 ft</td>",
                        "Joint: fin to centre line, solvent-based contact adhesive, from 2025-03-14 20:15",
                        "Flight: 7 min; calm; slow to roll",
                        "Computed by balance.ledger, version 1",
                        "This picture is missing.",
                        "<span class=\"tag\">wing</span>");
        assertThat(read("index.html")).contains("Loft workshop", BuildPage.place(build), "1 entry, 2025-03-14");
    }

    @Test
    void whatIsWrittenIsShownAndNeverRun() throws Exception {
        var evil = Bench.build(EVIL).withLayout(EVIL).withDatum(EVIL);
        opened.journal().apply(Edit.add("build", evil));
        opened.journal()
                .apply(Edit.add(
                        "entry",
                        Bench.entry(evil, EVIL)
                                .withText(List.of(
                                        EVIL,
                                        "[press](javascript:alert(1)) [data](data:text/html;base64,PHNjcmlwdD4=)",
                                        "![far *away*](https://example.org/spy.png)",
                                        "# <b onclick=alert(1)>big</b>",
                                        "```\"><script>\ncode\n```"))
                                .withTags(List.of(EVIL))
                                .withMeasurements(List.of(MeasurementRecord.of(
                                        EVIL, new Written("1", Units.GRAM, Optional.empty()), EVIL)))
                                .withPictures(List.of(new PictureRecord("ab".repeat(32), "jpg", EVIL), photo(EVIL)))));
        take();
        for (var html : List.of(page(evil), read("index.html"))) {
            assertThat(html.split("<script", -1)).hasSize(2);
            assertThat(html).doesNotContain("<b onclick", "<img src=x", "\"javascript:", "\"data:", "spy.png");
            assertThat(LOADED.matcher(html).results().map(each -> each.group(1)))
                    .isNotEmpty()
                    .allMatch(place ->
                            place.matches("(\\.\\./)?(pages\\.css|pages\\.js|pictures/[0-9a-f]{64}-small\\.jpg)"));
        }
        assertThat(page(evil))
                .contains("&lt;script&gt;alert(&#39;x&#39;)&lt;/script&gt;&quot;&gt;&lt;img", "far <em>away</em>")
                .contains("<h3>&lt;b onclick=alert(1)&gt;big&lt;/b&gt;</h3>");
        var words = words();
        assertThat(words).hasSize(1);
        assertThat(words.get(0).get(3).asText()).isEqualTo(EVIL);
        assertThat(words.get(0).get(4).asText()).contains("far away").contains("1 g");
    }

    /** The photo says where it was taken before it goes out, and nothing but its pixels afterwards. */
    @Test
    void noPictureTellsWhereItWasTaken() throws Exception {
        var picture = photo("on the field");
        add(Bench.entry(heron, "First flight").withPictures(List.of(picture)));
        assertThat(PictureShelf.tellsPlace(opened.pictures().file(picture))).isTrue();
        var taken = take();
        assertThat(taken.tellPlace()).isEqualTo(1);
        try (Stream<Path> files = Files.list(folder.resolve("pages/pictures"))) {
            var written = files.toList();
            assertThat(written).hasSize(2);
            for (var file : written) {
                assertThat(ImageMetadataReader.readMetadata(file.toFile())
                                .getDirectoriesOfType(ExifDirectoryBase.class))
                        .isEmpty();
                assertThat(new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1))
                        .doesNotContain("Exif", "2025:03:14", "http");
            }
        }
    }

    @Test
    void picturesAreMadeSmallerInTwoSizes() throws Exception {
        var file = folder.resolve("large.png");
        ImageIO.write(new BufferedImage(2400, 1200, BufferedImage.TYPE_INT_RGB), "png", file.toFile());
        add(Bench.entry(heron, "Large").withPictures(List.of(opened.pictures().add(file, "the <wing>"))));
        take();
        var small = ImageIO.read(only("-small.jpg").toFile());
        assertThat(List.of(small.getWidth(), small.getHeight())).containsExactly(640, 320);
        assertThat(page(heron)).contains("width=\"640\" height=\"320\" alt=\"the &lt;wing&gt;\" loading=\"lazy\"");
        try (Stream<Path> files = Files.list(folder.resolve("pages/pictures"))) {
            var large = files.filter(each -> !each.toString().endsWith("-small.jpg"))
                    .toList();
            assertThat(ImageIO.read(large.get(0).toFile()).getWidth()).isEqualTo(1600);
        }
    }

    @Test
    void theSearchKnowsEveryEntryAndWhereItStands() throws Exception {
        var entry = Bench.entry(heron, "Fin glued").withText(List.of("With *contact* adhesive \u2028 & care"));
        add(entry);
        take();
        var words = words();
        assertThat(words).hasSize(1);
        assertThat(words.get(0).get(0).asText()).isEqualTo(BuildPage.place(heron) + "#" + BuildPage.anchor(entry));
        assertThat(words.get(0).get(1).asText()).isEqualTo("2025-03-14");
        assertThat(words.get(0).get(4).asText()).contains("With contact adhesive");
        assertThat(page(heron)).contains("<article id=\"" + BuildPage.anchor(entry) + "\">");
        assertThat(read("pages.js")).doesNotContain("innerHTML", "fetch(", "XMLHttpRequest", "http", "import(");
    }

    @Test
    void pagesAreReadableOnAPhoneAndInTheDark() throws Exception {
        take();
        assertThat(page(heron)).contains("name=\"viewport\" content=\"width=device-width, initial-scale=1\"");
        assertThat(read("pages.css"))
                .contains("@media (prefers-color-scheme: dark)")
                .doesNotContain("url(", "@import");
    }

    @Test
    void missingAndDamagedPicturesAreTold() throws Exception {
        var damaged = photo("damaged");
        Files.writeString(opened.pictures().file(damaged), "scratched");
        add(Bench.entry(heron, "Lost").withPictures(List.of(new PictureRecord("ab".repeat(32), "jpg", ""), damaged)));
        assertThat(take().leftOut())
                .extracting(LeftOut::reason)
                .containsExactly("it is missing", "it cannot be decoded");
    }

    @Test
    void onlyPagesAreReplacedAndOnlyWhenThatIsSaid() throws Exception {
        take();
        assertThatThrownBy(this::take).isInstanceOf(ExchangeRefused.class).hasMessageContaining("is not empty");
        add(Bench.entry(heron, "Fin glued"));
        replace(Watch.NONE);
        assertThat(page(heron)).contains("Fin glued");
        Files.writeString(folder.resolve("pages/mine.txt"), "mine");
        assertThatThrownBy(() -> replace(Watch.NONE)).hasMessageContaining("no page of a journal: mine.txt");
        assertThat(folder.resolve("pages/mine.txt")).hasContent("mine");
        assertThatThrownBy(() -> JournalPages.take(
                        opened, opened.journal().builds(), folder.resolve("journal/pages"), false, Watch.NONE))
                .hasMessageContaining("lies in the journal");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "pictures/mine.jpg",
                "pictures/mine/plan.txt",
                "builds/notes.html",
                "builds/.hidden",
                "words.js/x"
            })
    void aFileOfTheBuildersBelowThePagesIsNamedAndKept(String name) throws Exception {
        take();
        add(Bench.entry(heron, "Fin glued").withPictures(List.of(photo("the fin"))));
        var mine = folder.resolve("pages").resolve(name);
        if (name.startsWith("words.js")) {
            Files.delete(mine.getParent());
        }
        Files.createDirectories(mine.getParent());
        Files.writeString(mine, "mine");
        assertThatThrownBy(() -> replace(Watch.NONE))
                .isInstanceOf(ExchangeRefused.class)
                .hasMessageContaining("no page of a journal: " + told(name));
        assertThat(mine).hasContent("mine");
        assertThat(page(heron)).doesNotContain("Fin glued");
    }

    private static String told(String name) {
        return name.matches("pictures/mine/.*|words\\.js/.*") ? name.substring(0, name.lastIndexOf('/')) : name;
    }

    @Test
    void aSiteOfSomebodyElseIsNoPagesOfOurs() throws Exception {
        var picture = Camera.write(folder.resolve("pages/pictures").resolve("ab".repeat(32) + ".jpg"), new byte[] {1});
        assertThatThrownBy(() -> replace(Watch.NONE)).hasMessageContaining("its file index.html is missing or was");
        var index = Files.writeString(folder.resolve("pages/index.html"), "<html>mine</html>");
        assertThatThrownBy(() -> replace(Watch.NONE))
                .isInstanceOf(ExchangeRefused.class)
                .hasMessageContaining("its file index.html is missing or was written by another program");
        assertThat(index).hasContent("<html>mine</html>");
        assertThat(picture).hasBinaryContent(new byte[] {1});
    }

    @Test
    void whatComesIntoTheFolderMeanwhileIsKept() throws Exception {
        take();
        add(Bench.entry(heron, "Fin glued"));
        var mine = folder.resolve("pages/builds/mine.txt");
        assertThatThrownBy(() -> replace(what -> {
                    if (what.endsWith("pages")) {
                        write(mine);
                    }
                }))
                .isInstanceOf(ExchangeRefused.class)
                .hasMessageContaining("folder " + folder.resolve("pages") + " holds what is no page of a journal")
                .hasMessageContaining("builds/mine.txt");
        assertThat(mine).hasContent("mine");
        assertThat(page(heron)).doesNotContain("Fin glued");
        Files.delete(mine);
        replace(Watch.NONE);
        assertThat(page(heron)).contains("Fin glued");
    }

    private static void write(Path file) {
        try {
            Files.writeString(file, "mine");
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    @Test
    void endedOnTheWayTheOldPagesStay() throws Exception {
        take();
        add(Bench.entry(heron, "Fin glued"));
        for (var stop : List.of("Grey heron", "pages")) {
            assertThatThrownBy(() -> replace(what -> {
                        if (what.endsWith(stop)) {
                            throw new CancellationException("enough");
                        }
                    }))
                    .isInstanceOf(CancellationException.class);
            assertThat(page(heron)).doesNotContain("Fin glued");
        }
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files.map(file -> file.getFileName().toString()).filter(name -> name.startsWith(".")))
                    .isEmpty();
        }
    }

    private void add(EntryRecord entry) throws IOException {
        opened.journal().apply(Edit.add("entry", entry));
    }

    private PictureRecord photo(String caption) throws IOException {
        var file = Camera.write(folder.resolve("photo.jpg"), Camera.taken(0xAA5500, "2025:03:14 20:15:00"));
        return opened.pictures().add(file, caption);
    }

    private Taken take() throws IOException {
        return JournalPages.take(opened, opened.journal().builds(), folder.resolve("pages"), false, Watch.NONE);
    }

    private void replace(Watch watch) throws IOException {
        JournalPages.take(opened, opened.journal().builds(), folder.resolve("pages"), true, watch);
    }

    private String page(BuildRecord build) throws IOException {
        return read(BuildPage.place(build));
    }

    private String read(String name) throws IOException {
        return Files.readString(folder.resolve("pages").resolve(name));
    }

    private Path only(String ending) throws IOException {
        return Bench.only(folder.resolve("pages"), ending);
    }

    private JsonNode words() throws IOException {
        var script = read("words.js");
        assertThat(script).startsWith("window.planewrightWords = [").endsWith("];\n");
        return new ObjectMapper()
                .readTree(script.substring("window.planewrightWords = ".length(), script.length() - 2));
    }
}
