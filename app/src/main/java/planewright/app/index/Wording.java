package planewright.app.index;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.BoostQuery;
import org.apache.lucene.search.MatchAllDocsQuery;
import org.apache.lucene.search.PhraseQuery;
import org.apache.lucene.search.Query;
import planewright.app.index.BenchAnalyzer.Token;

/**
 * The words of a question: all must be there, the last perhaps unfinished, and phrases in quotes in a row. Any other
 * character only parts words. Little words that a question is put with need not be there.
 */
final class Wording {
    private static final Pattern PHRASE = Pattern.compile("\"([^\"]*)\"?|([^\"]+)");

    /** Without them a question asks the same. */
    private static final Set<String> LITTLE = Set.of(
            "a", "about", "an", "and", "any", "are", "as", "at", "be", "been", "by", "did", "do", "does", "for", "from",
            "had", "has", "have", "how", "i", "in", "is", "it", "its", "me", "much", "my", "of", "on", "or", "should",
            "so", "that", "the", "then", "there", "this", "to", "was", "we", "were", "what", "when", "where", "which",
            "who", "why", "with");

    /** What is typed after these does not count: nobody types as much, but a page may be pasted. */
    private static final int MOST_WORDS = 16;

    private static final int MOST_LETTERS = 2_000;
    private static final float IN_TITLE = 1.5f;
    private static final float IN_NAMES = 0.8f;
    private static final float NEAR = 1.5f;
    private static final int NEAR_WORDS = 6;

    private final BenchAnalyzer analyzer;
    private final SameMeaning sameMeaning;
    private final List<Wanted> wanted = new ArrayList<>();
    private final boolean blank;

    Wording(String typed, BenchAnalyzer analyzer, SameMeaning sameMeaning) {
        this.analyzer = analyzer;
        this.sameMeaning = sameMeaning;
        this.blank = typed.isBlank();
        boolean unfinished = !typed.isEmpty() && Character.isLetterOrDigit(typed.codePointBefore(typed.length()));
        var matcher = PHRASE.matcher(typed.substring(0, Math.min(MOST_LETTERS, typed.length())));
        while (matcher.find()) {
            if (matcher.group(1) != null) {
                phrase(analyzer.tokens(matcher.group(1)), unfinished && matcher.hitEnd());
            } else {
                words(analyzer.tokens(matcher.group(2)), unfinished && matcher.hitEnd());
            }
        }
        if (wanted.size() > MOST_WORDS) {
            wanted.subList(MOST_WORDS, wanted.size()).clear();
        }
        leaveOutLittleWords();
    }

    /** Whether nothing is typed that could be looked for. */
    boolean isEmpty() {
        return wanted.isEmpty();
    }

    /** Entries that bear all that is wanted; where nothing is typed, every entry, and where no word is, none. */
    Query query(boolean forgiving) {
        var all = new BooleanQuery.Builder();
        for (var each : wanted) {
            all.add(each.query(Documents.ALL, forgiving), Occur.MUST);
            all.add(new BoostQuery(each.query(Documents.TITLE, false), IN_TITLE), Occur.SHOULD);
            all.add(new BoostQuery(each.query(Documents.NAMES, false), IN_NAMES), Occur.SHOULD);
        }
        var close = wanted.stream().flatMap(each -> each.single().stream()).toList();
        if (close.size() > 1) {
            var words = close.stream().map(Token::singular).toArray(String[]::new);
            all.add(new BoostQuery(new PhraseQuery(NEAR_WORDS, Documents.ALL, words), NEAR), Occur.SHOULD);
        }
        if (wanted.isEmpty() && blank) {
            all.add(new MatchAllDocsQuery(), Occur.MUST);
        }
        return all.build();
    }

    /** Whether a text bears all that is wanted. */
    boolean meets(List<Token> text) {
        return wanted.stream().allMatch(each -> each.meets(text));
    }

    /** Where the words stand in a text. */
    List<Hits.Range> marks(String text, boolean forgiving) {
        var marks = new ArrayList<Hits.Range>();
        var tokens = wanted.isEmpty() ? List.<Token>of() : analyzer.tokens(text);
        int at = 0;
        while (at < tokens.size()) {
            int covered = 0;
            for (var each : wanted) {
                covered = Math.max(covered, each.meets(tokens, at, forgiving));
            }
            for (int i = 0; i < covered; i++) {
                marks.add(new Hits.Range(
                        tokens.get(at + i).from(), tokens.get(at + i).to()));
            }
            at += Math.max(1, covered);
        }
        return marks;
    }

    private void phrase(List<Token> words, boolean unfinished) {
        if (!words.isEmpty()) {
            wanted.add(new Wanted(words, true, unfinished && words.size() == 1, List.of()));
        }
    }

    private void words(List<Token> words, boolean unfinished) {
        int at = 0;
        while (at < words.size() && wanted.size() <= MOST_WORDS) {
            int length = Math.min(sameMeaning.longest(), words.size() - at);
            while (length > 1 && others(words.subList(at, at + length)).isEmpty()) {
                length--;
            }
            var term = List.copyOf(words.subList(at, at + length));
            at += length;
            wanted.add(new Wanted(term, false, unfinished && at == words.size(), others(term)));
        }
    }

    private List<List<String>> others(List<Token> term) {
        var singular = sameMeaning.of(term.stream().map(Token::singular).toList());
        return singular.isEmpty()
                ? sameMeaning.of(term.stream().map(Token::word).toList())
                : singular;
    }

    private void leaveOutLittleWords() {
        if (wanted.stream().anyMatch(each -> !isLittle(each))) {
            wanted.removeIf(Wording::isLittle);
        }
    }

    private static boolean isLittle(Wanted wanted) {
        return !wanted.unfinished()
                && !wanted.inARow()
                && wanted.single().map(Token::word).filter(LITTLE::contains).isPresent();
    }
}
