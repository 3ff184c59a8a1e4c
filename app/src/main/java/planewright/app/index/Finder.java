package planewright.app.index;

import static org.apache.lucene.document.SortedSetDocValuesField.newSlowExactQuery;
import static org.apache.lucene.document.SortedSetDocValuesField.newSlowSetQuery;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import org.apache.lucene.document.NumericDocValuesField;
import org.apache.lucene.index.DocValues;
import org.apache.lucene.index.ReaderUtil;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.MatchAllDocsQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.Sort;
import org.apache.lucene.search.SortField;
import org.apache.lucene.search.TopDocs;
import org.apache.lucene.search.TotalHits;
import org.apache.lucene.util.BytesRef;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.OpenJournal;

/** Answers one question from one state of the index. */
final class Finder {
    private static final Sort NEWEST = new Sort(new SortField(Documents.AT, SortField.Type.LONG, true));

    /** Best first, of equals the newest. */
    private static final Sort BEST = new Sort(SortField.FIELD_SCORE, NEWEST.getSort()[0]);

    private final IndexSearcher searcher;
    private final OpenJournal journal;
    private final BenchAnalyzer analyzer;
    private final SameMeaning sameMeaning;

    Finder(IndexSearcher searcher, OpenJournal journal, BenchAnalyzer analyzer, SameMeaning sameMeaning) {
        this.searcher = searcher;
        this.journal = journal;
        this.analyzer = analyzer;
        this.sameMeaning = sameMeaning;
    }

    /** Finds, counts every entry found and its facets. */
    Hits find(Question question) throws IOException {
        return find(question, this::counted);
    }

    /** Finds the same hits, and counts no further than finding them takes: for an answer at once while a builder types. */
    Hits glance(Question question) throws IOException {
        return find(question, this::glanced);
    }

    private interface Look {
        Found at(Question question, Query words, Query narrowed) throws IOException;
    }

    private Hits find(Question question, Look look) throws IOException {
        var wording = new Wording(question.words(), analyzer, sameMeaning);
        var measuring = measuring(question.filter());
        var narrowed = narrowed(question.filter(), measuring);
        var asWritten = wording.query(false);
        var exact = look.at(question, asWritten, narrowed);
        if (exact.tally().total() == 0 && !wording.isEmpty()) {
            var forgiven = wording.query(true);
            var nearly = look.at(question, forgiven, narrowed);
            if (nearly.tally().total() > 0) {
                return hits(nearly, new Seen(wording, measuring, true));
            }
        }
        return hits(exact, new Seen(wording, measuring, false));
    }

    /**
     * What a query finds.
     *
     * @param best the first page
     */
    private record Found(Hits.Tally tally, List<SearchIndex.Place> best) {}

    private Found glanced(Question question, Query words, Query narrowed) throws IOException {
        var best = best(question, words, narrowed);
        boolean exact = best.totalHits.relation == TotalHits.Relation.EQUAL_TO;
        return new Found(new Hits.Tally((int) best.totalHits.value, exact, Map.of()), places(best));
    }

    /** Counts and ranks side by side. */
    private Found counted(Question question, Query words, Query narrowed) throws IOException {
        var counting = CompletableFuture.supplyAsync(() -> count(words, narrowed, question.filter()));
        var best = best(question, words, narrowed);
        try {
            var counter = counting.join();
            return new Found(new Hits.Tally(counter.total(), true, counter.counts()), places(best));
        } catch (CompletionException failure) {
            throw new IOException(IndexWords.say("the search index cannot be read"), failure.getCause());
        }
    }

    private Counter count(Query words, Query narrowed, Filter filter) {
        var both = new BooleanQuery.Builder().add(words, Occur.FILTER).add(narrowed, Occur.FILTER);
        try {
            return Counter.of(searcher, both.build(), filter);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private TopDocs best(Question question, Query words, Query narrowed) throws IOException {
        var all = new BooleanQuery.Builder().add(words, Occur.MUST).add(narrowed, Occur.FILTER);
        question.filter().kept().forEach((facet, values) -> {
            var terms = values.stream().map(Documents::term).map(BytesRef::new).toList();
            if (facet == Facet.TAG) {
                terms.forEach(term -> all.add(newSlowExactQuery(facet.field(), term), Occur.FILTER));
            } else {
                all.add(newSlowSetQuery(facet.field(), terms), Occur.FILTER);
            }
        });
        return searcher.search(all.build(), question.most(), question.words().isBlank() ? NEWEST : BEST);
    }

    private List<SearchIndex.Place> places(TopDocs best) throws IOException {
        var found = new ArrayList<SearchIndex.Place>();
        var segments = searcher.getIndexReader().leaves();
        for (var scored : best.scoreDocs) {
            var segment = segments.get(ReaderUtil.subIndex(scored.doc, segments));
            found.add(new Whereabouts(segment.reader()).of(scored.doc - segment.docBase));
        }
        return found;
    }

    /** What is marked in a hit. */
    private record Seen(Wording wording, Optional<Measuring> measuring, boolean forgiving) {}

    private Hits hits(Found found, Seen seen) {
        var hits = found.best().parallelStream()
                .flatMap(place -> journal.entry(place.build(), place.entry()).stream())
                .map(entry -> hit(entry, seen))
                .toList();
        return new Hits(found.tally(), hits, seen.forgiving());
    }

    private Hits.Hit hit(EntryRecord entry, Seen seen) {
        var excerpts = new ArrayList<Hits.Excerpt>();
        seen.measuring().ifPresent(range -> excerpts.addAll(range.excerpts(entry)));
        for (var piece :
                Pieces.of(entry, journal.build(entry.build()).map(Pieces::words).orElse(""))) {
            var marks = seen.wording().marks(piece.text(), seen.forgiving());
            if (!marks.isEmpty()) {
                excerpts.add(new Hits.Excerpt(piece.where(), piece.text(), marks));
            }
        }
        return new Hits.Hit(entry, excerpts);
    }

    /** The parts of a filter that are no facets. */
    private static Query narrowed(Filter filter, Optional<Measuring> measuring) {
        var narrowed = new BooleanQuery.Builder().add(new MatchAllDocsQuery(), Occur.FILTER);
        if (filter.from().isPresent() || filter.to().isPresent()) {
            long first = filter.from().map(Documents::minutes).orElse(Long.MIN_VALUE);
            long last = filter.to()
                    .map(day -> Documents.minutes(day.plusDays(1)) - 1)
                    .orElse(Long.MAX_VALUE);
            narrowed.add(NumericDocValuesField.newSlowRangeQuery(Documents.AT, first, last), Occur.FILTER);
        }
        measuring.ifPresent(range -> narrowed.add(range.query(), Occur.FILTER));
        return narrowed.build();
    }

    private Optional<Measuring> measuring(Filter filter) throws IOException {
        if (filter.measured().isEmpty()) {
            return Optional.empty();
        }
        var range = filter.measured().get();
        var name = new Wording(range.name() + " ", analyzer, sameMeaning);
        return Optional.of(new Measuring(range, keys(), each -> name.meets(analyzer.tokens(each))));
    }

    private Set<String> keys() throws IOException {
        var keys = new HashSet<String>();
        for (var leaf : searcher.getIndexReader().leaves()) {
            var terms =
                    DocValues.getSortedSet(leaf.reader(), Documents.MEASURED).termsEnum();
            for (var term = terms.next(); term != null; term = terms.next()) {
                keys.add(term.utf8ToString());
            }
        }
        return keys;
    }
}
