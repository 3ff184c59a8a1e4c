package planewright.api.calculator;

import java.time.LocalDateTime;
import org.apiguardian.api.API;
import planewright.api.journal.JournalReader;

/** What a computation has at hand while it runs. */
@API(status = API.Status.MAINTAINED, since = "0.1.0")
public interface Run {
    /**
     * Says how far it is, and lets the builder stop it. Slow computations call this often.
     *
     * @param done from 0 to 1
     * @param doing what it is at, in a few words
     * @throws Cancelled where the builder has stopped it; let it pass
     */
    void progress(double done, String doing);

    /** {@return the journal to read} */
    JournalReader journal();

    /** {@return the builder's clock} */
    LocalDateTime now();

    /** {@return in which the answer is read, and in which units its sentences tell; values of results are the same for every reader} */
    default Language language() {
        return Language.ENGLISH;
    }

    /** Leaves a computation that the builder has stopped. */
    final class Cancelled extends RuntimeException {
        private static final long serialVersionUID = 1L;

        /** For the program; a calculator lets it pass. */
        public Cancelled() {
            super("stopped", null, false, false);
        }
    }
}
