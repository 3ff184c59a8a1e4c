package planewright.app.exchange;

import java.io.IOException;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import planewright.api.quantity.Measured;
import planewright.app.journal.BuildFacts;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.EntryWords;
import planewright.app.journal.JointRecord;
import planewright.app.journal.OpenJournal;
import planewright.app.journal.PictureRecord;

/** The page of one build: what it is, and its log from the first entry to the last. */
final class BuildPage {
    private static final String ROOT = "../";

    private final OpenJournal journal;
    private final BuildRecord build;
    private final PagePictures pictures;
    private final Page page;

    BuildPage(OpenJournal journal, BuildRecord build, PagePictures pictures) {
        this.journal = journal;
        this.build = build;
        this.pictures = pictures;
        this.page = new Page(ROOT, journal.name(), build.name() + " · " + journal.name());
    }

    /** Where the page of a build lies below the folder of all pages. */
    static String place(BuildRecord build) {
        return "builds/" + build.id().toLowerCase(Locale.ROOT) + ".html";
    }

    /** Where an entry stands on it. */
    static String anchor(EntryRecord entry) {
        return entry.id().toLowerCase(Locale.ROOT);
    }

    /** What a build is, in a line. */
    static String summary(BuildRecord build) {
        return Stream.of(
                        ExchangeWords.say(build.life().word()),
                        ExchangeWords.say(build.layout()),
                        ExchangeWords.say("begun {0}", ExchangeWords.day(build.begun())))
                .filter(words -> !words.isBlank())
                .collect(Collectors.joining(" · "));
    }

    String html(Watch watch) throws IOException {
        page.line("h1", "", build.name()).line("p", "quiet", summary(build));
        page.raw("<dl>\n");
        for (var fact : BuildFacts.of(journal, build)) {
            page.raw("<div>")
                    .line("dt", "", fact.words(ExchangeWords::say, ExchangeWords::day))
                    .line("dd", "", ExchangeWords.quantity(fact.value()))
                    .raw("</div>\n");
        }
        page.raw("</dl>\n");
        if (!build.datum().isBlank()) {
            page.line("p", "quiet", ExchangeWords.say("Stations are measured from: {0}", build.datum()));
        }
        page.markup(build.notes());
        parts();
        for (var entry : journal.log(build.id())) {
            watch.reached(entry.title().isEmpty() ? entry.at().toString() : entry.title());
            entry(entry);
        }
        return page.done();
    }

    private void parts() {
        if (!build.parts().isEmpty()) {
            page.raw("<details><summary>"
                    + Html.escaped(ExchangeWords.say("Parts: {0}", build.parts().size())) + "</summary>\n");
            page.table(
                    List.of(
                            ExchangeWords.say("Part"),
                            ExchangeWords.say("Group"),
                            ">" + ExchangeWords.say("Mass"),
                            ">x",
                            ">y",
                            ">z"),
                    build.parts().stream()
                            .map(part -> List.of(
                                    part.name(),
                                    part.group(),
                                    text(part.mass()),
                                    text(part.x()),
                                    text(part.y()),
                                    text(part.z())))
                            .toList());
            page.raw("</details>\n");
        }
    }

    private void entry(EntryRecord entry) throws IOException {
        page.raw("<article id=\"" + Html.escaped(anchor(entry)) + "\">\n");
        page.line(
                "h2",
                "",
                entry.title().isBlank() ? ExchangeWords.say(entry.kind().word()) : entry.title());
        page.raw("<p class=\"quiet\"><time datetime=\"" + entry.at() + "\">" + time(entry.at()) + "</time> · "
                + Html.escaped(ExchangeWords.say(entry.kind().word())) + " ");
        entry.tags().forEach(tag -> page.line("span", "tag", tag));
        page.raw("</p>\n").markup(entry.text());
        page.table(
                List.of(ExchangeWords.say("Measured"), ">" + ExchangeWords.say("Value"), ExchangeWords.say("How")),
                entry.measurements().stream()
                        .map(each -> List.of(each.name(), ExchangeWords.quantity(each.quantity()), each.method()))
                        .toList());
        page.table(
                List.of(ExchangeWords.say("Set-up"), ">" + ExchangeWords.say("Value")),
                entry.setUp().stream()
                        .map(each -> List.of(each.name(), ExchangeWords.quantity(each.quantity())))
                        .toList());
        entry.joints().forEach(joint -> page.line("p", "", joint(joint)));
        entry.flights()
                .forEach(flight -> page.line(
                        "p", "", ExchangeWords.say("Flight: {0}", EntryWords.flight(flight, ExchangeWords::quantity))));
        entry.repairs()
                .forEach(repair -> page.line(
                        "p", "", ExchangeWords.say("Repair: {0}", EntryWords.repair(repair, ExchangeWords::quantity))));
        entry.tasks()
                .forEach(task -> page.line(
                        "p", "", ExchangeWords.say("Done: {0}", EntryWords.task(task, ExchangeWords::quantity))));
        entry.keptResult()
                .ifPresent(kept -> page.line(
                        "p",
                        "quiet",
                        ExchangeWords.say("Computed by {0}, version {1}", kept.calculator(), kept.version())));
        pictures(entry.pictures());
        page.raw("</article>\n");
    }

    private void pictures(List<PictureRecord> shown) throws IOException {
        if (shown.isEmpty()) {
            return;
        }
        page.raw("<div class=\"pictures\">\n");
        for (var picture : shown) {
            page.raw("<figure>");
            pictures.shown(picture)
                    .ifPresentOrElse(
                            each -> page.raw("<a href=\"" + ROOT + each.large() + "\">" + image(each, picture.caption())
                                    + "</a>"),
                            () -> page.line("p", "quiet", ExchangeWords.say("This picture is missing.")));
            page.line("figcaption", "", picture.caption()).raw("</figure>\n");
        }
        page.raw("</div>\n");
    }

    private static String image(PagePictures.Shown shown, String caption) {
        return "<img src=\"" + ROOT + shown.small() + "\" width=\"" + shown.width() + "\" height=\"" + shown.height()
                + "\" alt=\"" + Html.escaped(caption) + "\" loading=\"lazy\">";
    }

    private static String joint(JointRecord joint) {
        var joined = Stream.of(joint.name(), joint.material())
                .filter(words -> !words.isBlank())
                .collect(Collectors.joining(", "));
        return ExchangeWords.say("Joint: {0}, from {1}", joined, time(joint.start()))
                + joint.handsOffUntil()
                        .map(until -> ExchangeWords.say(", hands off until {0}", time(until)))
                        .orElse("")
                + joint.fullyCured()
                        .map(cured -> ExchangeWords.say(", cured from {0}", time(cured)))
                        .orElse("");
    }

    private static String text(Optional<? extends Measured<?>> value) {
        return value.map(ExchangeWords::quantity).orElse("");
    }

    private static String time(LocalDateTime time) {
        return time.truncatedTo(ChronoUnit.MINUTES).toString().replace('T', ' ');
    }
}
