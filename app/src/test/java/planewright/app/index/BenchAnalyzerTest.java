package planewright.app.index;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.apache.lucene.analysis.LowerCaseFilter;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.standard.StandardTokenizer;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import planewright.app.index.BenchAnalyzer.Token;

class BenchAnalyzerTest {
    private final BenchAnalyzer analyzer = new BenchAnalyzer();

    @AfterEach
    void close() {
        analyzer.close();
    }

    /** Values of the fractions by hand. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "3 1/2|3.5",
                "3-1/2|3.5",
                "3½|3.5",
                "3 ½|3.5",
                "3,5|3.5",
                "3.50|3.5",
                "3.5|3.5",
                "½|0.5",
                "1/8|0.125",
                "⅛|0.125",
                "1/16|0.0625",
                "2 13/16|2.8125",
                "1/3|0.333333",
                "0.10|0.1",
                "212|212",
                "007|007"
            })
    void aNumberHasOneSpelling(String written, String word) {
        assertThat(analyzer.tokens(written)).extracting(Token::word).containsExactly(word);
        assertThat(analyzer.tokens(written)).extracting(Token::from).containsExactly(0);
        assertThat(analyzer.tokens(written)).extracting(Token::to).containsExactly(written.length());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "212g|212 g",
                "3 1/2in spar|3.5 in spar",
                "3½\" spar|3.5 spar",
                "1300mAh|1300 mah",
                "14 oz|14 oz",
                "2mm and 4m|2 mm and 4 m",
                "a 4s pack|a 4s pack",
                "7x4|7x4",
                "1st|1st",
                "1,200 kg|1,200 kg",
                "on 12.10.2025|on 12.10.2025",
                "v1.5.10|v1.5.10",
                "1/0|1 0",
                "take-off|take off"
            })
    void otherThingsStayWhatTheyAre(String text, String words) {
        assertThat(analyzer.tokens(text)).extracting(Token::word).containsExactly(words.split(" "));
    }

    @Test
    void placesAreThoseOfTheTextAsWritten() {
        var text = "Cut 3 1/2in of 1/8\" strip, 212g";
        assertThat(analyzer.tokens(text))
                .extracting(token -> text.substring(token.from(), token.to()))
                .containsExactly("Cut", "3 1/2", "in", "of", "1/8", "strip", "212", "g");
    }

    @ParameterizedTest
    @CsvSource({
        "wings, wing",
        "batteries, battery",
        "boxes, box",
        "patches, patch",
        "brushes, brush",
        "edges, edge",
        "spars, spar",
        "throws, throw",
        "shoes, shoe",
        "escs, esc",
        "builder's, builder",
        "builder’s, builder",
        "glass, glass",
        "radius, radius",
        "gas, gas",
        "wing, wing"
    })
    void aPluralIsAlsoFoundAsItsSingular(String plural, String singular) {
        assertThat(analyzer.tokens(plural)).containsExactly(new Token(plural, singular, 0, plural.length()));
    }

    /** The library's filter goes by the Unicode tables. */
    @ParameterizedTest
    @ValueSource(strings = {"Wing AND Tail Z2", "RIPPENFÜSSE Ölflügel", "ΣΠΑΡΟΣ", "KİRİŞ", "Крыло", "A𐐀𐐁 ＦＵＬＬ"})
    void lettersBecomeAsSmallAsTheLibraryMakesThem(String text) throws IOException {
        assertThat(words(text, SmallLetters::new)).isEqualTo(words(text, LowerCaseFilter::new));
    }

    private static List<String> words(String text, UnaryOperator<TokenStream> filter) throws IOException {
        var letters = new StandardTokenizer();
        letters.setReader(new StringReader(text));
        var words = new ArrayList<String>();
        try (var stream = filter.apply(letters)) {
            stream.reset();
            while (stream.incrementToken()) {
                words.add(stream.getAttribute(CharTermAttribute.class).toString());
            }
            stream.end();
        }
        return words;
    }
}
