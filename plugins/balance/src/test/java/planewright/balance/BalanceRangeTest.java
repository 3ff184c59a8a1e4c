package planewright.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static planewright.api.quantity.Units.GRAM;
import static planewright.api.quantity.Units.GRAM_PER_SQUARE_DECIMETRE;
import static planewright.api.quantity.Units.MILLIMETRE;
import static planewright.api.quantity.Units.NUMBER;
import static planewright.api.quantity.Units.PERCENT;
import static planewright.api.quantity.Units.SQUARE_DECIMETRE;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.pf4j.Extension;
import planewright.api.calculator.About;
import planewright.api.calculator.Finding.Grade;
import planewright.api.calculator.Input;
import planewright.api.calculator.Proposal;
import planewright.api.calculator.Result;
import planewright.api.calculator.Run;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.contract.CalculatorContract;
import planewright.api.figure.Chart;
import planewright.api.journal.JournalReader;
import planewright.api.journal.Planform;
import planewright.api.journal.Planform.Body;
import planewright.api.journal.Planform.Panel;
import planewright.api.journal.Planform.Section;
import planewright.api.journal.Planform.Surface;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;

class BalanceRangeTest {
    private static final Surface WING = surface("wing", 0, true, new Panel(0.2, 0.2, 0.6, 0, 0, 0));
    private static final Surface TAIL = surface("tail", 0.7, true, new Panel(0.14, 0.12, 0.22, 0.1, 0, 0));
    private static final Run RUN = new Run() {
        @Override
        public void progress(double done, String doing) {
            assertThat(done).isBetween(0.0, 1.0);
        }

        @Override
        public JournalReader journal() {
            throw new UnsupportedOperationException("the range needs no journal");
        }

        @Override
        public LocalDateTime now() {
            return LocalDateTime.of(2026, 1, 1, 12, 0);
        }
    };

    /**
     * A rectangle of aspect ratio 6: area and chord by hand; Helmbold's slope of 4.5287 (Raymer, 6th edition, equation 12.6)
     * lies 2 to 9 % above a flat plate's; NACA Report 751 puts the aerodynamic centre near the quarter chord.
     */
    @Test
    void aRectangleIsAsFormulasSay() throws UnsuitableInput {
        var results = compute(new Planform(List.of(WING), List.of()), "", Optional.empty());
        assertThat(results.area().in(SQUARE_DECIMETRE)).isCloseTo(24, within(1e-9));
        assertThat(results.span().in(MILLIMETRE)).isCloseTo(1200, within(1e-9));
        assertThat(results.aspectRatio().in(NUMBER)).isCloseTo(6, within(1e-9));
        assertThat(results.meanChord().in(MILLIMETRE)).isCloseTo(200, within(1e-9));
        assertThat(results.liftSlope().in(NUMBER) / 4.5287).isBetween(0.91, 0.98);
        assertThat(results.neutralShare().in(PERCENT)).isCloseTo(25, within(2.0));
        assertThat(results.spanEfficiency().in(NUMBER)).isBetween(0.95, 1.0);
        assertThat(results.bodyShift().in(MILLIMETRE)).isZero();
        assertThat(results.balanceFrom().in(MILLIMETRE))
                .isCloseTo(results.neutralPoint().in(MILLIMETRE) - 20, within(1e-9));
        assertThat(results.balanceTo().in(MILLIMETRE))
                .isCloseTo(results.neutralPoint().in(MILLIMETRE) - 10, within(1e-9));
        assertThat(results.wingLoading().orElseThrow().in(GRAM_PER_SQUARE_DECIMETRE))
                .isCloseTo(50, within(1e-9));
    }

