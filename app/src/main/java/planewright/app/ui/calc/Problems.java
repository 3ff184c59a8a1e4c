package planewright.app.ui.calc;

import java.util.List;
import java.util.stream.Collectors;
import planewright.api.calculator.InputProblem;
import planewright.app.ui.common.Texts;

/** What is wrong with inputs, as it is read. */
final class Problems {
    private Problems() {}

    /** One line that names the thing, the value, what is accepted and the way out. */
    static String text(InputProblem problem) {
        var line = Texts.PROBLEM.text(problem.name(), problem.value(), problem.accepted());
        return problem.wayOut().isEmpty() ? line : line + ". " + problem.wayOut();
    }

    /** All of them; empty where there are none. */
    static String text(List<InputProblem> problems) {
        return problems.stream().map(Problems::text).collect(Collectors.joining("; "));
    }
}
