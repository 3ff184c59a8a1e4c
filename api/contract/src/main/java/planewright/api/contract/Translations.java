package planewright.api.contract;

import java.io.DataInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentSkipListSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import planewright.api.calculator.About;
import planewright.api.calculator.Input;
import planewright.api.calculator.Language;
import planewright.api.calculator.Result;

/** The tables of words beside a calculator, as {@link Language} reads them. */
final class Translations {
    private static final Pattern TABLE = Pattern.compile("words_([a-z]{2,3})\\.tsv");
    private static final Pattern PLACE = Pattern.compile("\\{\\d}");

    private final Class<?> calculator;
    private final Path folder;

    /** What was said in another language and stood in no table, by language. */
    private final Map<Locale, Set<String>> missing;

    Translations(Class<?> calculator) throws IOException {
        this.calculator = calculator;
        this.folder = ForbiddenUses.folder(calculator)
                .resolve(calculator.getPackageName().replace('.', '/'));
        try (var files = Files.list(folder)) {
            missing = files.map(file -> TABLE.matcher(file.getFileName().toString()))
                    .filter(java.util.regex.Matcher::matches)
                    .map(name -> Locale.forLanguageTag(name.group(1)))
                    .collect(Collectors.toMap(locale -> locale, locale -> new ConcurrentSkipListSet<>()));
        }
    }

    /** English where there is no table; else each language in turn, and what it lacks is noted. */
    Language language(int turn) {
        var locales = missing.keySet().stream()
                .sorted(java.util.Comparator.comparing(Locale::toLanguageTag))
                .toList();
        if (locales.isEmpty()) {
            return Language.ENGLISH;
        }
        var locale = locales.get(turn % locales.size());
        return Language.of(locale, calculator, missing.get(locale)::add);
    }

    /** What was said so far stood in a table. */
    void requireSaid() {
        missing.forEach((locale, texts) ->
                Checks.require(texts.isEmpty(), name(locale) + " lacks what is said: " + quoted(texts)));
    }

    /** Every table has all texts of the annotations and every sentence with values, and nothing else. */
    void check(Class<? extends Record> inputs, Class<? extends Record> results) throws IOException {
        var described = new TreeSet<String>();
        about(described);
        record(inputs, described);
        record(results, described);
        var constants = constants();
        var needed = new TreeSet<>(described);
        constants.stream().filter(text -> PLACE.matcher(text).find()).forEach(needed::add);
        var known = new HashSet<>(constants);
        constants.forEach(constant -> known.add(word(constant)));
        known.addAll(described);
        for (var locale : missing.keySet()) {
            var flaws = flaws(Files.readAllLines(folder.resolve(name(locale)), StandardCharsets.UTF_8), needed, known);
            Checks.require(flaws.isEmpty(), name(locale) + ": " + String.join("; ", flaws));
        }
    }

    /**
     * What is wrong with a table.
     *
     * @param lines English, a tabulator, the translation
     * @param needed the English that must be there
     * @param known the English that may be there
     */
    static List<String> flaws(List<String> lines, Set<String> needed, Set<String> known) {
        var flaws = new ArrayList<String>();
        var there = new HashSet<String>();
        for (var line : lines) {
            var cells = line.split("\t", -1);
            if (cells.length != 2 || cells[0].isBlank() || cells[1].isBlank()) {
                flaws.add("'" + line + "' is not English, a tabulator and its translation");
                continue;
            }
            if (!there.add(cells[0])) {
                flaws.add("'" + cells[0] + "' is there twice");
            }
            if (!places(cells[0]).equals(places(cells[1]))) {
                flaws.add("'" + cells[1] + "' has the values " + places(cells[1]) + "; accepted: those of the English, "
                        + places(cells[0]));
            }
            if (!known.contains(cells[0])) {
                flaws.add("nothing says '" + cells[0] + "'");
            }
        }
        needed.stream().filter(text -> !there.contains(text)).forEach(text -> flaws.add("it lacks '" + text + "'"));
        return flaws;
    }

    private static Set<String> places(String text) {
        return PLACE.matcher(text).results().map(found -> found.group()).collect(Collectors.toCollection(TreeSet::new));
    }

    private void about(Set<String> texts) {
        var about = calculator.getAnnotation(About.class);
        Stream.concat(Stream.of(about.title(), about.question()), Arrays.stream(about.cautions()))
                .forEach(texts::add);
    }

    private static void record(Class<? extends Record> type, Set<String> texts) {
        for (var component : type.getRecordComponents()) {
            var input = component.getAnnotation(Input.class);
            var result = component.getAnnotation(Result.class);
            Stream.concat(
                            Stream.ofNullable(input)
                                    .flatMap(each -> Stream.of(each.label(), each.help(), each.under())),
                            Stream.ofNullable(result)
                                    .flatMap(each -> Stream.of(each.label(), each.help(), each.under())))
                    .filter(text -> !text.isEmpty())
                    .forEach(texts::add);
            var content = Records.content(component);
            if (content.isEnum()) {
                Arrays.stream(content.getEnumConstants())
                        .map(constant -> word(((Enum<?>) constant).name()))
                        .forEach(texts::add);
            } else if (Descriptions.isRows(component)) {
                record(content.asSubclass(Record.class), texts);
            }
        }
    }

    private static String word(String constant) {
        return constant.toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Every text in the constant pools of the package's classes. */
    private Set<String> constants() throws IOException {
        var texts = new HashSet<String>();
        try (var files = Files.list(folder)) {
            for (var file :
                    files.filter(each -> each.toString().endsWith(".class")).toList()) {
                try (var in = new DataInputStream(Files.newInputStream(file))) {
                    texts.addAll(ForbiddenUses.names(in));
                }
            }
        }
        return texts;
    }

    private static String name(Locale locale) {
        return "words_" + locale.getLanguage() + ".tsv";
    }

    private static String quoted(Set<String> texts) {
        return texts.stream().map(text -> "'" + text + "'").collect(Collectors.joining(", "));
    }
}
