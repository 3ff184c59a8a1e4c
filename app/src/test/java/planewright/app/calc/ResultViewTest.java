package planewright.app.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
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
import planewright.shared.quantity.UnitChoice;

/** A range is read as one figure, and what is of no use at the bench stands apart. */
class ResultViewTest {
    private static final UnitChoice INCHES = kind -> Units.alike(kind, Units.INCH)
            ? Optional.of(Units.INCH)
            : Units.alike(kind, Units.OUNCE) ? Optional.of(Units.OUNCE) : Optional.empty();

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

    /** NIST Special Publication 811 (2008), appendix B: 25.4 mm and 28.349523125 g, so 203 mm are 7.992 in, 900 g 31.747 oz. */
    @Test
    void valuesAreReadInTheUnitsThatArePreferred() throws Exception {
        var view = ResultView.of(Described.of(new Ranges(), "test"), answered(), INCHES);
        assertThat(view.values().stream().map(ResultView.Value::text))
                .containsExactly("0.0118 in", "7.99 in to 8.46 in", "31.75 oz");
        assertThat(ResultView.of(Described.of(new Ranges(), "test"), answered(INCHES)))
                .as("of an answer that was told in them")
                .isEqualTo(view);
        assertThat(view.values().get(1).exact()).contains("7.9921 in, 8.4646 in");
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
        return answered(UnitChoice.NONE);
    }

    private static Outcome.Answered answered(UnitChoice units) {
        return new Outcome.Answered(
                JsonFiles.object(),
                new Range(mm(0.3), mm(203), mm(215), Measured.of(900, Units.GRAM)),
                JsonFiles.object(),
                List.of(),
                units);
    }

    private static Measured<Length> mm(double value) {
        return Measured.of(value, Units.MILLIMETRE);
    }
}
