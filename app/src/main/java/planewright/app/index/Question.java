package planewright.app.index;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;
import org.apache.lucene.analysis.tokenattributes.OffsetAttribute;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.BoostQuery;
import org.apache.lucene.search.FuzzyQuery;
import org.apache.lucene.search.PhraseQuery;
import org.apache.lucene.search.PrefixQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.TermQuery;
import org.apache.lucene.util.BytesRef;

/**
 * What somebody typed into the search field: words that must all be there, the last perhaps unfinished, and phrases in
 * quotes. Any other character only parts words.
 */
final class Question {
    private static final Pattern PHRASE = Pattern.compile("\"([^\"]*)\"?|([^\"]+)");

    /** What is typed after these does not count: nobody types as much, but a page may be pasted. */
    private static final int MOST_WORDS = 32;

    private static final int MOST_LETTERS = 2_000;

    /** With {@link #MOST_WORDS}, below the 1024 clauses that a query may have. */
    private static final int MOST_SIMILAR = 30;

    private final Analyzer analyzer;
    private final List<Wanted> wanted = new ArrayList<>();

    Question(String typed, Analyzer analyzer) {
        this.analyzer = analyzer;
        var matcher = PHRASE.matcher(typed.substring(0, Math.min(MOST_LETTERS, typed.length())));
        while (matcher.find()) {
            if (matcher.group(1) != null) {
                phrase(words(matcher.group(1)));
            } else {
                words(matcher.group(2)).forEach(word -> wanted.add(new Wanted(List.of(word), false)));
            }
        }
        if (wanted.size() > MOST_WORDS) {
            wanted.subList(MOST_WORDS, wanted.size()).clear();
        }
        boolean unfinished = !typed.isEmpty() && Character.isLetterOrDigit(typed.codePointBefore(typed.length()));
        if (unfinished && !wanted.isEmpty()) {
            var last = wanted.remove(wanted.size() - 1);
            wanted.add(new Wanted(last.words(), true));
        }
    }

    boolean isEmpty() {
        return wanted.isEmpty();
    }

    Query exact(String field) {
        return all(wanted.stream().map(each -> each.query(field)).toList());
    }

    /** Takes words that differ in a letter, longer ones in two. */
    Query forgiving(String field) {
        return all(wanted.stream()
                .flatMap(each -> each.words().stream())
                .limit(MOST_WORDS)
                .<Query>map(word -> new FuzzyQuery(new Term(field, word), edits(word), 1, MOST_SIMILAR, true))
                .toList());
    }

    /** Where the words stand in a text. */
    List<Hits.Range> marks(String text, boolean forgiving) {
        var marks = new ArrayList<Hits.Range>();
        for (var token : tokens(text)) {
            if (wanted.stream().anyMatch(each -> each.meets(token.word(), forgiving))) {
                marks.add(new Hits.Range(token.from(), token.to()));
            }
        }
        return marks;
    }

    private void phrase(List<String> words) {
        if (!words.isEmpty()) {
            wanted.add(new Wanted(words, false));
        }
    }

    private List<String> words(String text) {
        return tokens(text).stream().map(Token::word).toList();
    }

    private List<Token> tokens(String text) {
        var tokens = new ArrayList<Token>();
        try (var stream = analyzer.tokenStream("all", text)) {
            var word = stream.addAttribute(CharTermAttribute.class);
            var place = stream.addAttribute(OffsetAttribute.class);
            stream.reset();
            while (stream.incrementToken()) {
                tokens.add(new Token(word.toString(), place.startOffset(), place.endOffset()));
            }
            stream.end();
        } catch (IOException impossible) {
            throw new UncheckedIOException("a text in memory cannot fail to be read", impossible);
        }
        return tokens;
    }

    private static Query all(List<Query> queries) {
        var all = new BooleanQuery.Builder();
        queries.forEach(query -> all.add(query, BooleanClause.Occur.MUST));
        return all.build();
    }

    private static int edits(String word) {
        return word.length() < 4 ? 0 : word.length() < 8 ? 1 : 2;
    }

    private record Token(String word, int from, int to) {}

    /** A word, or words in a row; unfinished where more letters may follow. */
    private record Wanted(List<String> words, boolean unfinished) {
        Query query(String field) {
            if (words.size() > 1) {
                return new PhraseQuery(field, words.toArray(String[]::new));
            }
            var term = new Term(field, words.get(0));
            if (!unfinished) {
                return new TermQuery(term);
            }
            return new BooleanQuery.Builder()
                    .add(new BoostQuery(new TermQuery(term), 2), BooleanClause.Occur.SHOULD)
                    .add(new PrefixQuery(term), BooleanClause.Occur.SHOULD)
                    .build();
        }

        boolean meets(String token, boolean forgiving) {
            return words.stream()
                    .anyMatch(word -> token.equals(word)
                            || unfinished && words.size() == 1 && token.startsWith(word)
                            || forgiving && nearly(word, token));
        }

        private static boolean nearly(String word, String token) {
            var bytes = new BytesRef(token);
            return FuzzyQuery.getFuzzyAutomaton(word, edits(word), 1, true)
                    .runAutomaton
                    .run(bytes.bytes, bytes.offset, bytes.length);
        }
    }
}
