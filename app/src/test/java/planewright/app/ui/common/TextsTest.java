package planewright.app.ui.common;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.text.MessageFormat;
import java.util.Arrays;
import java.util.Locale;
import java.util.Properties;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import planewright.api.calculator.Finding;
import planewright.api.journal.Entry;
import planewright.api.journal.Life;

/** Every text of the window is there in each language, with the same values in it. */
class TextsTest {
    private static final Pattern VALUE = Pattern.compile("\\{(\\d)");

    private static Properties bundle(String file) throws IOException {
        var texts = new Properties();
        try (var in = Texts.class.getResourceAsStream("/planewright/app/ui/" + file)) {
            texts.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        }
        return texts;
    }

    @ParameterizedTest
    @ValueSource(strings = {"Texts.properties", "Texts_de.properties"})
    void everyTextIsThereAndNoOther(String file) throws IOException {
        assertThat(bundle(file).stringPropertyNames())
                .containsExactlyInAnyOrder(
                        Arrays.stream(Texts.values()).map(Enum::name).toArray(String[]::new));
    }

    @ParameterizedTest
    @EnumSource(Texts.class)
    void aTranslationTakesTheSameValues(Texts text) throws IOException {
        var english = bundle("Texts.properties").getProperty(text.name());
        var german = bundle("Texts_de.properties").getProperty(text.name(), "");
        assertThat(values(german)).isEqualTo(values(english));
        assertThat(german.endsWith("…")).isEqualTo(english.endsWith("…"));
        if (!values(german).isEmpty()) {
            assertThat(new MessageFormat(german, Locale.GERMAN).format(new Object[] {2, 3, 4, 5}))
                    .doesNotContain("{")
                    .doesNotContain("''");
        }
    }

    @Test
    void theJournalsOwnWordsAreKnown() {
        assertThat(Stream.of(
                                Arrays.stream(Life.values()).map(Life::word),
                                Arrays.stream(Entry.Kind.values()).map(Entry.Kind::word),
                                Arrays.stream(Finding.Grade.values()).map(Finding.Grade::word))
                        .flatMap(each -> each))
                .allSatisfy(word -> assertThat(Texts.valueOf(
                                "WORD_" + word.toUpperCase(Locale.ROOT).replaceAll("[ -]", "_")))
                        .satisfies(text -> assertThat(Terms.of(word)).isEqualTo(text.text())));
        assertThat(Terms.of("somebody's own word")).isEqualTo("somebody's own word");
    }

    private static TreeSet<String> values(String text) {
        var values = new TreeSet<String>();
        var found = VALUE.matcher(text);
        while (found.find()) {
            values.add(found.group(1));
        }
        return values;
    }
}
