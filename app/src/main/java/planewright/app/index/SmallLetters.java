package planewright.app.index;

import java.io.IOException;
import org.apache.lucene.analysis.CharacterUtils;
import org.apache.lucene.analysis.TokenFilter;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;

/** Words in small letters; those of ASCII, nearly all, without looking each letter up. */
final class SmallLetters extends TokenFilter {
    private final CharTermAttribute word = addAttribute(CharTermAttribute.class);

    SmallLetters(TokenStream input) {
        super(input);
    }

    @Override
    public boolean incrementToken() throws IOException {
        if (!input.incrementToken()) {
            return false;
        }
        var letters = word.buffer();
        int length = word.length();
        for (int i = 0; i < length; i++) {
            char letter = letters[i];
            if (letter >= 128) {
                CharacterUtils.toLowerCase(letters, i, length);
                break;
            }
            if ('A' <= letter && letter <= 'Z') {
                letters[i] = (char) (letter - 'A' + 'a');
            }
        }
        return true;
    }
}
