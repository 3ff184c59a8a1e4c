package planewright.app.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.InstanceOfAssertFactories.type;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import planewright.api.calculator.Finding;
import planewright.api.calculator.Run;
import planewright.api.figure.Chart;
import planewright.app.Bench;
import planewright.app.store.JsonFiles;

/** Whatever a calculator does, the outcome is one of four, and never a number that is none. */
class CalculationTest {
    @Test
    void answerCarriesRecordJsonInputsAndRemarks() throws Exception {
        var outcome =
                run(new EveryKind(), "{\"wing\": \"9 kg\", \"parts\": [{\"name\": \"motor\", \"mass\": \"62 g\"}]}");
        assertThat(outcome).isInstanceOf(Outcome.Answered.class);
        var answered = (Outcome.Answered) outcome;
        assertThat(answered.json().at("/mass/value").doubleValue()).isEqualTo(9062);
        assertThat(answered.json().at("/mass/unit").textValue()).isEqualTo("g");
        assertThat(answered.json().at("/mass/plusMinus").doubleValue()).isEqualTo(1);
        assertThat(answered.json().at("/lines/0/share/value").doubleValue()).isEqualTo(50);
        assertThat(answered.json().at("/glue").textValue()).isEqualTo("white glue");
        assertThat(answered.json().has("x")).isFalse();
        assertThat(answered.json().at("/findings/0/grade").textValue()).isEqualTo("fine");
        assertThat(answered.json().at("/proposals/1/kind").textValue()).isEqualTo("set-up value");
        assertThat(answered.inputs().at("/closed").textValue()).isEqualTo("2025-03-14T20:15");
        assertThat(answered.json().at("/dryAt").textValue()).isEqualTo("2025-03-14T21:15");
        assertThat(answered.json().has("sanded")).isFalse();
        assertThat(answered.json().at("/drying/value").doubleValue()).isEqualTo(45);
        assertThat(answered.json().at("/dryness/kind").textValue()).isEqualTo("over time");
        assertThat(answered.json().at("/proposals/2").toString())
                .isEqualTo("{\"kind\":\"joint\",\"name\":\"fin to hull\",\"material\":\"white glue\","
                        + "\"start\":\"2025-03-14T20:15\",\"handsOffUntil\":\"2025-03-14T21:15\","
                        + "\"fullyCured\":\"2025-03-15T20:15\"}");
        assertThat(answered.inputs().at("/coats").intValue()).isEqualTo(2);
        assertThat(answered.unusual())
                .extracting(Finding::text)
                .containsExactly("Wing mass is 9 kg; usual is from 10 g up to 5 kg");
    }

    @Test
    void timesAreReadAsADayAndAnHour() throws Exception {
        var every = new EveryKind();
        var view = ResultView.of(every.described(), (Outcome.Answered) run(every, "{}"));
        assertThat(view.values())
                .filteredOn(value -> value.label().equals("Dry at"))
                .extracting(ResultView.Value::text)
                .containsExactly("Fri 14 Mar 2025, 21:15");
    }

    @Test
    void chartsComeBackFromAKeptAnswerAsTheyWere() throws Exception {
        var answered = (Outcome.Answered) run(new EveryKind(), "{}");
        assertThat(KeptFigures.charts(answered.json()))
                .contains(EveryKind.overTime(Bench.EVENING), EveryKind.BANDS, EveryKind.SCATTER, EveryKind.REGION);
        ((com.fasterxml.jackson.databind.node.ObjectNode) answered.json().path("dryness")).put("from", "tomorrow");
        assertThat(KeptFigures.charts(answered.json())).hasSize(4);
    }

    @Test
    void bandsOverTimeComeBackAsTheyWere() {
        var chart = new Chart.BandsOverTime(
                "Cure",
                Bench.EVENING,
                new Chart.Axis("Done", "%"),
                List.of(new Chart.Band("likely", List.of(new Chart.Span(0, 0, 0, 0), new Chart.Span(2, 40, 60, 100)))),
                List.of(new Chart.Level("hands off", 50, Optional.empty())),
                List.of(new Chart.Moment("at the bench", Bench.EVENING.plusDays(1))));
        var results = JsonFiles.object();
        results.set("cure", FigureJson.chart(chart));
        assertThat(KeptFigures.charts(results)).containsExactly(chart);
    }

    /** Adding doubles gives 673.9999999999999 where the builder reads 674.0 g ± 1.0 g and the journal keeps that. */
    @Test
    void proposalsHaveTheDigitsThatTheJournalGets() throws Exception {
        var outcome = run(new EveryKind((inputs, run) -> EveryKind.answer(inputs, 673.9999999999999, bars(1))), "{}");
        var json = ((Outcome.Answered) outcome).json();
        assertThat(json.at("/proposals/0/value/value").doubleValue()).isEqualTo(674);
        assertThat(json.at("/proposals/0/value/plusMinus").doubleValue()).isEqualTo(1);
        assertThat(json.at("/proposals/1/value").has("plusMinus")).isFalse();
    }

    @Test
    void inputsOfAnAnswerGiveTheSameAnswerAgain() throws Exception {
        var described = new EveryKind().described();
        var first = (Outcome.Answered) run(
                new EveryKind(),
                "{\"wing\": \"3 1/2 oz\", \"targetX\": \"3 1/2 in\", \"datum\": \"nose\", \"wet\": \"yes\","
                        + " \"closed\": \"2025-03-14 20:15\", \"parts\": [{\"name\": \"motor\", \"mass\": \"62 g ± 1"
                        + " g\"}]}");
        var again = (Outcome.Answered) Calculation.run(described, first.inputs(), unwatched());
        assertThat(again.json()).isEqualTo(first.json());
        assertThat(again.inputs()).isEqualTo(first.inputs());
    }

