package planewright.api.journal;

import java.time.LocalDateTime;
import java.util.List;
import org.apiguardian.api.API;

/** One dated record in a build's log. */
@API(status = API.Status.MAINTAINED, since = "0.1.0")
public interface Entry {
    /** Its ULID; never changes. */
    String id();

    /** The build whose log it stands in. */
    String build();

    /** When it happened, by the builder's clock. */
    LocalDateTime at();

    /** What it tells of. */
    Kind kind();

    /** A line that sums it up; may be empty. */
    String title();

    /** The story in CommonMark, a paragraph an element. */
    List<String> text();

    /** Sorted, without repeats. */
    List<String> tags();

    List<? extends Measurement> measurements();

    List<? extends Joint> joints();

    List<? extends Picture> pictures();

    /** Values of the set-up that changed here. */
    List<? extends SetUpValue> setUp();

    /** Flights of that day, in their order. */
    default List<? extends Flight> flights() {
        return List.of();
    }

    /** What broke and how it was mended. */
    default List<? extends Repair> repairs() {
        return List.of();
    }

    /** Work that was done. */
    default List<? extends DoneTask> tasks() {
        return List.of();
    }

    /** What an entry tells of. */
    enum Kind {
        WORK("work"),
        NOTE("note"),
        FLIGHT("flight"),
        REPAIR("repair"),
        SET_UP("set-up"),
        HAND_OVER("hand-over"),
        KEPT_RESULT("kept result");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** The word that is shown and that files carry. */
        public String word() {
            return word;
        }
    }
}
