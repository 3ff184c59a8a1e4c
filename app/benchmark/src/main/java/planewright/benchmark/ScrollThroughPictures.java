package planewright.benchmark;

import java.awt.EventQueue;
import java.util.Random;
import javax.swing.JComponent;

/**
 * Opens the page of pictures and scrolls: turns of the wheel sixty times a second, then the bar dragged to and fro, first where no
 * small views have been made, then where they are kept. Every event's time on the event thread counts, painting included.
 */
public final class ScrollThroughPictures {
    private static final int TURNS = 600;
    private static final int DRAGS = 300;

    private ScrollThroughPictures() {}

    public static void main(String[] words) throws InterruptedException {
        OneSession.untilFilled();
        Fingers.page("pictures-page");
        var grid = Fingers.find(JComponent.class, "picture-grid");
        var bar = Fingers.look(() -> Fingers.bar(grid));
        var times = EventTimes.begin();
        var random = new Random(1);
        for (int round = 0; round < 2; round++) {
            Fingers.scroll(grid, TURNS);
            for (int drag = 0; drag < DRAGS; drag++) {
                Fingers.by(bar, random.nextInt(bar.getMaximum() + 1) - bar.getValue());
            }
            Fingers.by(bar, -bar.getMaximum());
        }
        times.tell();
        ChildJvm.tell("heap in use, MiB", IdleHeap.whenStill());
        EventQueue.invokeLater(OneSession::close);
    }
}
