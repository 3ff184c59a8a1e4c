package planewright.app.ui.calc;

import java.util.List;
import java.util.Locale;
import planewright.app.Program;
import planewright.app.calc.Described;

/** The calculators of all plugins in the language of the window. */
final class Calculators {
    private Calculators() {}

    /** Waits until the plugins are up. */
    static List<Described> of(Program program) {
        return program.plugins().join().calculators().stream()
                .map(each -> each.in(Locale.getDefault()))
                .toList();
    }
}
