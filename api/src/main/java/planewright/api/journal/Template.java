package planewright.api.journal;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.apiguardian.api.API;

/** Something that the next build starts from. */
@API(status = API.Status.MAINTAINED, since = "0.3.0")
public interface Template {
    /** {@return its ULID, which never changes} */
    String id();

    /** {@return what it is} */
    Kind kind();

    /** {@return what the builder calls it} */
    String name();

    /** {@return the day it was made} */
    LocalDate made();

    /** {@return what else there is to say, a paragraph an element} */
    List<String> notes();

    /** {@return its tags, sorted, without repeats} */
    List<String> tags();

    /** {@return the build it was taken from} */
    Optional<? extends BuildDay> cameFrom();

    /** {@return the id of the template it was made from} */
    Optional<String> derivedFrom();

    /** {@return builds that it was given to} */
    List<? extends BuildDay> wentTo();

    /** {@return builds that have flown with it: where there is one, the template is proven} */
    List<? extends BuildDay> flewOn();

    /** {@return of an outline: the SHA-256 of its SVG file, 64 lower-case hexadecimal digits; else empty} */
    Optional<String> outline();

    /** {@return of a procedure: its steps in order; else empty} */
    List<? extends Step> steps();

    /** {@return of a set-up: its values; else empty} */
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

        /** {@return the word that is shown and that files carry} */
        public String word() {
            return word;
        }
    }
}
