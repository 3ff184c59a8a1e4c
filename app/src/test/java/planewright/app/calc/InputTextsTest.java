package planewright.app.calc;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import planewright.api.calculator.About;
import planewright.api.calculator.Calculator;
import planewright.api.calculator.Input;
import planewright.api.calculator.Result;
import planewright.api.calculator.Run;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.app.Bench;
import planewright.app.store.JsonFiles;
import planewright.shared.quantity.UnitChoice;

/** Inputs are read in the units and with the decimal sign of whoever reads; what is computed with is what was given. */
class InputTextsTest {
    private static final UnitChoice INCHES =
            kind -> Units.alike(kind, Units.INCH) ? Optional.of(Units.INCH) : Optional.empty();

    record Inputs(
            @Input(label = "Span", unit = "mm", atMost = "2 m", initial = "25.4 mm")
            Measured<Length> span) {}

    record Results(@Result(label = "Half", unit = "mm") Measured<Length> half) {}

    @About(id = "test.half", version = "1", title = "Half", question = "How much is half?", sources = "none")
    static final class Halves implements Calculator<Inputs, Results> {
        @Override
        public Results compute(Inputs inputs, Run run) {
            return new Results(Measured.of(inputs.span().in(Units.MILLIMETRE) / 2, Units.MILLIMETRE));
        }
    }

    private static Field span(Locale locale) throws Faulty {
        return Described.of(new Halves(), "test").in(locale).inputs().fields().get(0);
    }

    private static String node(String typed) throws Faulty {
        return InputTexts.node(span(Locale.ENGLISH), typed, INCHES).asText();
    }

    @ParameterizedTest
    @CsvSource({
        "12.5 mm ± 0.5 mm, 12.5 mm ± 0.5 mm, '12,5 mm ± 0,5 mm', '0,49 in ± 0,02 in'",
        "3 1/2 in, 3 1/2 in, 3 1/2 in, 3 1/2 in",
        "−254 mm, -254 mm, -254 mm, -10 in",
        "wide, wide, wide, wide"
    })
    void whatWasGivenIsReadInTheReadersWay(String given, String english, String german, String inches)
            throws Exception {
        var node = TextNode.valueOf(given);
        assertThat(InputTexts.shown(span(Locale.ENGLISH), node, UnitChoice.NONE))
                .isEqualTo(english);
        assertThat(InputTexts.shown(span(Locale.GERMANY), node, UnitChoice.NONE))
                .isEqualTo(german);
        assertThat(InputTexts.shown(span(Locale.GERMANY), node, INCHES)).isEqualTo(inches);
        assertThat(InputTexts.initial(span(Locale.GERMANY), UnitChoice.NONE)).isEqualTo("25,4 mm");
        assertThat(InputTexts.initial(span(Locale.GERMANY), INCHES)).isEqualTo("1 in");
    }

    /** Typed as 10, computed as 254 mm by the inch of NIST Special Publication 811: half of it is 127 mm. */
    @Test
    void aNumberAloneIsInTheUnitThatIsPreferred() throws Exception {
        assertThat(node("10")).isEqualTo("10 in");
        assertThat(node("9,5 ± 0,5")).isEqualTo("9,5 in ± 0,5 in");
        assertThat(node("3 1/2")).isEqualTo("3 1/2 in");
        assertThat(node("254 mm")).isEqualTo("254 mm");
        assertThat(node("wide")).isEqualTo("wide");
        assertThat(InputTexts.node(span(Locale.ENGLISH), " ", INCHES).isNull()).isTrue();
        assertThat(half(InputTexts.node(span(Locale.ENGLISH), "10", INCHES))).isEqualTo("127 mm");
        assertThat(half(InputTexts.node(span(Locale.ENGLISH), "10", UnitChoice.NONE)))
                .isEqualTo("5 mm");
    }

    @Test
    void heightsAreToldInFeetAndBareNumbersStay() {
        assertThat(INCHES.shown(Units.METRE)).isEqualTo(Units.FOOT);
        assertThat(INCHES.shown(Units.CENTIMETRE)).isEqualTo(Units.INCH);
        assertThat(INCHES.shown(Units.GRAM)).isEqualTo(Units.GRAM);
        UnitChoice percent = kind -> Optional.of(Units.PERCENT);
        assertThat(percent.shown(Units.NUMBER)).isEqualTo(Units.NUMBER);
    }

    /** At most 2 m are 78.74 in. */
    @Test
    void whatIsAcceptedIsToldInTheUnitThatIsPreferred() throws Exception {
        var halves = Described.of(new Halves(), "test");
        var inputs = JsonFiles.object().put("span", "2540 mm");
        var run = Runs.unwatched(Bench.inMemory(List.of(), List.of()), Bench.EVENING);
        var refused = (Outcome.Refused) Calculation.run(halves, inputs, run, INCHES);
        assertThat(refused.problems().get(0).message()).isEqualTo("Span is 100 in; accepted: at most 78.74 in");
        inputs.put("span", "10");
        assertThat(Calculation.run(halves, inputs, run, INCHES)).isInstanceOf(Outcome.Answered.class);
    }

    private static String half(JsonNode span) throws Exception {
        var halves = Described.of(new Halves(), "test");
        var inputs = JsonFiles.object();
        inputs.set("span", span);
        var outcome =
                Calculation.run(halves, inputs, Runs.unwatched(Bench.inMemory(List.of(), List.of()), Bench.EVENING));
        return ResultView.of(halves, (Outcome.Answered) outcome).values().get(0).text();
    }
}