    @Test
    void aTailMovesTheNeutralPointAftAndANoseForward() throws UnsuitableInput {
        var nose = new Body(
                "fuselage", 0, List.of(new Section(-0.3, 0.08, 0.04, -0.04), new Section(0.8, 0.03, 0.02, -0.02)));
        var alone = compute(new Planform(List.of(WING), List.of()), "conventional", Optional.empty());
        var tailed = compute(new Planform(List.of(WING, TAIL), List.of()), "conventional", Optional.empty());
        var whole = compute(new Planform(List.of(WING, TAIL), List.of(nose)), "conventional", Optional.empty());
        assertThat(tailed.neutralShare().in(PERCENT) - alone.neutralShare().in(PERCENT))
                .isBetween(10.0, 60.0);
        assertThat(whole.bodyShift().in(MILLIMETRE)).isBetween(-20.0, -1.0);
        assertThat(whole.neutralPoint().in(MILLIMETRE))
                .isCloseTo(
                        tailed.neutralPoint().in(MILLIMETRE) + whole.bodyShift().in(MILLIMETRE), within(1e-9));
        assertThat(whole.neutralPoint().spreadIn(MILLIMETRE))
                .isGreaterThan(-whole.bodyShift().in(MILLIMETRE) / 4);
        assertThat(whole.surfaces()).hasSize(2);
        assertThat(whole.surfaces().stream()
                        .mapToDouble(line -> line.liftShare().in(PERCENT))
                        .sum())
                .isCloseTo(100, within(1e-9));
    }

    /** How far ahead of the neutral point in mean chords, and what is said of it. */
    @ParameterizedTest
    @CsvSource({
        "-0.05, STOP, behind the neutral point",
        "0.01, STOP, would not hold its attitude",
        "0.05, LOOK_AGAIN, touchy",
        "0.15, FINE, within the range",
        "0.30, LOOK_AGAIN, nose-heavy"
    })
    void aBalancePointIsHeldAgainstTheRange(double margin, Grade grade, String words) throws UnsuitableInput {
        var shape = new Planform(List.of(WING, TAIL), List.of());
        double neutral =
                compute(shape, "conventional", Optional.empty()).neutralPoint().in(MILLIMETRE);
        var results = compute(shape, "conventional", Optional.of(Measured.of(neutral - 200 * margin, MILLIMETRE)));
        assertThat(results.marginNow().orElseThrow().in(PERCENT)).isCloseTo(100 * margin, within(1e-6));
        assertThat(results.findings().get(0).grade()).isEqualTo(grade);
        assertThat(results.findings().get(0).text()).contains(words);
    }

    @ParameterizedTest
    @CsvSource({"tailless with elevons, 5, 10", "delta, 5, 12", "canard, 10, 20", "biplane, 8, 20", "V-tail, 8, 20"})
    void eachLayoutHasItsUsualMargin(String layout, double from, double to) throws UnsuitableInput {
        var results = compute(new Planform(List.of(WING), List.of()), layout, Optional.empty());
        double neutral = results.neutralPoint().in(MILLIMETRE);
        assertThat(neutral - results.balanceTo().in(MILLIMETRE)).isCloseTo(2 * from, within(1e-9));
        assertThat(neutral - results.balanceFrom().in(MILLIMETRE)).isCloseTo(2 * to, within(1e-9));
    }

    @Test
    void theRangeIsProposedAsSetUp() throws UnsuitableInput {
        var results = compute(new Planform(List.of(WING, TAIL), List.of()), "", Optional.empty());
        assertThat(results.proposals())
                .extracting(Proposal::name)
                .startsWith("balance point from", "balance point to", "neutral point")
                .contains("mean aerodynamic chord", "roll damping");
        assertThat(results.proposals()).allMatch(Proposal.NewSetUpValue.class::isInstance);
        assertThat(results.marginNow()).isEmpty();
        assertThat(results.findings().get(0).text()).contains("No balance point is known");
        assertThat(((Chart.Lines) results.liftChart()).series())
                .extracting(Chart.Series::name)
                .containsExactly("wing", "limit of wing", "tail", "limit of tail");
    }

    /** An untwisted, strongly tapered swept wing is known for stalling at its tips: any text on wings. */
    @Test
    void aTipThatWorksHardestIsNamed() throws UnsuitableInput {
        var tapered = surface("wing", 0, true, new Panel(0.4, 0.08, 0.7, Math.toRadians(35), 0, 0));
        assertThat(compute(new Planform(List.of(tapered), List.of()), "", Optional.empty())
                        .findings())
                .anyMatch(finding ->
                        finding.grade() == Grade.LOOK_AGAIN && finding.text().contains("drop a wing"));
    }