    @Test
    void wrongInputIsRefusedWithoutComputing() throws Exception {
        var computed = new ArrayList<Object>();
        var calculator = new EveryKind((inputs, run) -> {
            computed.add(inputs);
            return EveryKind.answer(inputs);
        });
        assertThat(run(calculator, "{\"wing\": \"1 m\"}"))
                .asInstanceOf(type(Outcome.Refused.class))
                .extracting(Outcome.Refused::message)
                .isEqualTo("Wing mass is '1 m'; accepted: kg, g, mg, lb, oz");
        assertThat(computed).isEmpty();
    }

    @Test
    void unsuitableInputIsRefusedInTheCalculatorsWords() throws Exception {
        assertThat(run(new EveryKind(), "{\"coats\": 7}"))
                .asInstanceOf(type(Outcome.Refused.class))
                .extracting(Outcome.Refused::message)
                .isEqualTo("Coats is 7; accepted: any but 7. Sand one off");
    }

    static Stream<BiFunction<EveryKind.Inputs, Run, EveryKind.Results>> failures() {
        return Stream.of(
                (inputs, run) -> {
                    throw new IllegalStateException("no glue left");
                },
                (inputs, run) -> {
                    throw new AssertionError("no glue left");
                },
                (inputs, run) -> {
                    throw new NoClassDefFoundError("no glue left");
                },
                (inputs, run) -> {
                    throw new OutOfMemoryError("no glue left");
                },
                (inputs, run) -> without("no glue left"));
    }

    @ParameterizedTest
    @MethodSource("failures")
    void calculatorThatFailsIsNamed(BiFunction<EveryKind.Inputs, Run, EveryKind.Results> failure) throws Exception {
        assertThat(run(new EveryKind(failure), "{}"))
                .asInstanceOf(type(Outcome.Failed.class))
                .satisfies(failed -> {
                    assertThat(failed.message())
                            .contains("calculator bench.every of plugin bench 1.2.0 failed", "no glue left");
                    assertThat(failed.cause()).hasMessage("no glue left");
                });
    }

    @Test
    void endlessRecursionIsAFailureToo() throws Exception {
        assertThat(run(new EveryKind((inputs, run) -> EveryKind.answer(inputs, deeper(0), bars(1))), "{}"))
                .isInstanceOf(Outcome.Failed.class);
    }

    @Test
    void calculatorThatAnswersNothingFails() throws Exception {
        assertThat(run(new EveryKind((inputs, run) -> null), "{}")).isInstanceOf(Outcome.Failed.class);
    }

    static Stream<Chart> chartsThatAreNone() {
        return Stream.of(
                level(Double.NaN, Optional.empty()),
                level(Double.NEGATIVE_INFINITY, Optional.empty()),
                level(0, Optional.of(Double.POSITIVE_INFINITY)));
    }

    @ParameterizedTest
    @MethodSource("chartsThatAreNone")
    void numberThatIsNoneNeverComesOut(Chart chart) throws Exception {
        assertThat(run(new EveryKind((inputs, run) -> EveryKind.answer(inputs, 1, chart)), "{}"))
                .asInstanceOf(type(Outcome.Failed.class))
                .extracting(Outcome.Failed::message)
                .asString()
                .contains("result 'chart.levels[0].");
    }

    @ParameterizedTest
    @org.junit.jupiter.params.provider.ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY})
    void quantityThatIsNoneNeverComesOut(double mass) throws Exception {
        assertThat(run(new EveryKind((inputs, run) -> EveryKind.answer(inputs, mass, bars(1))), "{}"))
                .isInstanceOf(Outcome.Failed.class);
    }

    @Test
    void buildersStopIsHeardAtTheNextProgress() throws Exception {
        var heard = new ArrayList<String>();
        var calculator = new EveryKind((inputs, run) -> {
            for (int i = 0; i < 10; i++) {
                run.progress(i / 10.0, "step " + i);
            }
            return EveryKind.answer(inputs);
        });
        var run = new Runs(NoBuilds.READER, Bench.EVENING, (doing, done) -> heard.add(doing), () -> heard.size() == 3);
        assertThat(Calculation.run(calculator.described(), JsonFiles.object(), run))
                .isEqualTo(new Outcome.Stopped());
        assertThat(heard).containsExactly("step 0", "step 1", "step 2");
    }

    private static Outcome run(EveryKind calculator, String json) throws Exception {
        return Calculation.run(calculator.described(), JsonFiles.parse(json), unwatched());
    }

    private static Run unwatched() {
        return Runs.unwatched(NoBuilds.READER, Bench.EVENING);
    }

    private static Chart bars(double value) {
        return new Chart.Bars("b", "c", new Chart.Axis("a", "g"), List.of(new Chart.Bar("one", value, 0)));
    }

    private static Chart level(double from, Optional<Double> to) {
        var axis = new Chart.Axis("a", "g");
        return new Chart.Lines("l", axis, axis, List.of(), List.of(new Chart.Level("limit", from, to)));
    }

    private static double deeper(int depth) {
        return deeper(depth + 1) + 1;
    }

    /** Throws a checked exception that nobody declared, as code in other languages can. */
    @SuppressWarnings("unchecked")
    private static <T extends Exception> EveryKind.Results without(String message) throws T {
        throw (T) new java.io.IOException(message);
    }
}
