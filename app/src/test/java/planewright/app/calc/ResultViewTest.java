package planewright.app.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Locale;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;
import planewright.api.calculator.About;
import planewright.api.calculator.Calculator;
import planewright.api.calculator.Input;
import planewright.api.calculator.Result;
import planewright.api.calculator.Run;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.app.store.JsonFiles;

/** A range is read as one figure, and what is of no use at the bench stands apart. */
class ResultViewTest {
    record Nothing(@Input(label = "Anything") boolean anything) {}

    record Range(
            @Result(label = "Error", unit = "mm", under = "Behind")
            Measured<Length> error,

            @Result(label = "Balance from", unit = "mm", upTo = "to")
            Measured<Length> from,

            @Result(label = "Balance to", unit = "mm") Measured<Length> to,

            @Result(label = "Mass", unit = "g") Measured<Mass> mass) {}

    record Endless(
            @Result(label = "From", unit = "mm", upTo = "mass")
            Measured<Length> from,

            @Result(label = "Mass", unit = "g") Measured<Mass> mass) {}

    @About(id = "test.range", version = "1", title = "Range", question = "Where?", sources = "none")
    static final class Ranges implements Calculator<Nothing, Range> {
        @Override
        public Range compute(Nothing inputs, Run run) {
            return new Range(mm(0.3), mm(203), mm(215), Measured.of(900, Units.GRAM));
        }
    }

    @Test
    void fromAndToAreOneFigureAndWhatStandsUnderAHeadingComesAfter() throws Exception {
        var described = Described.of(new Ranges(), "test");
        assertThat(texts(described)).containsExactly("[Balance from 203 mm to 215 mm, Mass 900 g]", "[Error 0.3 mm]");
        assertThat(texts(described.in(Locale.GERMAN)).get(0)).startsWith("[Balance from 203 mm bis 215 mm");
        var view = ResultView.of(described, answered());
        assertThat(view.byHeading().keySet()).containsExactly("", "Behind");
    }

    @Test
    void aRangeThatEndsInSomethingElseIsFaulty() {
        assertThatThrownBy(() -> ShapeReader.results(Endless.class))
                .isInstanceOf(Faulty.class)
                .hasMessageContaining("Endless.from runs up to 'mass'");
    }

    private static List<String> texts(Described described) {
        return ResultView.of(described, answered()).byHeading().values().stream()
                .map(values -> values.stream()
                        .map(value -> value.label() + " " + value.text())
                        .toList()
                        .toString())
                .toList();
    }

    private static Outcome.Answered answered() {
        return new Outcome.Answered(
                JsonFiles.object(),
                new Range(mm(0.3), mm(203), mm(215), Measured.of(900, Units.GRAM)),
                JsonFiles.object(),
                List.of());
    }

    private static Measured<Length> mm(double value) {
        return Measured.of(value, Units.MILLIMETRE);
    }
}