    /** A rear wing that is drawn from the fins inwards is the same as one drawn outwards. */
    @Test
    void itDoesNotMatterFromWhichEndAWingIsDrawn() throws UnsuitableInput {
        var outwards = surface("wing", 0, true, new Panel(0.3, 0.2, 0.7, Math.toRadians(10), 0, 0));
        var inwards = new Surface(
                "wing",
                0.7 * Math.tan(Math.toRadians(10)),
                0.7,
                0,
                true,
                List.of(new Panel(0.2, 0.3, 0.7, Math.toRadians(-10), Math.PI, 0)));
        var one = compute(new Planform(List.of(outwards), List.of()), "", Optional.empty());
        var other = compute(new Planform(List.of(inwards), List.of()), "", Optional.empty());
        assertThat(other.neutralPoint().in(MILLIMETRE))
                .isCloseTo(one.neutralPoint().in(MILLIMETRE), within(1e-6));
        assertThat(other.stallLift().in(NUMBER)).isCloseTo(one.stallLift().in(NUMBER), within(1e-6));
    }

    static Stream<Arguments> unsuitable() {
        return Stream.of(
                Arguments.of("'wing' and 'wing' lie on each other", List.of(WING, WING)),
                Arguments.of("without a wing", List.of()),
                Arguments.of(
                        "without a wing", List.of(surface("fin", 0, false, new Panel(1, 1, 1, 0, Math.PI / 2, 0)))),
                Arguments.of("twisted by NaN", List.of(surface("wing", 0, true, new Panel(1, 1, 1, 0, 0, Double.NaN)))),
                Arguments.of("swept by 86.0°", List.of(surface("wing", 0, true, new Panel(1, 1, 1, 1.501, 0, 0)))),
                Arguments.of("over the centre line", List.of(surface("wing", 0, true, new Panel(1, 1, 1, 0, 3, 0)))),
                Arguments.of(
                        "farther than 100 m", List.of(surface("wing", Double.NaN, true, new Panel(1, 1, 1, 0, 0, 0)))),
                Arguments.of(
                        "hardly any size",
                        List.of(surface("wing", 0, true, new Panel(0, 0, 1, 0, 0, 0), new Panel(0, 1, 1, 0, 0, 0)))),
                Arguments.of("61 panels", List.of(surface("wing", 0, true, many(61)))),
                Arguments.of(
                        "too many pieces",
                        List.of(surface("wing", 0, true, many(40)), surface("tail", 9, true, many(20)))));
    }

    @ParameterizedTest
    @MethodSource("unsuitable")
    void whatNoLatticeCanBeLaidOverIsRefused(String words, List<Surface> surfaces) {
        assertThatThrownBy(() -> compute(new Planform(surfaces, List.of()), "", Optional.empty()))
                .isInstanceOf(UnsuitableInput.class)
                .hasMessageContaining(words);
    }

    @Test
    void aMarginBandMustHaveItsEndsInOrder() {
        var inputs = new Shapes(WING).margin(15, 5).inputs();
        assertThatThrownBy(() -> new BalanceRange().compute(inputs, RUN))
                .isInstanceOf(UnsuitableInput.class)
                .hasMessageContaining("Margin from is 15 %");
    }

