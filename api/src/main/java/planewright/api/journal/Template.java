package planewright.api.journal;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.apiguardian.api.API;

/** Something that the next build starts from. */
@API(status = API.Status.MAINTAINED, since = "0.3.0")
public interface Template {
    /** Its ULID; never changes. */
    String id();

    /** What it is. */
    Kind kind();

    /** What the builder calls it. */
    String name();

    /** The day it was made. */
    LocalDate made();

    /** What else there is to say, a paragraph an element. */
    List<String> notes();

    /** Sorted, without repeats. */
    List<String> tags();

    /** The build it was taken from. */
    Optional<? extends BuildDay> cameFrom();

    /** The id of the template it was made from. */
    Optional<String> derivedFrom();

    /** Builds that it was given to. */
    List<? extends BuildDay> wentTo();

    /** Builds that have flown with it: where there is one, the template is proven. */
    List<? extends BuildDay> flewOn();

    /** Of an outline: the SHA-256 of its SVG file, 64 lower-case hexadecimal digits; else empty. */
    Optional<String> outline();

    /** Of a procedure: its steps in order; else empty. */
    List<? extends Step> steps();

    /** Of a set-up: its values; else empty. */
    List<? extends SetUpValue> values();

    /** What a template is. */
    enum Kind {
        /** A shape at true size. */
        OUTLINE("outline"),
        /** Ordered steps with times, materials and cautions. */
        PROCEDURE("procedure"),
        /** Settings to fly with. */
        SET_UP("set-up");

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
