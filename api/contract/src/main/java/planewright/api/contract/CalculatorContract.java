package planewright.api.contract;

import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.lang.reflect.ParameterizedType;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicNode;
import planewright.api.calculator.About;
import planewright.api.calculator.Calculator;
import planewright.api.calculator.Language;
import planewright.api.calculator.Run;
import planewright.api.calculator.Run.Cancelled;
import planewright.api.calculator.UnsuitableInput;

/**
 * What every calculator promises, as tests. A plugin runs them in one line:
 *
 * <pre>{@code
 * @TestFactory
 * Stream<DynamicNode> keepsTheContract() {
 *     return CalculatorContract.tests(new ClothMass.Inputs(...));
 * }
 * }</pre>
 *
 * <p>For each calculator: it says what it is; inputs and results are described in full, with units, bounds and initial
 * values that can be read; the inputs given are answered, with finite numbers throughout, and the same again in another
 * language and time zone; inputs that are empty, tiny, huge, negative, very long or at their bounds, one by one and several
 * at a time, are answered so too or refused by name; a table of words beside it ({@link Language}) has every text and no other; a computation that is stopped stops; no class of the plugin uses
 * windows, files, the network or the system's clock.
 */
public final class CalculatorContract {
    private final Calculator<?, ?> calculator;
    private final About about;
    private final Class<? extends Record> inputs;
    private final Class<? extends Record> results;
    private final List<Record> given;

    private CalculatorContract(Calculator<?, ?> calculator, List<Record> given) {
        this.calculator = calculator;
        this.about = calculator.getClass().getAnnotation(About.class);
        this.inputs = argument(calculator.getClass(), 0);
        this.results = argument(calculator.getClass(), 1);
        this.given = given.stream().filter(inputs::isInstance).toList();
    }

    /**
     * The tests of all calculators that the plugin's index lists, which {@code @Extension} writes.
     *
     * @param usual inputs as a builder would give them, at least one record for each calculator, with rows in its lists; each
     *     must be answered
     */
    public static Stream<DynamicNode> tests(Record... usual) {
        var calculators = listed();
        return Stream.concat(
                Stream.of(dynamicTest("lists calculators with different ids", () -> ids(calculators))),
                calculators.stream().map(each -> of(each, usual)));
    }

    /**
     * The tests of one calculator.
     *
     * @param calculator the calculator
     * @param usual as for {@link #tests}; records of other calculators are left out
     */
    public static DynamicContainer of(Calculator<?, ?> calculator, Record... usual) {
        var contract = new CalculatorContract(calculator, List.of(usual));
        return DynamicContainer.dynamicContainer(
                calculator.getClass().getSimpleName(),
                Stream.of(
                        dynamicTest("says what it is", contract::saysWhatItIs),
                        dynamicTest("describes its inputs", () -> Descriptions.inputs(contract.inputs)),
                        dynamicTest("describes its results", () -> Descriptions.results(contract.results)),
                        dynamicTest("answers usual inputs with finite numbers", contract::answersUsualInputs),
                        dynamicTest("answers alike in every language and time zone", contract::answersAlike),
                        dynamicTest("answers or refuses hostile inputs", contract::standsHostileInputs),
                        dynamicTest("stops where it is stopped", contract::stops),
                        dynamicTest("is translated in full where it is translated", contract::isTranslated),
                        dynamicTest(
                                "uses no windows, files, network or clock",
                                () -> ForbiddenUses.check(calculator.getClass()))));
    }

    /**
     * How many numbers there are in a calculator's results, for tests that look at more answers than these.
     *
     * @throws AssertionError where one of them is not finite, something is null, or a finding says nothing
     */
    public static int numbers(Record results) {
        return Answers.check("results", results);
    }

    private void saysWhatItIs() {
        Descriptions.about(calculator.getClass(), about);
    }

    private void answersUsualInputs() throws Exception {
        Checks.require(
                !given.isEmpty(),
                about.id() + " was given no inputs; accepted: a record of " + inputs.getSimpleName()
                        + " that it answers");
        for (var record : given) {
            Checks.require(
                    Records.copy(record).equals(record),
                    record + " is not equal to a record of the same components, so nothing can be read back");
            Answers.check(about.id(), compute(record, new StillRun()));
        }
    }

