package planewright.api.contract;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.io.File;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.pf4j.Extension;
import planewright.api.calculator.About;
import planewright.api.calculator.Calculator;
import planewright.api.calculator.Finding;
import planewright.api.calculator.Input;
import planewright.api.calculator.InputProblem;
import planewright.api.calculator.Result;
import planewright.api.calculator.Run;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.figure.Chart;
import planewright.api.figure.Outline;
import planewright.api.journal.BenchCalendar;
import planewright.api.journal.Picture;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;

/** A calculator that keeps the contract passes every test of it; each breach fails the test that is meant for it. */
class CalculatorContractTest {
    private static final Strip.Inputs USUAL = new Strip.Inputs(
            "spar",
            Measured.of(120, Units.MILLIMETRE),
            Optional.empty(),
            3,
            List.of(new Strip.CutLine(Measured.of(40, Units.MILLIMETRE))));

    @Test
    void calculatorThatKeepsItPasses() {
        var tests = tests(new Strip(), USUAL);
        assertThat(tests).hasSize(9);
        for (var test : tests.subList(0, 8)) {
            assertThatCode(test.getExecutable()::execute)
                    .as(test.getDisplayName())
                    .doesNotThrowAnyException();
        }
    }

    /** Beside the calculator lies {@link Clockwork}. */
    @Test
    void allClassesOfThePluginAreLookedAt() {
        assertThat(catchThrowable(test(new Strip(), "uses no windows", USUAL).getExecutable()::execute))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("Clockwork.class uses");
    }

    /** One breach each, the test that finds it, and words of what it says. */
    enum Breach {
        NOT_A_NUMBER("hostile inputs", "NaN; accepted: a finite number") {
            @Override
            Strip.Results answer(Strip.Inputs inputs) {
                return result(inputs.length().in(Units.METRE) > 1e-6 ? 1 : Double.NaN, "enough");
            }
        },
        INFINITE("usual inputs", "Infinity; accepted: a finite number") {
            @Override
            Strip.Results answer(Strip.Inputs inputs) {
                return result(Double.POSITIVE_INFINITY, "enough");
            }
        },
        STACK_TRACE("hostile inputs", "fails where cuts is empty: java.lang.IndexOutOfBoundsException") {
            @Override
            Strip.Results answer(Strip.Inputs inputs) {
                return result(List.copyOf(inputs.cuts()).listIterator(1).previousIndex(), "enough");
            }
        },
        UNKNOWN_INPUT("hostile inputs", "refuses 'width', which is no input") {
            @Override
            Strip.Results answer(Strip.Inputs inputs) throws UnsuitableInput {
                throw new UnsuitableInput(List.of(new InputProblem("width", "Width", "0 mm", "above 0 mm", "")));
            }
        },
        SAYS_NOTHING("hostile inputs", "refuses without saying") {
            @Override
            Strip.Results answer(Strip.Inputs inputs) throws UnsuitableInput {
                throw new UnsuitableInput(List.of(new InputProblem("cuts[0].at", "Cut", "", "", "")));
            }
        },
        CHANGES_ITS_MIND("language", "otherwise the second time") {
            private final AtomicInteger count = new AtomicInteger();

            @Override
            Strip.Results answer(Strip.Inputs inputs) {
                return result(count.incrementAndGet(), "enough");
            }
        },
        SPEAKS_THE_LANGUAGE("language", "otherwise the second time") {
            @Override
            Strip.Results answer(Strip.Inputs inputs) {
                return result(1, String.format("%.1f mm", 1.5));
            }
        },
        BLANK_FINDING("usual inputs", "a finding that says nothing") {
            @Override
            Strip.Results answer(Strip.Inputs inputs) {
                return result(1, " ");
            }
        },
        NULL("usual inputs", "answers null") {
            @Override
            Strip.Results answer(Strip.Inputs inputs) {
                return null;
            }
        };

        private final String test;
        private final String words;

        Breach(String test, String words) {
            this.test = test;
            this.words = words;
        }

        abstract Strip.Results answer(Strip.Inputs inputs) throws UnsuitableInput;
    }

    @ParameterizedTest
    @EnumSource
    void everyBreachFailsTheTestThatIsMeantForIt(Breach breach) {
        var failed =
                catchThrowable(test(new Breaching(breach), breach.test, USUAL).getExecutable()::execute);
        assertThat(failed).isInstanceOf(AssertionError.class).hasMessageContaining(breach.words);
    }

