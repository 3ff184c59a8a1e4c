package planewright.app.exchange;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import planewright.app.files.SafeFile;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Ids;
import planewright.app.journal.Slow;
import planewright.app.store.JournalFolder;

/**
 * Builds as pages to read in any browser, from a disk or from a server, with a search that needs no network. They show
 * everything of the logs, pictures without the place where they were taken.
 */
public final class JournalPages {
    private final JournalFolder journal;
    private final List<BuildRecord> builds;
    private final Watch watch;
    private final List<LeftOut> leftOut = new ArrayList<>();

    private JournalPages(JournalFolder journal, List<BuildRecord> builds, Watch watch) {
        this.journal = journal;
        this.builds = builds;
        this.watch = watch;
    }

    /**
     * Writes the pages of these builds.
     *
     * @param folder empty, or not there yet
     * @param replace whether pages that were written there before may be replaced, and nothing else
     */
    public static Taken take(JournalFolder journal, List<BuildRecord> builds, Path folder, boolean replace, Watch watch)
            throws IOException {
        Slow.work("writing pages");
        return new JournalPages(journal, builds, watch)
                .take(folder.toAbsolutePath().normalize(), replace);
    }

    private Taken take(Path target, boolean replace) throws IOException {
        new PagesFolder(target, target).requireFree(replace);
        Target.outside(target, journal.folder());
        var part = target.resolveSibling("." + target.getFileName() + "." + Ids.small() + ".part");
        try {
            var taken = write(part);
            watch.reached(target.toString());
            if (Files.exists(target)) {
                giveWay(target, part, replace);
            } else {
                Files.move(part, target, StandardCopyOption.ATOMIC_MOVE);
            }
            SafeFile.force(target.getParent());
            return taken;
        } finally {
            Tree.delete(part);
        }
    }

    /** What has come into the folder meanwhile is not lost: it is looked at once more where nobody looks for it. */
    private static void giveWay(Path target, Path part, boolean replace) throws IOException {
        var old = target.resolveSibling("." + target.getFileName() + "." + Ids.small() + ".old");
        Files.move(target, old, StandardCopyOption.ATOMIC_MOVE);
        try {
            new PagesFolder(old, target).requireFree(replace);
            Files.move(part, target, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException | RuntimeException failure) {
            try {
                Files.move(old, target, StandardCopyOption.ATOMIC_MOVE);
            } catch (IOException second) {
                failure.addSuppressed(second);
            }
            throw failure;
        }
        Tree.delete(old);
    }

    private Taken write(Path part) throws IOException {
        var pictures = new PagePictures(journal.pictures(), part, leftOut, watch);
        for (var build : builds) {
            watch.reached(build.name());
            var html = new BuildPage(journal.journal(), build, pictures).html(watch);
            SafeFile.write(part.resolve(BuildPage.place(build)), bytes(html));
        }
        SafeFile.write(part.resolve(PagesFolder.INDEX), bytes(index(pictures)));
        SafeFile.write(part.resolve(PagesFolder.WORDS), out -> WordIndex.write(journal.journal(), builds, out));
        for (var file : PagesFolder.COPIED) {
            try (var in = JournalPages.class.getResourceAsStream(file)) {
                SafeFile.write(part.resolve(file), in.readAllBytes());
            }
        }
        return new Taken(builds.size() + 1, pictures.tellPlace(), leftOut);
    }

    private String index(PagePictures pictures) throws IOException {
        var name = journal.journal().name();
        var page = new Page("", name, name).line("h1", "", name);
        page.raw("<noscript>")
                .line("p", "quiet", ExchangeWords.say("The search needs JavaScript; the pages do not."))
                .raw("</noscript>\n");
        page.raw("<ul class=\"builds\">\n");
        for (var build : builds) {
            var log = journal.journal().log(build.id());
            page.raw("<li><a href=\"" + BuildPage.place(build) + "\">\n");
            page.raw(picture(build, pictures)).raw("<div>\n");
            page.line("h2", "", build.name()).line("p", "quiet", BuildPage.summary(build));
            page.line(
                    "p",
                    "quiet",
                    log.isEmpty()
                            ? ExchangeWords.say("no entries yet")
                            : ExchangeWords.say(
                                    log.size() == 1 ? "{0} entry, {1}" : "{0} entries, the last {1}",
                                    log.size(),
                                    ExchangeWords.day(
                                            log.get(log.size() - 1).at().toLocalDate())));
            page.raw("</div></a></li>\n");
        }
        return page.raw("</ul>\n").done();
    }

    /** The newest picture that can be shown. */
    private String picture(BuildRecord build, PagePictures pictures) throws IOException {
        var log = journal.journal().log(build.id());
        for (int i = log.size() - 1; i >= 0; i--) {
            for (var picture : log.get(i).pictures()) {
                var shown = pictures.shown(picture);
                if (shown.isPresent()) {
                    return "<img src=\"" + shown.get().small() + "\" alt=\"\" loading=\"lazy\">\n";
                }
            }
        }
        return "<div class=\"blank\"></div>\n";
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
