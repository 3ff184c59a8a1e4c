package planewright.acceptance.window;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import planewright.api.journal.Entry;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.Ids;
import planewright.app.journal.Kept;
import planewright.app.journal.StepRecord;
import planewright.app.journal.TemplateContent;
import planewright.app.journal.TemplateRecord;
import planewright.app.store.JournalFolder;
import planewright.app.store.UserFolders;

/** Where Java speaks German, nothing of the window's own is to be read in English: neither pages nor calculators. */
class GermanWindowTest {
    /** A pattern with fewer letters of its own would be found in anything. */
    private static final int LEAST_LETTERS = 10;

    @TempDir
    Path folder;

    @Test
    void noPageShowsAnEnglishTextThatHasAGermanOne() throws Exception {
        var journal = Copies.copy(OpenWindow.root().resolve("journal-samples/workshop"), folder.resolve("journal"));
        deleteNameless(journal);
        Files.writeString(journal.resolve("templates/torn.json"), "{");
        Files.writeString(journal.resolve("templates/odd.json"), "{\"schema\": 1, \"id\": 3}");
        var shown = Speech.GERMAN.run(
                PagesTold.class,
                folder,
                journal.toString(),
                folder.resolve("user").toString(),
                PagesTold.WORDS);
        var english = english();
        var data = data(OpenWindow.root().resolve("journal-samples/workshop"));
        assertThat(english).hasSizeGreaterThan(1000);
        assertThat(shown).hasSizeGreaterThan(800);
        assertThat(shown).anyMatch(line -> line.contains("ist kein JSON: Zeile 1"));
        assertThat(shown).anyMatch(line -> line.contains("das Feld 'id' ist 3; möglich: ein Text"));
        assertThat(shown).contains("show-bin\tNotiz", "columns\tEinheit", "columns\tWert");
        assertThat(shown).anyMatch(line -> line.startsWith("show-bin\tVorlage, gelöscht "));
        var left = new ArrayList<String>();
        for (var line : shown) {
            var text = line.substring(line.indexOf('\t') + 1);
            if (!data.contains(text.toLowerCase(Locale.ROOT))
                    && english.entrySet().stream()
                            .anyMatch(each -> each.getValue().matcher(text).matches())) {
                left.add(line);
            }
        }
        assertThat(left).isEmpty();
    }

    /** In the bin lie an entry without a title, and a template. */
    private void deleteNameless(Path journal) throws Exception {
        try (var opened = JournalFolder.open(journal, UserFolders.under(folder.resolve("user")))) {
            var build = opened.journal().builds().get(0).id();
            var day = LocalDate.of(2026, 11, 1);
            var step = new StepRecord(Ids.small(), "Nase", Optional.empty(), Optional.empty(), List.of(), List.of());
            for (var deleted : List.<Kept>of(
                    EntryRecord.blank(build, Entry.Kind.NOTE, day.atTime(9, 30)),
                    TemplateRecord.of("Nase", day, new TemplateContent.Procedure(List.of(step))))) {
                opened.journal().apply(Edit.add("add", deleted));
                opened.journal().apply(Edit.remove("remove", deleted));
            }
        }
    }

    /** What the window and its calculators say in English and in German differently; values stand for anything. */
    private static Map<String, Pattern> english() throws Exception {
        var texts = new HashMap<String, String>();
        var german = properties("_de");
        properties("").forEach((key, text) -> texts.put((String) text, german.getProperty((String) key)));
        try (Stream<Path> tables = Files.find(
                OpenWindow.root(),
                12,
                (file, attributes) ->
                        file.endsWith("words_de.tsv") && file.toString().contains("/src/main/"))) {
            for (var table : tables.toList()) {
                for (var line : Files.readAllLines(table, StandardCharsets.UTF_8)) {
                    texts.put(line.split("\t")[0], line.split("\t")[1]);
                }
            }
        }
        for (var plugin : List.of("balance", "cure", "ducts", "throws")) {
            var said = new Properties();
            try (var in = Files.newBufferedReader(
                    OpenWindow.root().resolve("plugins").resolve(plugin).resolve("plugin.properties"))) {
                said.load(in);
            }
            texts.put(
                    said.getProperty("plugin.description"), said.getProperty("plugin.description.de", "no German one"));
        }
        var patterns = new HashMap<String, Pattern>();
        texts.forEach((text, translated) -> {
            var literal = text.replaceAll("\\{[^}]*}", "");
            if (!text.equals(translated)
                    && !text.contains("choice,")
                    && (literal.equals(text) || literal.replaceAll("\\P{L}", "").length() >= LEAST_LETTERS)) {
                patterns.put(text, pattern(text.replace("''", "'")));
            }
        });
        return patterns;
    }

    private static Pattern pattern(String text) {
        var parts = Stream.of(text.split("\\{[^}]*}", -1)).map(Pattern::quote).toList();
        return Pattern.compile(String.join(".*", parts));
    }

    private static Properties properties(String language) throws Exception {
        var texts = new Properties();
        try (var in =
                GermanWindowTest.class.getResourceAsStream("/planewright/app/ui/Texts" + language + ".properties")) {
            texts.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        }
        return texts;
    }

    /** What the builder has written, which stays as it is: the sample journal is an English one. */
    private static Set<String> data(Path journal) throws Exception {
        var texts = new HashSet<String>();
        try (Stream<Path> files = Files.walk(journal)) {
            for (var file :
                    files.filter(each -> each.toString().endsWith(".json")).toList()) {
                collect(new ObjectMapper().readTree(file.toFile()), texts);
            }
        }
        return texts;
    }

    private static void collect(JsonNode node, Set<String> texts) {
        if (node.isTextual()) {
            texts.add(node.textValue().toLowerCase(Locale.ROOT));
        }
        node.forEach(each -> collect(each, texts));
    }
}