    /** As it would be if it took for granted that an outline is closed, a calendar has sessions, a caption is short. */
    @ParameterizedTest
    @ValueSource(strings = {"outline is ", "calendar is ", "picture is "})
    void strangeOutlinesCalendarsAndPicturesAreTried(String component) {
        var usual = new Trusting.Inputs(Optional.empty(), Optional.empty(), Optional.empty());
        assertThatCode(test(new Trusting(""), "hostile inputs", usual).getExecutable()::execute)
                .doesNotThrowAnyException();
        assertThat(catchThrowable(
                        test(new Trusting(component), "hostile inputs", usual).getExecutable()::execute))
                .hasMessageContaining("strip.trusting fails where " + component);
    }

    @Test
    void withoutInputsThatItAnswersItIsNotChecked() {
        assertThat(catchThrowable(test(new Strip(), "usual inputs").getExecutable()::execute))
                .hasMessageContaining("strip.rest was given no inputs");
    }

    @Test
    void slowCalculatorThatCannotBeStoppedFails() {
        assertThat(catchThrowable(test(new Slow(), "stops", USUAL).getExecutable()::execute))
                .hasMessageContaining("strip.slow is not quick and tells no progress");
    }

    @Test
    void calculatorThatGoesOnAfterItWasStoppedFails() {
        assertThat(catchThrowable(test(new Deaf(), "stops", USUAL).getExecutable()::execute))
                .hasMessageContaining("goes on after it was stopped");
    }

    @Test
    void classesThatUseTheClockOrFilesAreFound() throws Exception {
        assertThat(uses(Clockwork.class))
                .contains(
                        "java/time/LocalDateTime.now()Ljava/time/LocalDateTime;",
                        "java/lang/System.nanoTime()J",
                        "java/io/File");
        assertThat(uses(Strip.class)).isEmpty();
    }

    private static Set<String> uses(Class<?> type) throws Exception {
        try (var compiled = type.getResourceAsStream(type.getName().replaceFirst(".*\\.", "") + ".class")) {
            return ForbiddenUses.forbidden(compiled);
        }
    }

    private static DynamicTest test(Calculator<?, ?> calculator, String words, Record... usual) {
        return tests(calculator, usual).stream()
                .filter(test -> test.getDisplayName().contains(words))
                .findFirst()
                .orElseThrow();
    }

    private static List<DynamicTest> tests(Calculator<?, ?> calculator, Record... usual) {
        return CalculatorContract.of(calculator, usual)
                .getChildren()
                .map(DynamicTest.class::cast)
                .toList();
    }

    /** A level is the one number of a chart that its record lets through whatever it is. */
    private static Strip.Results result(double level, String finding) {
        var axis = new Chart.Axis("Length", "mm");
        return new Strip.Results(
                Measured.of(1, Units.MILLIMETRE),
                new Chart.Lines(
                        "Strip", axis, axis, List.of(), List.of(new Chart.Level("end", level, Optional.empty()))),
                List.of(Finding.fine(finding)));
    }

    /** Keeps the contract. */
    @Extension
    @About(
            id = "strip.rest",
            version = "1",
            title = "Rest of a strip",
            question = "What is left of the strip?",
            sources = "common practice, no source",
            cautions = "Knife: cut away from the hand.")
    public static final class Strip implements Calculator<Strip.Inputs, Strip.Results> {
        public record CutLine(
                @Input(label = "Cut", help = "How long.", unit = "mm", above = "0 mm", atMost = "2 m")
                Measured<Length> at) {}

        public record Inputs(
                @Input(label = "Name", help = "What it is.") String name,

                @Input(
                        label = "Length",
                        help = "As bought.",
                        unit = "mm",
                        above = "0 mm",
                        atMost = "2 m",
                        initial = "1 m")
                Measured<Length> length,

                @Input(label = "Saw", help = "How wide it cuts.", unit = "mm", atLeast = "0 mm", atMost = "5 mm")
                Optional<Measured<Length>> saw,

                @Input(label = "Strips", help = "How many.", atLeast = "1", atMost = "9", initial = "1")
                int strips,

                @Input(label = "Cuts", help = "What is cut off.")
                List<CutLine> cuts) {}

        public record Results(
                @Result(label = "Rest", unit = "mm") Measured<Length> rest,
                @Result(label = "Chart") Chart chart,
                @Result(label = "Findings") List<Finding> findings) {}

