package planewright.app.cli;

import java.io.IOException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Option;
import planewright.api.journal.Entry;
import planewright.api.journal.Life;
import planewright.app.Program;
import planewright.app.index.Days;
import planewright.app.index.Facet;
import planewright.app.index.Filter;
import planewright.app.index.Hits;
import planewright.app.index.MeasuredRange;
import planewright.app.index.Question;
import planewright.app.index.SearchIndex;
import planewright.shared.quantity.QuantityProblem;

/** What of a journal a command keeps to. */
final class FilterOptions {
    private static final int NAMED = 20;

    @Option(names = "--build", paramLabel = "NAME", description = "Only in this build's log; may be repeated.")
    private List<String> builds = List.of();

    @Option(names = "--tag", paramLabel = "TAG", description = "Only with this tag; repeated: with all of them.")
    private List<String> tags = List.of();

    @Option(
            names = "--kind",
            paramLabel = "KIND",
            description = "Only of this kind, such as flight or repair; may be repeated.")
    private List<String> kinds = List.of();

    @Option(
            names = "--material",
            paramLabel = "WORDS",
            description = "Only with joints of a material that bears these words; may be repeated.")
    private List<String> materials = List.of();

    @Option(
            names = "--life",
            paramLabel = "LIFE",
            description = "Only of builds that are flying, resting, …; may be repeated.")
    private List<String> lives = List.of();

    @Option(names = "--from", paramLabel = "DAY", description = "Not before this day, month or year.")
    private Optional<String> from = Optional.empty();

    @Option(names = "--to", paramLabel = "DAY", description = "Not after this day, month or year.")
    private Optional<String> to = Optional.empty();

    @Option(
            names = "--measurement",
            paramLabel = "NAME",
            description = "Only with a measurement or set-up value of this name, such as \"wing mass\".")
    private Optional<String> measurement = Optional.empty();

    @Option(names = "--at-least", paramLabel = "QUANTITY", description = "Its least value, in any unit: \"300 g\".")
    private Optional<String> atLeast = Optional.empty();

    @Option(names = "--at-most", paramLabel = "QUANTITY", description = "Its greatest value, in any unit: \"14 oz\".")
    private Optional<String> atMost = Optional.empty();

    boolean isEmpty() {
        return builds.isEmpty()
                && tags.isEmpty()
                && kinds.isEmpty()
                && materials.isEmpty()
                && lives.isEmpty()
                && from.isEmpty()
                && to.isEmpty()
                && measurement.isEmpty()
                && atLeast.isEmpty()
                && atMost.isEmpty();
    }

    /** The filter that the options ask for; a value that nothing in the journal bears is refused. */
    Filter read(Program program, SearchIndex index) throws IOException {
        var first = from.map(text -> day("--from", () -> Days.first(text)));
        var last = to.map(text -> day("--to", () -> Days.last(text)));
        var everything = index.find(Question.of("").most(1));
        var kept = new EnumMap<Facet, Set<String>>(Facet.class);
        kept.put(
                Facet.BUILD,
                builds.stream().map(name -> Desk.build(program, name).id()).collect(Collectors.toSet()));
        kept.put(Facet.TAG, known(tags, Facet.TAG, everything, String::equals));
        kept.put(Facet.MATERIAL, known(materials, Facet.MATERIAL, everything, FilterOptions::bears));
        kept.put(
                Facet.KIND,
                words("--kind", kinds, Arrays.stream(Entry.Kind.values()).map(Entry.Kind::word)));
        kept.put(Facet.LIFE, words("--life", lives, Arrays.stream(Life.values()).map(Life::word)));
        return new Filter(Map.copyOf(kept), first, last, measured());
    }

    private Optional<MeasuredRange> measured() {
        if (measurement.isEmpty() && atLeast.isEmpty() && atMost.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(MeasuredRange.parse(measurement.orElse(""), atLeast, atMost));
        } catch (QuantityProblem problem) {
            throw CommandFailed.words(problem.getMessage());
        }
    }

    private static Set<String> words(String option, List<String> wanted, Stream<String> words) {
        var accepted = words.toList();
        var found = new LinkedHashSet<String>();
        for (var each : wanted) {
            var word = each.strip().toLowerCase(Locale.ROOT);
            if (!accepted.contains(word)) {
                throw CommandFailed.words(option + " is '" + each + "'; accepted: " + String.join(", ", accepted));
            }
            found.add(word);
        }
        return found;
    }

    private static Set<String> known(
            List<String> wanted, Facet facet, Hits everything, BiPredicate<String, String> means) {
        var found = new LinkedHashSet<String>();
        for (var each : wanted) {
            var word = each.strip().toLowerCase(Locale.ROOT);
            var here = everything.of(facet).stream()
                    .map(Hits.Count::value)
                    .filter(value -> means.test(value.toLowerCase(Locale.ROOT), word))
                    .toList();
            if (here.isEmpty()) {
                throw CommandFailed.work(
                        facet.word() + " '" + each + "' is in no entry; accepted: " + named(everything.of(facet)));
            }
            found.addAll(here);
        }
        return found;
    }

    private static String named(List<Hits.Count> counts) {
        return counts.isEmpty()
                ? "none, no entry has any yet"
                : counts.stream().limit(NAMED).map(Hits.Count::value).collect(Collectors.joining(", "));
    }

    private static boolean bears(String material, String words) {
        return List.of(material.split("[^\\p{L}\\p{N}]+")).containsAll(List.of(words.split("[^\\p{L}\\p{N}]+")));
    }

    private static LocalDate day(String option, Supplier<LocalDate> reading) {
        try {
            return reading.get();
        } catch (IllegalArgumentException wrong) {
            throw CommandFailed.words(option + ": " + wrong.getMessage());
        }
    }
}
