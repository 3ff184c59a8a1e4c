package planewright.app.ui.calc;

import java.util.List;
import planewright.api.calculator.InputProblem;
import planewright.app.ui.common.Card;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.Stack;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Words;

/** What keeps a calculator from answering. */
final class ProblemPanel extends Card {
    private static final long serialVersionUID = 1L;

    ProblemPanel(List<InputProblem> problems) {
        super(new Stack(8));
        setName("problems");
        add(Look.heading(Texts.CANNOT_COMPUTE.text(), 1.05));
        problems.forEach(problem -> add(Words.of(Problems.text(problem))));
    }
}
