package planewright.api.calculator;

import org.apiguardian.api.API;
import org.pf4j.ExtensionPoint;

/**
 * A computation on what the journal holds. The class carries {@link About}, has a public constructor without parameters,
 * keeps no state, and is marked {@code @Extension}. It touches no files, no window and no clock but {@link Run#now()}.
 *
 * @param <I> record of inputs; every component carries {@link Input}
 * @param <R> record of results; every component carries {@link Result}
 */
@API(status = API.Status.MAINTAINED, since = "0.1.0")
public interface Calculator<I extends Record, R extends Record> extends ExtensionPoint {
    /**
     * The answer.
     *
     * @param inputs within the hard bounds that the annotations state, which the program has checked
     * @param run progress, cancelling, the journal to read
     * @return results without NaN or infinite numbers
     * @throws UnsuitableInput where inputs do not go together; it lists every problem found
     */
    R compute(I inputs, Run run) throws UnsuitableInput;
}
