package planewright.app.index;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.AutomatonQuery;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.BoostQuery;
import org.apache.lucene.search.FuzzyQuery;
import org.apache.lucene.search.PhraseQuery;
import org.apache.lucene.search.PrefixQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.TermQuery;
import org.apache.lucene.util.BytesRef;
import org.apache.lucene.util.automaton.Automata;
import org.apache.lucene.util.automaton.CompiledAutomaton;
import org.apache.lucene.util.automaton.LevenshteinAutomata;
import org.apache.lucene.util.automaton.Operations;
import planewright.app.index.BenchAnalyzer.Token;

/** Something that an entry must bear: a word, a term of the trade, or words in a row. */
final class Wanted {
    /** Other words for a thing count less than those that were typed. */
    private static final float OTHER = 0.6f;

    /** Another form of a word counts less than the one that was typed. */
    private static final float OTHER_FORM = 0.3f;

    /** Times the words of a question, below the 1024 clauses that a query may have. */
    private static final int MOST_SIMILAR = 20;

    private final List<Token> words;
    private final List<String> singulars;
    private final boolean inARow;
    private final boolean unfinished;
    private final List<List<String>> others;
    private final Map<String, CompiledAutomaton> nearly = new ConcurrentHashMap<>();

    /**
     * @param words as typed
     * @param inARow whether they must follow one another
     * @param unfinished whether more letters may follow the last
     * @param others terms that mean the same, in singular words
     */
    Wanted(List<Token> words, boolean inARow, boolean unfinished, List<List<String>> others) {
        this.words = words;
        this.singulars = words.stream().map(Token::singular).toList();
        this.inARow = inARow;
        this.unfinished = unfinished;
        this.others = others;
    }

    boolean inARow() {
        return inARow;
    }

    boolean unfinished() {
        return unfinished;
    }

    Query query(String field, boolean forgiving) {
        var any = new BooleanQuery.Builder();
        any.add(typed(field, forgiving), Occur.SHOULD);
        for (var other : others) {
            any.add(new BoostQuery(row(field, other), OTHER), Occur.SHOULD);
        }
        return any.build();
    }

    /** How many tokens from one on this covers; 0 where it does not stand there. */
    int meets(List<Token> text, int at, boolean forgiving) {
        if (inARow && words.size() > 1) {
            return stands(singulars, text, at);
        }
        for (var word : words) {
            if (meets(word, text.get(at), forgiving)) {
                return 1;
            }
        }
        int covered = 0;
        for (var other : others) {
            covered = Math.max(covered, stands(other, text, at));
        }
        return covered;
    }

    /** Whether it stands in a text. */
    boolean meets(List<Token> text) {
        if (inARow || others.stream().anyMatch(other -> within(other, text))) {
            return within(singulars, text) || others.stream().anyMatch(other -> within(other, text));
        }
        return words.stream().allMatch(word -> text.stream().anyMatch(token -> meets(word, token, false)));
    }

    private Query typed(String field, boolean forgiving) {
        if (inARow && words.size() > 1 && !forgiving) {
            return row(field, singulars);
        }
        var all = new BooleanQuery.Builder();
        for (int i = 0; i < words.size(); i++) {
            boolean open = unfinished && i == words.size() - 1;
            all.add(word(field, words.get(i), open, forgiving), Occur.MUST);
        }
        return all.build();
    }

    private static Query word(String field, Token word, boolean open, boolean forgiving) {
        var ways = new ArrayList<Query>();
        ways.add(new TermQuery(new Term(field, word.singular())));
        if (!word.singular().equals(word.word())) {
            ways.add(new BoostQuery(new TermQuery(new Term(field, word.word())), OTHER_FORM));
        }
        if (open) {
            ways.add(new BoostQuery(new Once(new PrefixQuery(new Term(field, word.word()))), OTHER_FORM));
        }
        if (forgiving) {
            ways.add(new FuzzyQuery(new Term(field, word.singular()), edits(word.singular()), 1, MOST_SIMILAR, true));
        }
        if (forgiving && open && edits(word.word()) > 0) {
            ways.add(new BoostQuery(new Once(beginsNearly(field, word.word())), OTHER_FORM));
        }
        if (ways.size() == 1) {
            return ways.get(0);
        }
        var any = new BooleanQuery.Builder();
        ways.forEach(way -> any.add(way, Occur.SHOULD));
        return any.build();
    }

    private static Query beginsNearly(String field, String word) {
        var nearly = new LevenshteinAutomata(word.substring(1), true).toAutomaton(edits(word), word.substring(0, 1));
        return new AutomatonQuery(new Term(field, word), Operations.concatenate(nearly, Automata.makeAnyString()));
    }

    private static Query row(String field, List<String> singulars) {
        return singulars.size() == 1
                ? new TermQuery(new Term(field, singulars.get(0)))
                : new PhraseQuery(field, singulars.toArray(String[]::new));
    }

    private boolean meets(Token word, Token token, boolean forgiving) {
        boolean open = unfinished && word == words.get(words.size() - 1);
        return token.singular().equals(word.singular())
                || token.word().equals(word.singular())
                || open && token.word().startsWith(word.word())
                || forgiving && (nearly(word.singular(), token.singular()) || open && beginsNearly(word.word(), token));
    }

    private boolean beginsNearly(String word, Token token) {
        int most = Math.min(token.word().length(), word.length() + edits(word));
        return edits(word) > 0
                && IntStream.rangeClosed(word.length() - edits(word), most)
                        .anyMatch(length -> nearly(word, token.word().substring(0, length)));
    }

    private static boolean within(List<String> term, List<Token> text) {
        for (int at = 0; at < text.size(); at++) {
            if (stands(term, text, at) > 0) {
                return true;
            }
        }
        return false;
    }

    private static int stands(List<String> term, List<Token> text, int at) {
        if (at + term.size() > text.size()) {
            return 0;
        }
        for (int i = 0; i < term.size(); i++) {
            var token = text.get(at + i);
            if (!token.singular().equals(term.get(i)) && !token.word().equals(term.get(i))) {
                return 0;
            }
        }
        return term.size();
    }

    private boolean nearly(String word, String token) {
        int longer = token.codePointCount(0, token.length()) - word.codePointCount(0, word.length());
        if (Math.abs(longer) > edits(word) || token.charAt(0) != word.charAt(0)) {
            return false;
        }
        var bytes = new BytesRef(token);
        return nearly.computeIfAbsent(word, each -> FuzzyQuery.getFuzzyAutomaton(each, edits(each), 1, true))
                .runAutomaton
                .run(bytes.bytes, bytes.offset, bytes.length);
    }

    /** How many letters may be wrong: none in a short word or a number, two in a long one. */
    private static int edits(String word) {
        return word.length() < 4 || word.chars().anyMatch(Character::isDigit) ? 0 : word.length() < 8 ? 1 : 2;
    }

    /** One token that the whole is, where it is a single word. */
    Optional<Token> single() {
        return words.size() == 1 ? Optional.of(words.get(0)) : Optional.empty();
    }
}
