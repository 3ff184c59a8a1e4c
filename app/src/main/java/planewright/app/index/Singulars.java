package planewright.app.index;

import java.io.IOException;
import org.apache.lucene.analysis.TokenFilter;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;
import org.apache.lucene.analysis.tokenattributes.PositionIncrementAttribute;

/** Puts the singular of a word in the same place after it, where it is another word. */
final class Singulars extends TokenFilter {
    private final CharTermAttribute word = addAttribute(CharTermAttribute.class);
    private final PositionIncrementAttribute step = addAttribute(PositionIncrementAttribute.class);
    private State plural;
    private String singular;

    Singulars(TokenStream input) {
        super(input);
    }

    @Override
    public boolean incrementToken() throws IOException {
        if (plural != null) {
            restoreState(plural);
            word.setEmpty().append(singular);
            step.setPositionIncrement(0);
            plural = null;
            return true;
        }
        if (!input.incrementToken()) {
            return false;
        }
        if (word.length() == 0 || word.charAt(word.length() - 1) != 's') {
            return true;
        }
        var written = word.toString();
        singular = of(written);
        if (!singular.equals(written)) {
            plural = captureState();
        }
        return true;
    }

    @Override
    public void reset() throws IOException {
        super.reset();
        plural = null;
    }

    /**
     * The singular of an English word in small letters; a word that is none stays. The three rules are those of D. Harman,
     * "How effective is suffixing?", Journal of the American Society for Information Science 42 (1991); before them go the
     * possessive and, after a hiss, the plural in -es ({@code boxes}, {@code patches}).
     */
    static String of(String word) {
        if (word.endsWith("'s") || word.endsWith("’s")) {
            return word.substring(0, word.length() - 2);
        }
        if (word.length() < 4 || !word.endsWith("s")) {
            return word;
        }
        if (ends(word, "ches", "shes", "xes", "sses")) {
            return word.substring(0, word.length() - 2);
        }
        if (word.endsWith("ies") && !ends(word, "eies", "aies")) {
            return word.substring(0, word.length() - 3) + "y";
        }
        if (word.endsWith("es") && !ends(word, "aes", "ees", "oes")) {
            return word.substring(0, word.length() - 1);
        }
        return ends(word, "us", "ss") ? word : word.substring(0, word.length() - 1);
    }

    private static boolean ends(String word, String... endings) {
        for (var ending : endings) {
            if (word.endsWith(ending)) {
                return true;
            }
        }
        return false;
    }
}
