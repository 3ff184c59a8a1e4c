package planewright.app.exchange;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Collection;
import java.util.List;
import java.util.function.Function;
import planewright.app.journal.PictureRecord;

/** Pictures that were looked at for a build's log; nothing is written into it yet, and any of them may come in. */
public final class SeenPictures {
    private final List<Seen> pictures;
    private final List<LeftOut> known;
    private final List<LeftOut> leftOut;
    private final Function<List<Seen>, Intake> intake;

    /**
     * A picture that the log does not show yet.
     *
     * @param file where it lies
     * @param name how the builder finds it there
     * @param at when it was taken
     * @param picture as it would stand in the log
     */
    public record Seen(Path file, String name, LocalDateTime at, PictureRecord picture) {}

    SeenPictures(List<Seen> pictures, List<LeftOut> known, List<LeftOut> leftOut, Function<List<Seen>, Intake> intake) {
        this.pictures = List.copyOf(pictures);
        this.known = List.copyOf(known);
        this.leftOut = List.copyOf(leftOut);
        this.intake = intake;
    }

    /** In the order in which they were taken. */
    public List<Seen> pictures() {
        return pictures;
    }

    /** What the log shows already. */
    public List<LeftOut> known() {
        return known;
    }

    /** What is refused. */
    public List<LeftOut> leftOut() {
        return leftOut;
    }

    /** What would come in with some of them; may read the log, so not on the event thread. */
    public Intake of(Collection<Seen> chosen) {
        return intake.apply(pictures.stream().filter(chosen::contains).toList());
    }
}