    /** Shapes of any size, some hardly a shape: every number is finite, or the shape is refused. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void whateverTheShapeNumbersAreFinite(long seed) {
        var random = new Random(seed);
        int answered = 0;
        for (int i = 0; i < 25; i++) {
            var surfaces = new ArrayList<Surface>();
            for (int count = random.nextInt(3); count >= 0; count--) {
                surfaces.add(new Surface(
                        "surface " + count,
                        pick(random, 0, 0.5, 50, -1e-300),
                        pick(random, 0, 0, 0, 0.3),
                        pick(random, 0, 0.2, 1e-9),
                        random.nextInt(5) > 0,
                        List.of(anyPanel(random), anyPanel(random)).subList(0, 1 + random.nextInt(2))));
            }
            var far = pick(random, 0.1, 1e-12, 60);
            var body = new Body("pod", 0, List.of(new Section(-far, 0, 0, 0), new Section(far, far, far, -far)));
            try {
                var shapes = new Shapes(new Planform(surfaces, List.of(body)))
                        .balancesAt(pick(random, 0, 1e5, -3))
                        .mass(Measured.of(pick(random, 1e-9, 900, 1e6), GRAM))
                        .speed(pick(random, 0.1, 12, 150))
                        .control(
                                "control",
                                "surface 0",
                                random.nextBoolean() ? Planform.Role.ELEVON : Planform.Role.RUDDERVATOR,
                                pick(random, 0, 50),
                                pick(random, 50.1, 100),
                                pick(random, 0, 75, 98));
                if (random.nextBoolean()) {
                    shapes.section("surface 0", pick(random, -20, 2), pick(random, -15, 0), pick(random, -0.5, 0.1), 1);
                }
                answered += Math.min(1, CalculatorContract.numbers(shapes.results()));
            } catch (UnsuitableInput refused) {
                assertThat(refused.problems()).isNotEmpty();
            }
        }
        assertThat(answered).isGreaterThan(3);
    }

    /** Shapes at which a lattice might stumble: slender, long, pointed, steeply swept, in each other's plane, all but touching. */
    static Stream<Arguments> extreme() {
        double right = Math.PI / 2;
        return Stream.of(
                Arguments.of("square", List.of(surface("wing", 0, true, new Panel(1, 1, 0.5, 0, 0, 0)))),
                Arguments.of(
                        "aspect ratio 1000", List.of(surface("wing", 0, true, new Panel(0.02, 0.02, 10, 0, 0, 0)))),
                Arguments.of("aspect ratio 0.01", List.of(surface("wing", 0, true, new Panel(10, 10, 0.05, 0, 0, 0)))),
                Arguments.of("pointed root", List.of(surface("wing", 0, true, new Panel(0, 1, 0.5, 0, 0, 0)))),
                Arguments.of("swept 84°", List.of(surface("wing", 0, true, new Panel(0.2, 0.1, 0.5, 1.466, 0, 0)))),
                Arguments.of("swept forward", List.of(surface("wing", 0, true, new Panel(0.2, 0.2, 0.5, -1, 0, 0)))),
                Arguments.of("steep V", List.of(surface("wing", 0, true, new Panel(0.2, 0.15, 0.7, 0, 1.4, 0)))),
                Arguments.of(
                        "tail touching the wing in its plane",
                        List.of(WING, surface("tail", 0.2, true, new Panel(0.1, 0.1, 0.2, 0, 0, 0)))),
                Arguments.of(
                        "tail far away in the wing's plane",
                        List.of(WING, surface("tail", 50, true, new Panel(0.1, 0.1, 0.2, 0, 0, 0)))),
                Arguments.of(
                        "box",
                        List.of(
                                WING,
                                new Surface("upper", 0, 0, 0.2, true, List.of(new Panel(0.2, 0.2, 0.6, 0, 0, 0))),
                                new Surface("side", 0, 0.6, 0, true, List.of(new Panel(0.2, 0.2, 0.2, 0, right, 0))))),
                Arguments.of(
                        "tail hanging through the wake",
                        List.of(
                                WING,
                                new Surface(
                                        "tail",
                                        0.7,
                                        0,
                                        0.1,
                                        true,
                                        List.of(new Panel(0.12, 0.08, 0.3, 0.17, -0.7, 0))))),
                Arguments.of("one wing only", List.of(surface("wing", 0, false, new Panel(0.2, 0.15, 0.7, 0, 0, 0)))));
    }

    /** Each is answered, and its aerodynamic centre lies on the aircraft. */
    @ParameterizedTest
    @MethodSource("extreme")
    void extremeShapesAreAnswered(String name, List<Surface> surfaces) throws UnsuitableInput {
        var results = new Shapes(new Planform(surfaces, List.of()))
                .mass(Measured.of(900, GRAM))
                .speed(12)
                .control("elevon", surfaces.get(0).name(), Planform.Role.ELEVON, 30, 100, 75)
                .results();
        assertThat(CalculatorContract.numbers(results)).as(name).isPositive();
        assertThat(results.neutralPoint().in(MILLIMETRE)).isBetween(-1000.0, 6000.0);
        assertThat(results.liftSlope().in(NUMBER)).isBetween(0.0, 2 * Math.PI);
        assertThat(results.latticeError().in(MILLIMETRE))
                .isLessThan(0.01 * results.meanChord().in(MILLIMETRE));
    }

