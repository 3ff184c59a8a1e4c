package planewright.api.calculator;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Inputs that do not go together; lists every problem that was found. */
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

    public List<InputProblem> problems() {
        return List.copyOf(problems);
    }
}
