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
        FINE("fine"),
        LOOK_AGAIN("look again"),
        STOP("stop");

        private final String word;

        Grade(String word) {
            this.word = word;
        }

        /** The word that is shown and that files carry. */
        public String word() {
            return word;
        }
    }

    public static Finding fine(String text) {
        return new Finding(Grade.FINE, text);
    }

    public static Finding lookAgain(String text) {
        return new Finding(Grade.LOOK_AGAIN, text);
    }

    public static Finding stop(String text) {
        return new Finding(Grade.STOP, text);
    }
}