    @Test
    void aBuilderCanStopIt() {
        var stopped = new Run() {
            @Override
            public void progress(double done, String doing) {
                throw new Cancelled();
            }

            @Override
            public JournalReader journal() {
                return RUN.journal();
            }

            @Override
            public LocalDateTime now() {
                return RUN.now();
            }
        };
        assertThatThrownBy(() -> new BalanceRange()
                        .compute(inputs(new Planform(List.of(WING), List.of()), "", Optional.empty()), stopped))
                .isInstanceOf(Run.Cancelled.class);
    }

    @Test
    void everythingIsDescribed() {
        var about = BalanceRange.class.getAnnotation(About.class);
        assertThat(about.id()).isEqualTo("balance.planform");
        assertThat(about.question()).endsWith("?");
        assertThat(about.cautions()).anyMatch(caution -> caution.contains("local rules"));
        assertThat(BalanceRange.class).hasAnnotation(Extension.class);
        for (var component : BalanceRange.Inputs.class.getRecordComponents()) {
            var input = component.getAnnotation(Input.class);
            assertThat(input.help()).as(component.getName()).matches("(?s)[A-Z].*\\.");
            unit(component, input.unit());
        }
        for (var results : List.of(
                BalanceRangeResults.class,
                BalanceRangeResults.SurfaceLine.class,
                BalanceRangeResults.ResponseLine.class,
                BalanceRangeResults.PowerLine.class,
                BalanceRangeResults.LatticeLine.class)) {
            for (var component : results.getRecordComponents()) {
                var result = component.getAnnotation(Result.class);
                assertThat(result.label()).as(component.getName()).isNotBlank();
                unit(component, result.unit());
            }
        }
    }

    private static void unit(RecordComponent component, String code) {
        boolean quantity = component.getGenericType() instanceof ParameterizedType type
                && type.getTypeName().contains(Measured.class.getName());
        assertThat(Units.ofCode(code).isPresent()).as("unit of %s", component).isEqualTo(quantity);
    }

    private static Panel anyPanel(Random random) {
        return new Panel(
                pick(random, 0.2, 0.4, 0, 30, 1e-4),
                pick(random, 0.2, 0.1, 0, 30),
                pick(random, 0.6, 0.3, 40, 1e-3),
                pick(random, 0, 0.5, -0.5, 1.4),
                pick(random, 0, 0.1, 1.5, Math.PI / 2, -0.3),
                pick(random, 0, -0.03, 0.4));
    }

    private static double pick(Random random, double... values) {
        return values[random.nextInt(values.length)];
    }

    private static Panel[] many(int count) {
        return Stream.generate(() -> new Panel(0.2, 0.2, 1.0 / count, 0, 0, 0))
                .limit(count)
                .toArray(Panel[]::new);
    }

    private static Surface surface(String name, double x, boolean mirrored, Panel... panels) {
        return new Surface(name, x, 0, 0, mirrored, List.of(panels));
    }

    static BalanceRange.Inputs usual() {
        return new Shapes(WING, TAIL)
                .layout("conventional")
                .mass(Measured.of(1200, GRAM))
                .speed(12)
                .section("wing", 2, -3, -0.05, 1.1)
                .control("elevator", "tail", Planform.Role.ELEVATOR, 0, 100, 60)
                .control("ailerons", "wing", Planform.Role.AILERON, 60, 100, 75)
                .inputs();
    }

    private static BalanceRange.Inputs inputs(
            Planform planform, String layout, Optional<Measured<Length>> balancePoint) {
        return new Shapes(planform)
                .layout(layout)
                .balancesAt(balancePoint)
                .mass(Measured.of(1200, GRAM))
                .inputs();
    }

    private static BalanceRangeResults compute(
            Planform planform, String layout, Optional<Measured<Length>> balancePoint) throws UnsuitableInput {
        return new BalanceRange().compute(inputs(planform, layout, balancePoint), RUN);
    }
}
