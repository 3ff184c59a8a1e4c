package planewright.benchmark;

import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import planewright.app.synthetic.SyntheticJournal;

/** How long the event thread is busy at a stretch while a builder scrolls through all pictures of one build. */
final class PictureScrolling implements Section {
    private static final int ENTRIES = 400;
    private static final double MOST_OF_NEARLY_ALL = 50;
    private static final double MOST = 200;

    @Override
    public boolean needsJournal() {
        return false;
    }

    @Override
    public void measure(Run run) throws IOException, InterruptedException {
        if (GraphicsEnvironment.isHeadless()) {
            run.report().leftOut("scrolling through pictures", "there is no display");
            return;
        }
        var temp = Files.createTempDirectory(run.user().toAbsolutePath().getParent(), "pictures");
        var journal = temp.resolve("journal");
        SyntheticJournal.of(1, ENTRIES, 2 * run.synthetic().pictures()).write(journal);
        var told = new ChildJvm(journal, temp.resolve("user"), "", List.of()).run(ScrollThroughPictures.class);
        run.report()
                .goal(Goal.under(
                        "pictures scrolled, 99 of 100 events", "ms", told.get("nearly all"), MOST_OF_NEARLY_ALL));
        run.report().goal(Goal.under("pictures scrolled, longest event", "ms", told.get("longest"), MOST));
        told.forEach((name, number) -> run.report().figure("pictures", name, number));
    }
}
