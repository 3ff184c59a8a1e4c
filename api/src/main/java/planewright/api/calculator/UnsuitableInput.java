package planewright.api.calculator;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.apiguardian.api.API;

/** Inputs that do not go together; lists every problem that was found. */
@API(status = API.Status.MAINTAINED, since = "0.1.0")
public final class UnsuitableInput extends Exception {
    private static final long serialVersionUID = 1L;

    private final ArrayList<InputProblem> problems;

    /**
     * @param problems at least one
     * @throws IllegalArgumentException if there is none
     */
    public UnsuitableInput(List<InputProblem> problems) {
        super(problems.stream().map(InputProblem::message).collect(Collectors.joining("; ")));
        if (problems.isEmpty()) {
            throw new IllegalArgumentException("unsuitable input without a problem");
        }
        this.problems = new ArrayList<>(problems);
    }

    /** {@return every problem that was found, at least one} */
    public List<InputProblem> problems() {
        return List.copyOf(problems);
    }
}
