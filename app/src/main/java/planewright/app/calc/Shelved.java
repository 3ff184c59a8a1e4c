package planewright.app.calc;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import planewright.api.calculator.Language;
import planewright.api.journal.Build;
import planewright.api.journal.Entry;
import planewright.api.journal.JournalReader;
import planewright.api.journal.Picture;
import planewright.api.journal.Template;
import planewright.app.journal.CalendarRecord;
import planewright.app.journal.PictureRecord;
import planewright.app.store.JsonFiles;
import planewright.app.store.RecordFiles;

/** Things of the journal that an input may be: outline templates and pictures. */
public final class Shelved {
    private static final int LEAST_OF_A_HASH = 6;
    private static final Comparator<Template> LAST_MADE =
            Comparator.comparing(Template::made).thenComparing(Template::id);

    private Shelved() {}

    /** Names of all outline templates, each once, by name. */
    public static List<String> outlines(JournalReader journal) {
        return journal.templates().stream()
                .filter(Shelved::isOutline)
                .map(Template::name)
                .distinct()
                .sorted(String.CASE_INSENSITIVE_ORDER)
                .toList();
    }

    /** Pictures of a build's log, the newest first. */
    public static List<PictureRecord> pictures(JournalReader journal, String buildId) {
        return journal.log(buildId).stream()
                .sorted(Comparator.comparing(Entry::at).reversed())
                .flatMap(entry -> entry.pictures().stream())
                .map(Shelved::record)
                .distinct()
                .toList();
    }

    /**
     * What an input takes.
     *
     * @param origin where it was
     * @param node it, or its name
     */
    record Taken(Origin origin, JsonNode node) {}

    /** The outline template of that name; without one, the newest that was taken from the build. */
    static Optional<Taken> template(Language language, JournalReader journal, Build build, String name) {
        return (name.isEmpty() ? newest(journal, build) : outline(journal, name))
                .map(found -> new Taken(
                        new Origin(
                                "template",
                                found.name(),
                                Optional.empty(),
                                language.say("template of {0}", ClockText.day(found.made(), language.locale()))),
                        TextNode.valueOf(found.name())));
    }

    private static Optional<? extends Template> newest(JournalReader journal, Build build) {
        return journal.templates().stream()
                .filter(template -> isOutline(template)
                        && template.cameFrom()
                                .filter(from -> from.build().equals(build.id()))
                                .isPresent())
                .max(LAST_MADE);
    }

    /** The newest picture of the build's log whose caption holds the word. */
    static Optional<Taken> picture(Language language, JournalReader journal, Build build, String word) {
        var wanted = word.toLowerCase(Locale.ROOT);
        return journal.log(build.id()).stream()
                .sorted(Comparator.comparing(Entry::at).reversed())
                .flatMap(entry -> entry.pictures().stream()
                        .filter(picture ->
                                picture.caption().toLowerCase(Locale.ROOT).contains(wanted))
                        .map(picture -> new Taken(
                                new Origin(
                                        "picture",
                                        picture.caption(),
                                        Optional.of(entry.id()),
                                        language.say(
                                                "picture of {0}",
                                                ClockText.day(entry.at().toLocalDate(), language.locale()))),
                                json(picture))))
                .findFirst();
    }

    /** The journal's calendar. */
    static Optional<Taken> calendar(Language language, JournalReader journal) {
        return journal.calendar()
                .map(calendar -> new Taken(
                        new Origin("calendar", "", Optional.empty(), language.say("the journal's calendar")),
                        RecordFiles.json(CalendarRecord.of(calendar))));
    }

    /** A picture as calculators' JSON carries it. */
    public static ObjectNode json(Picture picture) {
        return JsonFiles.object()
                .put("hash", picture.hash())
                .put("type", picture.type())
                .put("caption", picture.caption());
    }

    /** As the journal holds it. */
    static PictureRecord record(Picture picture) {
        return new PictureRecord(picture.hash(), picture.type(), picture.caption());
    }

    /** The outline template of that name; of several the one that was made last. */
    static Optional<? extends Template> outline(JournalReader journal, String name) {
        return journal.templates().stream()
                .filter(template -> isOutline(template) && JournalReader.sameName(template.name(), name))
                .max(LAST_MADE);
    }

    /** Those pictures of the whole journal that have that caption, or whose hash begins so; each once. */
    static List<PictureRecord> pictures(JournalReader journal, Called called) {
        return journal.builds().stream()
                .flatMap(build -> pictures(journal, build.id()).stream())
                .filter(called::is)
                .distinct()
                .toList();
    }

    private static boolean isOutline(Template template) {
        return template.kind() == Template.Kind.OUTLINE;
    }

    /** What somebody calls a picture: its caption, or the beginning of its hash. */
    record Called(String text) {
        boolean is(Picture picture) {
            var name = text.strip().toLowerCase(Locale.ROOT);
            return JournalReader.sameName(picture.caption(), text)
                    || name.length() >= LEAST_OF_A_HASH && picture.hash().startsWith(name);
        }
    }
}
