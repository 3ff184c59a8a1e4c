package planewright.api.calculator;

import java.io.Serializable;
import org.apiguardian.api.API;

/**
 * An input that cannot be computed with.
 *
 * @param input path of the component: {@code parts[2].mass}; empty where the whole does not go together
 * @param name what the builder calls it: {@code mass of 'rear servo'}
 * @param value what was given, with its unit
 * @param accepted what is accepted: {@code above 0 g}
 * @param wayOut what to do about it; may be empty
 */
@API(status = API.Status.MAINTAINED, since = "0.1.0")
public record InputProblem(String input, String name, String value, String accepted, String wayOut)
        implements Serializable {
    /** {@return one line that names the thing, the value, what is accepted and the way out} */
    public String message() {
        var line = name + " is " + value + "; accepted: " + accepted;
        return wayOut.isEmpty() ? line : line + ". " + wayOut;
    }
}