    private void answersAlike() throws Exception {
        var locale = Locale.getDefault();
        var zone = TimeZone.getDefault();
        for (var record : given) {
            var once = compute(record, new StillRun());
            try {
                Locale.setDefault(Locale.forLanguageTag("tr-TR"));
                TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
                Checks.require(
                        once.equals(compute(record, new StillRun())),
                        about.id() + " answers " + record + " otherwise the second time");
            } finally {
                Locale.setDefault(locale);
                TimeZone.setDefault(zone);
            }
        }
    }

    private void standsHostileInputs() throws Exception {
        var translations = new Translations(calculator.getClass());
        int turn = 0;
        for (var record : given) {
            for (var variant : HostileInputs.of(record, about.quick())) {
                stands(variant, translations.language(turn++));
            }
        }
        translations.requireSaid();
    }

    private void isTranslated() throws Exception {
        var translations = new Translations(calculator.getClass());
        translations.check(inputs, results);
        for (var record : given) {
            compute(record, new StillRun(translations.language(0)));
        }
        translations.requireSaid();
    }

    private void stands(HostileInputs.Variant variant, Language language) throws Exception {
        try {
            Answers.check(about.id() + " where " + variant.what(), compute(variant.inputs(), new StillRun(language)));
        } catch (UnsuitableInput refused) {
            Answers.check(about.id() + " where " + variant.what(), refused, inputs);
        } catch (RuntimeException | StackOverflowError failed) {
            throw new AssertionError(about.id() + " fails where " + variant.what() + ": " + failed, failed);
        }
    }

    /** One that tells no progress cannot be stopped, and must be quick. */
    private void stops() throws Exception {
        for (var record : given) {
            var run = new StillRun.Stopped();
            try {
                compute(record, run);
                Checks.require(
                        !run.asked(), about.id() + " goes on after it was stopped; accepted: Cancelled is let pass");
                Checks.require(
                        about.quick(), about.id() + " is not quick and tells no progress, so nobody can stop it");
            } catch (Cancelled stopped) {
                Checks.require(run.asked(), about.id() + " stops by itself");
            }
        }
    }

    @SuppressWarnings({"unchecked", "rawtypes"}) // its type arguments were read from its class
    private Record compute(Record record, Run run) throws UnsuitableInput {
        var answer = ((Calculator) calculator).compute(record, run);
        Checks.require(answer != null, about.id() + " answers null");
        return answer;
    }

    private static void ids(List<Calculator<?, ?>> calculators) {
        Checks.require(!calculators.isEmpty(), "no calculator is listed; is the class marked @Extension?");
        var ids = new HashSet<String>();
        for (var each : calculators) {
            var about = each.getClass().getAnnotation(About.class);
            Checks.require(
                    about != null && ids.add(about.id()),
                    each.getClass().getName()
                            + (about == null ? " has no @About" : " bears an id that another one bears"));
        }
    }

    private static List<Calculator<?, ?>> listed() {
        var calculators = new ArrayList<Calculator<?, ?>>();
        var loader = Thread.currentThread().getContextClassLoader();
        try {
            for (var index : Collections.list(loader.getResources("META-INF/extensions.idx"))) {
                for (var name : names(index)) {
                    if (Class.forName(name, true, loader)
                                    .getDeclaredConstructor()
                                    .newInstance()
                            instanceof Calculator<?, ?> calculator) {
                        calculators.add(calculator);
                    }
                }
            }
        } catch (IOException | ReflectiveOperationException unusable) {
            throw new AssertionError("the plugin's index of extensions cannot be used: " + unusable, unusable);
        }
        return calculators;
    }

    private static List<String> names(URL index) throws IOException {
        try (var lines = new BufferedReader(new InputStreamReader(index.openStream(), StandardCharsets.UTF_8))) {
            return lines.lines()
                    .map(line -> line.replaceFirst("#.*", "").strip())
                    .filter(line -> !line.isEmpty())
                    .toList();
        }
    }

    private static Class<? extends Record> argument(Class<?> calculator, int which) {
        for (var type : calculator.getGenericInterfaces()) {
            if (type instanceof ParameterizedType parameterized
                    && parameterized.getRawType() == Calculator.class
                    && parameterized.getActualTypeArguments()[which] instanceof Class<?> record
                    && record.isRecord()) {
                return record.asSubclass(Record.class);
            }
        }
        throw new AssertionError(
                calculator.getName() + " does not say its records; accepted: implements Calculator<Inputs, Results>");
    }
}
