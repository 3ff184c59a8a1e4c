package planewright.app.index;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.standard.StandardTokenizer;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;
import org.apache.lucene.analysis.tokenattributes.OffsetAttribute;
import org.apache.lucene.analysis.tokenattributes.PositionIncrementAttribute;

/** Words in small letters, plurals also as singulars, numbers in one spelling. */
final class BenchAnalyzer extends Analyzer {
    /**
     * A word of a text.
     *
     * @param word as written, in small letters
     * @param singular its singular, or the same again
     * @param from its first character in the text
     * @param to after its last character
     */
    record Token(String word, String singular, int from, int to) {}

    @Override
    protected TokenStreamComponents createComponents(String field) {
        var words = new StandardTokenizer();
        return new TokenStreamComponents(words, spelled(words));
    }

    /** Words as they stand in a text, spelled as the index holds them. */
    static TokenStream spelled(TokenStream words) {
        return new Singulars(new SmallLetters(words));
    }

    @Override
    protected Reader initReader(String field, Reader reader) {
        return new NumberReader(reader);
    }

    /** The words of a text, in order. */
    List<Token> tokens(String text) {
        var tokens = new ArrayList<Token>();
        try (var stream = tokenStream("all", text)) {
            var word = stream.addAttribute(CharTermAttribute.class);
            var place = stream.addAttribute(OffsetAttribute.class);
            var step = stream.addAttribute(PositionIncrementAttribute.class);
            stream.reset();
            while (stream.incrementToken()) {
                var written = step.getPositionIncrement() == 0
                        ? tokens.remove(tokens.size() - 1).word()
                        : word.toString();
                tokens.add(new Token(written, word.toString(), place.startOffset(), place.endOffset()));
            }
            stream.end();
        } catch (IOException impossible) {
            throw new UncheckedIOException("a text in memory cannot fail to be read", impossible);
        }
        return tokens;
    }
}
