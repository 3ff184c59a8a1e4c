package planewright.api.calculator;

import org.apiguardian.api.API;

/**
 * A remark on a result.
 *
 * @param grade how much it matters
 * @param text what was found and what to do, in a builder's words
 */
@API(status = API.Status.MAINTAINED, since = "0.1.0")
public record Finding(Grade grade, String text) {
    /** How much a remark matters. */
    public enum Grade {
        /** All is as it should be. */
        FINE("fine"),
        /** It may be so; measure, think or ask before going on. */
        LOOK_AGAIN("look again"),
        /** Not to be built, loaded or flown like this. */
        STOP("stop");

        private final String word;

        Grade(String word) {
            this.word = word;
        }

        /** {@return the word that is shown and that files carry} */
        public String word() {
            return word;
        }
    }

    /**
     * A remark that all is well.
     *
     * @param text what was found
     * @return the finding
     */
    public static Finding fine(String text) {
        return new Finding(Grade.FINE, text);
    }

    /**
     * A remark that something is worth a second look.
     *
     * @param text what was found and what to look at
     * @return the finding
     */
    public static Finding lookAgain(String text) {
        return new Finding(Grade.LOOK_AGAIN, text);
    }

    /**
     * A remark that one must not go on like this.
     *
     * @param text what was found and what to do instead
     * @return the finding
     */
    public static Finding stop(String text) {
        return new Finding(Grade.STOP, text);
    }
}