        @Override
        public Results compute(Inputs inputs, Run run) throws UnsuitableInput {
            double rest = inputs.length().in(Units.MILLIMETRE) * inputs.strips()
                    - inputs.cuts().stream()
                            .mapToDouble(cut -> cut.at().in(Units.MILLIMETRE))
                            .sum();
            if (rest < 0) {
                throw new UnsuitableInput(List.of(
                        new InputProblem("cuts[0].at", "Cuts", "longer than the strip", "up to its length", "")));
            }
            return result(rest, "It is enough.");
        }
    }

    @About(id = "strip.breach", version = "1", title = "Breach", question = "What is wrong?")
    private static final class Breaching implements Calculator<Strip.Inputs, Strip.Results> {
        private final Breach breach;

        Breaching(Breach breach) {
            this.breach = breach;
        }

        @Override
        public Strip.Results compute(Strip.Inputs inputs, Run run) throws UnsuitableInput {
            return breach.answer(inputs);
        }
    }

    @About(id = "strip.slow", version = "1", title = "Slow", question = "What is left?", quick = false)
    private static final class Slow implements Calculator<Strip.Inputs, Strip.Results> {
        @Override
        public Strip.Results compute(Strip.Inputs inputs, Run run) {
            return result(1, "enough");
        }
    }

    @About(id = "strip.deaf", version = "1", title = "Deaf", question = "What is left?")
    private static final class Deaf implements Calculator<Strip.Inputs, Strip.Results> {
        @Override
        public Strip.Results compute(Strip.Inputs inputs, Run run) {
            try {
                run.progress(0.5, "sawing");
            } catch (Run.Cancelled notHeard) {
                return result(1, "enough");
            }
            return result(2, "enough");
        }
    }

    /** Fails on values of one component that it does not expect. */
    @About(id = "strip.trusting", version = "1", title = "Trusting", question = "What is it like?")
    private static final class Trusting implements Calculator<Trusting.Inputs, Strip.Results> {
        public record Inputs(
                @Input(label = "Outline", help = "Its shape.")
                Optional<Outline> outline,

                @Input(label = "Calendar", help = "When.") Optional<BenchCalendar> calendar,
                @Input(label = "Picture", help = "Of it.") Optional<Picture> picture) {}

        private final String trusted;

        Trusting(String trusted) {
            this.trusted = trusted;
        }

        @Override
        public Strip.Results compute(Inputs inputs, Run run) {
            boolean surprised = inputs.outline().isPresent() && trusted.startsWith("outline")
                    || inputs.calendar().filter(each -> each.week().isEmpty()).isPresent()
                            && trusted.startsWith("calendar")
                    || inputs.picture()
                                    .filter(each -> each.caption().length() > 1000)
                                    .isPresent()
                            && trusted.startsWith("picture");
            if (surprised) {
                throw new IllegalStateException("not expected");
            }
            return result(1, "enough");
        }
    }

    /** What no calculator may do. */
    private static final class Clockwork {
        Object uses() {
            return List.of(LocalDateTime.now(), System.nanoTime(), new File("x").exists());
        }
    }

    /** Described wrongly, each in one way. */
    @Test
    void wrongDescriptionsAreToldByTheirComponent() {
        record WrongUnit(
                @Input(label = "Length", help = "As bought.", unit = "ell")
                Measured<Length> length) {}
        record WrongBound(
                @Input(label = "Length", help = "As bought.", unit = "mm", atMost = "3 g")
                Measured<Length> length) {}
        record Outside(
                @Input(label = "Length", help = "As bought.", unit = "mm", atMost = "3 mm", initial = "4 mm")
                Measured<Length> length) {}
        record NoHelp(@Input(label = "Name") String name) {}
        record Twice(
                @Input(label = "Name", help = "What it is.") String one,
                @Input(label = "Name", help = "What it is.") String other) {}
        record NotSaid(String name) {}
        record NoValue(
                @Input(label = "Name", help = "What it is.") StringBuilder name) {}
        assertThat(catchThrowable(() -> Descriptions.inputs(NotSaid.class))).hasMessageContaining("is not public");
        Map.<Class<? extends Record>, String>of(
                        WrongUnit.class, "'length' of WrongUnit has the unit 'ell'",
                        WrongBound.class, "'3 g' measures something else",
                        Outside.class, "'4 mm' lies outside its own bounds",
                        NoHelp.class, "'name' of NoHelp has the help ''",
                        Twice.class, "has the label 'Name', which another one has",
                        NotSaid.class, "'name' of NotSaid has no @Input",
                        NoValue.class, "'name' of NoValue cannot be an input")
                .forEach((type, words) -> assertThat(
                                catchThrowable(() -> Descriptions.inputs(type.getRecordComponents())))
                        .hasMessageContaining(words));
    }
}
