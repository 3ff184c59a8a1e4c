package planewright.app.index;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.apache.lucene.document.LongPoint;
import org.apache.lucene.index.DocValues;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.Sort;
import org.apache.lucene.search.SortField;
import org.apache.lucene.search.TermInSetQuery;
import org.apache.lucene.search.TermQuery;
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
    private final Documents documents;
    private final BenchAnalyzer analyzer;
    private final SameMeaning sameMeaning;

    Finder(
            IndexSearcher searcher,
            OpenJournal journal,
            Documents documents,
            BenchAnalyzer analyzer,
            SameMeaning sameMeaning) {
        this.searcher = searcher;
        this.journal = journal;
        this.documents = documents;
        this.analyzer = analyzer;
        this.sameMeaning = sameMeaning;
    }

    Hits find(Question question) throws IOException {
        var wording = new Wording(question.words(), analyzer, sameMeaning);
        var measuring = measuring(question.filter());
        var narrowed = narrowed(question.filter(), measuring);
        var asWritten = wording.query(false);
        var exact = count(asWritten, narrowed, question.filter());
        if (exact.total() == 0 && !wording.isEmpty()) {
            var forgiven = wording.query(true);
            var nearly = count(forgiven, narrowed, question.filter());
            if (nearly.total() > 0) {
                return hits(question, new Seen(forgiven, wording, measuring, true), narrowed, nearly);
            }
        }
        return hits(question, new Seen(asWritten, wording, measuring, false), narrowed, exact);
    }

    private Counter count(Query words, Query narrowed, Filter filter) throws IOException {
        var both = new BooleanQuery.Builder().add(words, Occur.FILTER).add(narrowed, Occur.FILTER);
        return Counter.of(searcher, both.build(), filter);
    }

    /** What is marked in a hit, and the query that found it. */
    private record Seen(Query query, Wording wording, Optional<Measuring> measuring, boolean forgiving) {}

    private Hits hits(Question question, Seen seen, Query narrowed, Counter counter) throws IOException {
        if (counter.total() == 0) {
            return new Hits(0, List.of(), seen.forgiving(), counter.counts());
        }
        var all = new BooleanQuery.Builder().add(seen.query(), Occur.MUST).add(narrowed, Occur.FILTER);
        question.filter().kept().forEach((facet, values) -> {
            if (facet == Facet.TAG) {
                values.forEach(
                        value -> all.add(new TermQuery(new Term(facet.field(), Documents.term(value))), Occur.FILTER));
            } else {
                var terms =
                        values.stream().map(Documents::term).map(BytesRef::new).toList();
                all.add(new TermInSetQuery(facet.field(), terms), Occur.FILTER);
            }
        });
        var hits = new ArrayList<Hits.Hit>();
        var stored = searcher.storedFields();
        for (var scored :
                searcher.search(all.build(), question.most(), question.words().isBlank() ? NEWEST : BEST).scoreDocs) {
            var document = stored.document(scored.doc);
            journal.entry(document.get(Documents.BUILD), document.get(Documents.ID))
                    .map(entry -> hit(entry, seen))
                    .ifPresent(hits::add);
        }
        return new Hits(counter.total(), hits, seen.forgiving(), counter.counts());
    }

    private Hits.Hit hit(EntryRecord entry, Seen seen) {
        var excerpts = new ArrayList<Hits.Excerpt>();
        seen.measuring().ifPresent(range -> excerpts.addAll(range.excerpts(entry)));
        for (var piece : documents.pieces(entry)) {
            var marks = seen.wording().marks(piece.text(), seen.forgiving());
            if (!marks.isEmpty()) {
                excerpts.add(new Hits.Excerpt(piece.where(), piece.text(), marks));
            }
        }
        return new Hits.Hit(entry, excerpts);
    }

    /** The parts of a filter that are no facets. */
    private static Query narrowed(Filter filter, Optional<Measuring> measuring) {
        long first = filter.from().map(Documents::minutes).orElse(Long.MIN_VALUE);
        long last =
                filter.to().map(day -> Documents.minutes(day.plusDays(1)) - 1).orElse(Long.MAX_VALUE);
        var narrowed = new BooleanQuery.Builder().add(LongPoint.newRangeQuery(Documents.AT, first, last), Occur.FILTER);
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

    private TreeSet<String> keys() throws IOException {
        var keys = new TreeSet<String>();
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
