package planewright.api.journal;

import java.time.LocalDateTime;
import java.util.List;
import org.apiguardian.api.API;

/** One dated record in a build's log. */
@API(status = API.Status.MAINTAINED, since = "0.1.0")
public interface Entry {
    /** {@return its ULID, which never changes} */
    String id();

    /** {@return the build whose log it stands in} */
    String build();

    /** {@return when it happened, by the builder's clock} */
    LocalDateTime at();

    /** {@return what it tells of} */
    Kind kind();

    /** {@return a line that sums it up; may be empty} */
    String title();

    /** {@return the story in CommonMark, a paragraph an element} */
    List<String> text();

    /** {@return its tags, sorted, without repeats} */
    List<String> tags();

    /** {@return what was measured, in the order in which it was written} */
    List<? extends Measurement> measurements();

    /** {@return what was joined or filled and needs time} */
    List<? extends Joint> joints();

    /** {@return its pictures, in the order in which they are shown} */
    List<? extends Picture> pictures();

    /** {@return values of the set-up that changed here} */
    List<? extends SetUpValue> setUp();

    /** {@return flights of that day, in their order} */
    default List<? extends Flight> flights() {
        return List.of();
    }

    /** {@return what broke and how it was mended} */
    default List<? extends Repair> repairs() {
        return List.of();
    }

    /** {@return work that was done} */
    default List<? extends DoneTask> tasks() {
        return List.of();
    }

    /** What an entry tells of. */
    enum Kind {
        /** Something was built. */
        WORK("work"),
        /** Thoughts, plans, things to look up. */
        NOTE("note"),
        /** It flew. */
        FLIGHT("flight"),
        /** Something broke and was mended. */
        REPAIR("repair"),
        /** Throws, rates, balance or trims were changed. */
        SET_UP("set-up"),
        /** It was handed to its owner. */
        HAND_OVER("hand-over"),
        /** A calculator's inputs and answer. */
        KEPT_RESULT("kept result");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** {@return the word that is shown and that files carry} */
        public String word() {
            return word;
        }
    }
}
