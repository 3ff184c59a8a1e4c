package planewright.app.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.htmlunit.BrowserVersion;
import org.htmlunit.WebClient;
import org.htmlunit.html.DomElement;
import org.htmlunit.html.DomNode;
import org.htmlunit.html.HtmlInput;
import org.htmlunit.html.HtmlPage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import planewright.api.quantity.Units;
import planewright.app.Bench;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.MeasurementRecord;
import planewright.shared.quantity.Written;

/** Types into the search of pages that lie on the disk, as a reader does; its script runs in a browser without a window. */
class PagesSearchTest {
    private static final int PATIENCE_MILLIS = 20_000;
    private static final Logger BROWSER = Logger.getLogger("org.htmlunit");

    @TempDir
    private static Path folder;

    private static BuildRecord heron;
    private static EntryRecord fin;

    private WebClient browser;

    @BeforeEach
    void open() {
        BROWSER.setLevel(Level.SEVERE);
        browser = new WebClient(BrowserVersion.FIREFOX);
        browser.getOptions().setCssEnabled(false);
    }

    @BeforeAll
    static void pages() throws IOException {
        try (var opened = Bench.newJournal(folder.resolve("journal"))) {
            heron = Bench.build("Grey heron");
            var grebe = Bench.build("Grebe");
            opened.journal().apply(Edit.add("build", heron));
            opened.journal().apply(Edit.add("build", grebe));
            fin = Bench.entry(heron, "Fin cut from Löwenzahn-yellow foam")
                    .withText(List.of("Sanded to the *card outline*.", "<b onclick=alert(1)>& more</b>"))
                    .withMeasurements(List.of(MeasurementRecord.of(
                            "fin height", new Written("3 1/2", Units.INCH, Optional.empty()), "rule")));
            opened.journal().apply(Edit.add("entry", fin));
            opened.journal()
                    .apply(Edit.add(
                            "entry",
                            Bench.entry(grebe, "Wing")
                                    .withText(List.of("The fin waits. " + "Sand, weigh. ".repeat(60)))));
            for (int i = 0; i < 60; i++) {
                opened.journal().apply(Edit.add("entry", Bench.entry(grebe, "Rib number " + i)));
            }
            JournalPages.take(opened, opened.journal().builds(), folder.resolve("pages"), false, Watch.NONE);
        }
    }

    @AfterEach
    void close() {
        browser.close();
        BROWSER.setLevel(null);
    }

    @Test
    void beginningsOfWordsFindEntriesWithoutRegardForAccents() throws Exception {
        var page = open("index.html");
        find(page, "lowen");
        assertThat(hits(page)).singleElement().satisfies(hit -> {
            assertThat(text(hit)).contains("Fin cut from Löwenzahn-yellow foam", "Grey heron · 2025-03-14");
            assertThat(marked(hit)).containsExactly("Löwen");
        });
        assertThat(count(page)).isEqualTo("1 entry");
        find(page, "enzahn");
        assertThat(count(page)).isEqualTo("Nothing found.");
    }

    @Test
    void everyWordMustBeThereAndHeadingsComeFirst() throws Exception {
        var page = open("index.html");
        find(page, "FIN sand");
        assertThat(hits(page)).hasSize(2);
        find(page, "fin");
        assertThat(text(hits(page).get(0))).contains("Fin cut");
        assertThat(text(hits(page).get(1))).contains("Wing", "The fin waits.", "…");
        find(page, "fin heron outline");
        assertThat(hits(page)).hasSize(1);
    }

    @Test
    void quantitiesAreFoundAsTheyAreWritten() throws Exception {
        var page = open("index.html");
        find(page, "3 1/2 in");
        assertThat(hits(page)).hasSize(1);
        assertThat(marked(hits(page).get(0))).contains("3", "1/2", "in");
    }

    @Test
    void manyHitsAreCountedAndTheFirstOfThemShown() throws Exception {
        var page = open("index.html");
        find(page, "rib");
        assertThat(count(page)).isEqualTo("60 entries, the first 50 of them");
        assertThat(hits(page)).hasSize(50);
    }

    @Test
    void aHitLeadsToItsEntryAlsoFromTheBuildsPage() throws Exception {
        for (var from : List.of("index.html", BuildPage.place(heron))) {
            var page = open(from);
            find(page, "outline");
            assertThat(page.getElementById("page").isDisplayed()).isFalse();
            HtmlPage reached =
                    hits(page).get(0).<DomElement>getFirstByXPath(".//a").click();
            assertThat(reached.getUrl().getPath()).endsWith(BuildPage.place(heron));
            assertThat(reached.getUrl().getRef()).isEqualTo(BuildPage.anchor(fin));
            assertThat(reached.getElementById(BuildPage.anchor(fin)).getTextContent())
                    .contains("Fin cut");
        }
    }

    @Test
    void anEmptyFieldShowsThePageAgain() throws Exception {
        var page = open("index.html");
        find(page, "outline");
        find(page, "");
        assertThat(page.getElementById("page").isDisplayed()).isTrue();
        assertThat(page.getElementById("found").isDisplayed()).isFalse();
    }

    @Test
    void whatWasWrittenIsShownAsWrittenAndNothingElse() throws Exception {
        var page = open("index.html");
        find(page, "more");
        assertThat(text(hits(page).get(0))).contains("<b onclick=alert(1)>& more</b>");
        assertThat(page.<DomNode>getByXPath("//b")).isEmpty();
    }

    @Test
    void missingWordsAreSaid() throws Exception {
        for (var file : List.of("index.html", "pages.js", "pages.css")) {
            Files.copy(
                    folder.resolve("pages").resolve(file),
                    Files.createDirectories(folder.resolve("pages/alone")).resolve(file));
        }
        browser.getOptions().setThrowExceptionOnFailingStatusCode(false);
        var page = open("alone/index.html");
        find(page, "fin");
        assertThat(page.getElementById("found").getTextContent()).contains("words.js is not there");
    }

    private HtmlPage open(String place) throws IOException {
        return browser.getPage(folder.resolve("pages").resolve(place).toUri().toURL());
    }

    private void find(HtmlPage page, String words) throws IOException {
        var field = (HtmlInput) page.getElementById("find");
        field.focus();
        field.setValue("");
        field.type(words.isEmpty() ? "x\b" : words);
        browser.waitForBackgroundJavaScript(PATIENCE_MILLIS);
    }

    private static String count(HtmlPage page) {
        return page.getElementById("found").<DomNode>getFirstByXPath("./p").getTextContent();
    }

    private static List<DomElement> hits(HtmlPage page) {
        return page.getElementById("found").getByXPath("./ol/li");
    }

    private static List<String> marked(DomElement hit) {
        return hit.<DomNode>getByXPath(".//mark").stream()
                .map(DomNode::getTextContent)
                .toList();
    }

    private static String text(DomElement hit) {
        return hit.getTextContent();
    }
}
