package planewright.app.across;

import java.io.IOException;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.Unit;
import javax.measure.quantity.Mass;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.app.index.MeasuredRange;
import planewright.app.index.SearchIndex;
import planewright.app.index.SearchIndex.Place;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Carried;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.NamedValue;
import planewright.app.journal.OpenJournal;

/**
 * Values of one name over all builds. What was measured or set last goes before what stands in the mass ledger, and that before
 * what follows from the shape. The index tells where values stand, so that only entries are read that hold one. Waits for the disk.
 */
public final class Across {
    private static final Comparator<EntryRecord> IN_TIME =
            Comparator.comparing(EntryRecord::at).thenComparing(EntryRecord::id);

    private final OpenJournal journal;
    private final SearchIndex index;

    public Across(OpenJournal journal, SearchIndex index) {
        this.journal = journal;
        this.index = index;
    }

    /** Everything that builds have values of: what most of them have first, then by name. */
    public List<Named> names() throws IOException {
        var found = new HashMap<Key, Found>();
        for (var value : index.valueNames()) {
            Found.of(found, value.name(), value.kind()).builds.addAll(value.builds());
        }
        var figures = new BuildFigures(journal, weighed());
        for (var build : journal.builds()) {
            figures.of(build)
                    .forEach(figure -> Found.of(
                                    found,
                                    figure.name(),
                                    figure.value().quantity().unit())
                            .builds
                            .add(build.id()));
        }
        return found.values().stream()
                .map(each -> new Named(each.name, each.kind, each.builds.size()))
                .sorted(Comparator.comparingInt(Named::builds)
                        .reversed()
                        .thenComparing(Named::name, String.CASE_INSENSITIVE_ORDER))
                .toList();
    }

    private record Key(String name, String kind) {}

    /** A name as it was met first, and who has values of it. */
    private static final class Found {
        private final String name;
        private final Unit<?> kind;
        private final Set<String> builds = new HashSet<>();

        private Found(String name, Unit<?> kind) {
            this.name = name;
            this.kind = kind;
        }

        private static Found of(Map<Key, Found> all, String name, Unit<?> kind) {
            var key = new Key(name.strip().toLowerCase(Locale.ROOT), MeasuredRange.kindOf(kind));
            return all.computeIfAbsent(key, met -> new Found(name.strip(), kind));
        }
    }

    /**
     * What builds have of it, the build begun last first, and of a build the newest first.
     *
     * @param every whether all values of a build are wanted; else its last
     */
    public List<BuildValue> values(Named named, boolean every) throws IOException {
        var logged = logged(named.name(), named.kind(), every);
        var figures = new BuildFigures(journal, weighed());
        return journal.builds().stream()
                .flatMap(build -> logged.containsKey(build.id())
                        ? logged.get(build.id()).stream()
                        : figures.of(build, named.name(), named.kind()).stream())
                .toList();
    }

    /** Two things of the same builds. */
    public Pairs pairs(Named value, Optional<Named> against, boolean every) throws IOException {
        Map<String, BuildValue> others = against.isEmpty()
                ? Map.of()
                : values(against.get(), false).stream()
                        .collect(Collectors.toMap(each -> each.build().id(), each -> each));
        return new Pairs(
                value,
                against,
                values(value, every).stream()
                        .map(each -> new Pairs.Pair(
                                each,
                                Optional.ofNullable(others.get(each.build().id()))))
                        .toList());
    }

    private Map<String, Measured<Mass>> weighed() throws IOException {
        return logged(BuildFigures.MASS, Units.GRAM, false).values().stream()
                .map(values -> values.get(0))
                .collect(Collectors.toMap(
                        value -> value.build().id(),
                        value -> value.quantity().measured().asType(Mass.class)));
    }

    private Map<String, List<BuildValue>> logged(String name, Unit<?> kind, boolean every) throws IOException {
        var places = index.valuePlaces(name, kind).stream().collect(Collectors.groupingBy(Place::build));
        return journal.builds().parallelStream()
                .filter(build -> places.containsKey(build.id()))
                .map(build -> logged(build, places.get(build.id()), new Named(name, kind, 1), every))
                .filter(values -> !values.isEmpty())
                .collect(Collectors.toMap(values -> values.get(0).build().id(), values -> values));
    }

    private List<BuildValue> logged(BuildRecord build, List<Place> places, Named named, boolean every) {
        long last = places.stream().mapToLong(Place::minutes).max().orElseThrow();
        var ids = places.stream()
                .filter(place -> every || place.minutes() == last)
                .map(Place::entry)
                .toList();
        return journal.entries(build.id(), ids).stream()
                .sorted(IN_TIME.reversed())
                .flatMap(entry -> values(build, entry, named))
                .limit(every ? Long.MAX_VALUE : 1)
                .toList();
    }

    /** The last that was written into the entry first. */
    private static Stream<BuildValue> values(BuildRecord build, EntryRecord entry, Named named) {
        var values = NamedValue.of(entry).stream()
                .filter(value -> named.is(value.name(), value.quantity().unit()))
                .map(value -> new BuildValue(build, value.quantity(), source(entry, value), Optional.of(entry)))
                .collect(Collectors.toList());
        java.util.Collections.reverse(values);
        return values.stream();
    }

    private static Source source(EntryRecord entry, NamedValue value) {
        return Carried.isIn(entry)
                ? Source.CARRIED
                : Stream.of(Source.values())
                        .filter(source -> source.word().startsWith(value.where()))
                        .findFirst()
                        .orElseThrow();
    }
}
