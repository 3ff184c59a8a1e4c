package planewright.app.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import planewright.api.quantity.Units;
import planewright.app.Bench;
import planewright.app.journal.CaptureLine.Joined;
import planewright.app.journal.CaptureLine.Measured;
import planewright.app.journal.CaptureLine.Words;

class CaptureLineTest {
    private final EntryRecord entry = Bench.entry(Bench.build("Grey heron"), "Evening");

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            left wing panel 212 g           | left wing panel  | 212   | g
            servo 2 arm 12 mm               | servo 2 arm      | 12    | mm
            root chord 3 1/2 in             | root chord       | 3 1/2 | [in_i]
            nose weight 12,5 g              | nose weight      | 12,5  | g
            washout -2°                     | washout          | -2    | deg
            pack at rest 3.84 V             | pack at rest     | 3.84  | V
            """)
    void aLineThatEndsInAQuantityIsAMeasurement(String line, String name, String number, String code) {
        assertThat(CaptureLine.of(line)).get().isInstanceOfSatisfying(Measured.class, measured -> {
            assertThat(measured.name()).isEqualTo(name);
            assertThat(measured.quantity().number()).isEqualTo(number);
            assertThat(Units.codeOf(measured.quantity().unit())).isEqualTo(code);
        });
    }

    @Test
    void thePlusMinusOfALineIsKept() {
        assertThat(CaptureLine.of("left wing panel 212 g ± 1 g"))
                .get()
                .isInstanceOfSatisfying(
                        Measured.class,
                        line -> assertThat(line.quantity().plusMinus()).contains("1"));
    }

    @ParameterizedTest
    @CsvSource({
        "fin joint contact adhesive 12 h, fin joint, contact adhesive, PT12H",
        "Joint slow epoxy 1 d, Joint, slow epoxy, PT24H",
        "spar JOINT 90 min, spar JOINT, '', PT1H30M",
        "Leitwerksfuge Kontaktkleber 12 h, Leitwerksfuge, Kontaktkleber, PT12H",
        "Holmklebung links Epoxid 1 d, Holmklebung, links Epoxid, PT24H",
        "fin fillet lightweight spackle 4 h, fin fillet, lightweight spackle, PT4H",
        "left spar foaming polyurethane glue 90 min, left spar, foaming polyurethane glue, PT1H30M",
        "motor mount 30-minute epoxy 2 h, motor mount, 30-minute epoxy, PT2H",
        "Flosse Kontaktkleber 12 h, Flosse, Kontaktkleber, PT12H"
    })
    void aLineWithJointThatEndsInADurationIsAJoint(String line, String name, String material, String cure) {
        assertThat(CaptureLine.of(line)).contains(new Joined(name, material, Duration.parse(cure)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "fin joint 18 g",
                "jointer blade 12 h",
                "fin joint glue 0 h",
                "fin joint glue 4000 d",
                "fin epoxy 3 g",
                "hot-melt glue 2 min",
                "pot life laminating epoxy 30 min",
                "Topfzeit Epoxid 30 min",
                "second coat 2 h"
            })
    void whatIsNoCureTimeOfAJointIsAMeasurement(String line) {
        assertThat(CaptureLine.of(line)).get().isInstanceOf(Measured.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Sanded the nose", "212 g", "flew circuit 3", "12 g ballast went in", "glue 12 furlongs"})
    void anythingElseIsWords(String line) {
        assertThat(CaptureLine.of("  " + line + " ")).contains(new Words(line));
    }

    @Test
    void aBlankLineIsNothing() {
        assertThat(CaptureLine.of(" \t ")).isEmpty();
    }

    @Test
    void aJointIsHeldFromNowUntilItsCureTimeIsOver() {
        var joint = CaptureLine.of("fin joint contact adhesive 12 h")
                .orElseThrow()
                .addedTo(entry, Bench.EVENING)
                .joints()
                .get(0);
        assertThat(joint.start()).isEqualTo(Bench.EVENING);
        assertThat(joint.fullyCured()).contains(Bench.EVENING.plusHours(12));
        assertThat(joint.handsOffUntil()).isEqualTo(Optional.empty());
    }

    @Test
    void linesAreAddedAfterWhatIsThere() {
        var first = CaptureLine.of("Sanded the nose").orElseThrow().addedTo(entry, Bench.EVENING);
        var both = CaptureLine.of("Covered it").orElseThrow().addedTo(first, Bench.EVENING);
        assertThat(both.text()).containsExactly("Sanded the nose", "Covered it");
        var weighed = CaptureLine.of("fin 18 g").orElseThrow().addedTo(both, Bench.EVENING);
        assertThat(weighed.measurements()).extracting(MeasurementRecord::name).containsExactly("fin");
        assertThat(weighed.text()).isEqualTo(both.text());
    }
}
