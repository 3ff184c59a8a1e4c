package planewright.app.calc;

import java.nio.file.Path;
import java.util.List;

/**
 * A plugin that was found, whether or not it runs.
 *
 * @param file its zip
 * @param id what it calls itself; empty where its zip cannot be read
 * @param version of the plugin
 * @param description what it says it does
 * @param told the same in the language that is shown, as far as it says it in that
 * @param provider who says to have made it; empty where it does not say
 * @param requires the versions of the API that it asks for
 * @param hash SHA-256 of its zip, in hexadecimal; empty where it cannot be read
 * @param shipped whether it came with the program; others the user has added
 * @param state whether it runs
 * @param reasons why it, or one of its calculators, does not
 * @param calculators the ids of its calculators that run
 */
public record ListedPlugin(
        Path file,
        String id,
        String version,
        String description,
        String told,
        String provider,
        String requires,
        String hash,
        boolean shipped,
        State state,
        List<String> reasons,
        List<String> calculators) {
    /** Whether a plugin runs. */
    public enum State {
        RUNS,
        OFF,
        REFUSED
    }
}
