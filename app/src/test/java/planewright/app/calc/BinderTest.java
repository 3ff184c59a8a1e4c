package planewright.app.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import planewright.api.calculator.Finding;
import planewright.api.calculator.InputProblem;
import planewright.api.calculator.Language;
import planewright.api.figure.Outline;
import planewright.api.figure.Point;
import planewright.api.journal.BenchSession;
import planewright.api.quantity.Units;
import planewright.app.Bench;
import planewright.app.store.JsonFiles;
import planewright.shared.quantity.UnitChoice;

/** JSON becomes a record, or a list of problems that each name the input, what was given and what is accepted. */
class BinderTest {
    private static final Shape SHAPE = new EveryKind().described().inputs();

    private final Binder binder =
            new Binder(NoBuilds.READER, Bench.EVENING.plusSeconds(40), Language.ENGLISH, UnitChoice.NONE);

    @Test
    void everyKindIsBound() throws Exception {
        var inputs = bound("""
            {"parts": [{"name": "motor", "mass": "62 g ± 1 g", "x": {"value": "3 1/2", "unit": "[in_i]"}},
                       {"mass": 7}],
             "scales": [{"name": "nose", "reading": "0.5 kg"}],
             "wing": {"value": 0.212, "unit": "kg", "plusMinus": 0.001},
             "targetX": "9.2 cm", "room": "293.15 K", "datum": "leading edge", "wet": true, "coats": 3,
             "glue": "epoxy", "closed": "2025-03-14 20:15", "sanded": "2025-03-15T07:00:30", "drying": "1 1/2 d",
             "joints": [{"name": "fin", "start": "NOW", "cured": "2025-03-15 08:00"}], "filler": "own brew",
             "fin": {"width": 60, "height": 80.5, "paths": [{"start": [0, 0], "pieces": [[60, 0], [60, 20, 50, 70, 40, 80]],
               "closed": true}]},
             "sessions": {"week": [{"day": "tuesday", "from": "19:00", "to": "21:30"}], "otherDays": [], "shop": []},
             "photo": {"hash": "%1$s", "type": "jpg", "caption": "wing"},
             "shape": {"unit": "mm", "angleUnit": "deg", "surfaces": [{"name": "wing", "x": 0, "y": 0, "z": 0,
               "mirrored": true, "panels": [{"rootChord": 260, "tipChord": 180, "span": 500}]}], "bodies": []}}
            """.formatted("ab".repeat(32)));
        var motor = inputs.parts().get(0);
        assertThat(motor.name()).isEqualTo("motor");
        assertThat(motor.mass().in(Units.KILOGRAM)).isCloseTo(0.062, within(1e-12));
        assertThat(motor.mass().spreadIn(Units.GRAM)).isCloseTo(1, within(1e-9));
        // 3 1/2 in = 88.9 mm: NIST SP 811 (2008), appendix B, 1 in = 25.4 mm exactly
        assertThat(motor.x().orElseThrow().in(Units.MILLIMETRE)).isCloseTo(88.9, within(1e-9));
        assertThat(inputs.parts().get(1).name()).isEmpty();
        assertThat(inputs.parts().get(1).mass().in(Units.GRAM)).isCloseTo(7, within(1e-9));
        assertThat(inputs.parts().get(1).x()).isEmpty();
        assertThat(inputs.scales().get(0).reading().in(Units.GRAM)).isCloseTo(500, within(1e-9));
        assertThat(inputs.wing().in(Units.GRAM)).isCloseTo(212, within(1e-9));
        assertThat(inputs.wing().spreadIn(Units.GRAM)).isCloseTo(1, within(1e-9));
        assertThat(inputs.targetX().orElseThrow().in(Units.METRE)).isCloseTo(0.092, within(1e-12));
        assertThat(inputs.room().in(Units.CELSIUS)).isCloseTo(20, within(1e-9));
        assertThat(inputs.datum()).isEqualTo("leading edge");
        assertThat(inputs.wet()).isTrue();
        assertThat(inputs.coats()).isEqualTo(3);
        assertThat(inputs.glue()).isEqualTo(EveryKind.Glue.EPOXY);
        assertThat(inputs.closed()).isEqualTo("2025-03-14T20:15");
        assertThat(inputs.sanded()).contains(LocalDateTime.of(2025, 3, 15, 7, 0, 30));
        assertThat(inputs.drying().in(Units.HOUR)).isCloseTo(36, within(1e-9));
        assertThat(inputs.joints().get(0).start()).isEqualTo(Bench.EVENING);
        assertThat(inputs.joints().get(0).handsOff()).isEmpty();
        assertThat(inputs.joints().get(0).cured()).contains(LocalDateTime.of(2025, 3, 15, 8, 0));
        assertThat(inputs.filler()).isEqualTo("own brew");
        var fin = inputs.fin().orElseThrow();
        assertThat(fin.height()).isEqualTo(80.5);
        assertThat(fin.paths().get(0).closed()).isTrue();
        assertThat(fin.paths().get(0).pieces())
                .containsExactly(
                        new Outline.Line(new Point(60, 0)),
                        new Outline.Curve(new Point(60, 20), new Point(50, 70), new Point(40, 80)));
        // 18 March 2025 was a Tuesday
        assertThat(inputs.sessions().orElseThrow().sessions(LocalDate.of(2025, 3, 18)))
                .containsExactly(new BenchSession(LocalTime.of(19, 0), LocalTime.of(21, 30)));
        assertThat(inputs.photo().orElseThrow().hash()).startsWith("abab");
        assertThat(inputs.shape()
                        .orElseThrow()
                        .surfaces()
                        .get(0)
                        .panels()
                        .get(0)
                        .span())
                .isCloseTo(0.5, within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"{}", "{\"wing\": null, \"targetX\": \"\", \"coats\": \" \", \"shape\": null, \"parts\": null}"})
    void whatIsLeftOutIsAsDescribed(String json) throws Exception {
        var inputs = bound(json);
        assertThat(inputs.wing().in(Units.GRAM)).isCloseTo(212, within(1e-9));
        assertThat(inputs.targetX()).isEmpty();
        assertThat(inputs.datum()).isEmpty();
        assertThat(inputs.wet()).isFalse();
        assertThat(inputs.coats()).isEqualTo(2);
        assertThat(inputs.glue()).isEqualTo(EveryKind.Glue.WHITE_GLUE);
        assertThat(inputs.closed()).isEqualTo(Bench.EVENING);
        assertThat(inputs.sanded()).isEmpty();
        assertThat(inputs.drying().in(Units.MINUTE)).isCloseTo(45, within(1e-9));
        assertThat(inputs.joints()).isEmpty();
        assertThat(inputs.parts()).isEmpty();
        assertThat(inputs.shape()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        {"wing": "12 mm"}                      | wing           | Wing mass          | 12 mm        | kg, g, mg, lb, oz
        {"wing": "heavy"}                      | wing           | Wing mass          | heavy        | a number and a unit
        {"wing": "-1 g"}                       | wing           | Wing mass          | -1 g         | at least 0 g
        {"wing": "51 kg"}                      | wing           | Wing mass          | 51 kg        | at most 50 kg
        {"wing": {"value": 3, "unit": "stone"}}| wing           | Wing mass          | 3 stone      | kg, g, mg, lb, oz
        {"wing": {"unit": "g"}}                | wing           | Wing mass          | unit         | "value": 12
        {"wing": [1]}                          | wing           | Wing mass          | [1]          | "value": 12
        {"wing": true}                         | wing           | Wing mass          | true         | "value": 12
        {"wing": 1e999}                        | wing           | Wing mass          | 999          | 212
        {"wing": "12 g ± -1 g"}                | wing           | Wing mass          | ± -1         | a number and a unit
        {"room": "-20 °C"}                     | room           | Room               | -20          | above -20 °C
        {"targetX": "1 kg"}                    | targetX        | Target x           | 1 kg         | m, cm, mm, in, ft
        {"datum": 7}                           | datum          | Datum              | 7            | a text
        {"wet": "perhaps"}                     | wet            | Wet                | perhaps      | yes or no
        {"coats": 2.5}                         | coats          | Coats              | 2.5          | a whole number
        {"coats": 99999999999}                 | coats          | Coats              | 99999999999  | a whole number
        {"coats": 0}                           | coats          | Coats              | 0            | at least 1
        {"coats": "ten"}                       | coats          | Coats              | ten          | a whole number
        {"glue": "spit"}                       | glue           | Glue               | spit         | white glue, epoxy
        {"closed": "tomorrow"}                 | closed         | Closed at          | tomorrow     | 2025-03-14 20:15
        {"closed": "2025-02-30 20:15"}         | closed         | Closed at          | 2025-02-30   | 2025-03-14 20:15
        {"closed": "+999999999-12-31T23:59"}   | closed         | Closed at          | +999999999   | from 1900 to 2199
        {"closed": "1899-12-31 23:59"}         | closed         | Closed at          | 1899         | from 1900 to 2199
        {"sanded": 20250314}                   | sanded         | Sanded at          | 20250314     | 2025-03-14 20:15
        {"drying": "0 h"}                      | drying         | Drying time        | 0 h          | above 0 s, at most 60 d
        {"drying": "61 d"}                     | drying         | Drying time        | 61 d         | above 0 s, at most 60 d
        {"joints": [{"name": "fin"}]}          | joints[0].start | closed of 'fin'   | missing      | now, or a time
        {"filler": 7}                          | filler         | Filler             | 7            | a text
        {"shape": "round"}                     | shape          | Shape              | round        | build.json
        {"shape": {"unit": "kg"}}              | shape          | Shape              | kg           | build.json
        {"fin": 7}                             | fin            | Fin                | 7            | an SVG file; there is no outline
        {"fin": {"width": 9}}                  | fin            | Fin                | 'paths' is missing | an outline
        {"fin": {"width": "9", "height": 9, "paths": [{"start": [0, 0], "pieces": [[1, 1]]}]}} | fin | Fin | '9' is no number | an outline
        {"fin": {"width": 9, "height": 9, "paths": []}} | fin   | Fin                | no lines     | an outline
        {"fin": {"width": -9, "height": 9, "paths": [{"start": [0, 0], "pieces": [[1, 1]]}]}} | fin | Fin | -9.0 mm | an outline
        {"fin": {"width": 9, "height": 9, "paths": [{"start": [0, 0], "pieces": [[1, 1, 2]]}]}} | fin | Fin | [1,1,2] | an outline
        {"fin": {"width": 9, "height": 9, "paths": [{"start": [0, 1e999], "pieces": [[1, 1]]}]}} | fin | Fin | Infinity | an outline
        {"sessions": "every day"}              | sessions       | Sessions           | every day    | calendar.json
        {"sessions": {"week": [{"day": "tuesday", "from": "21:00", "to": "19:00"}]}} | sessions | Sessions | 21:00 | calendar.json
        {"photo": {"hash": "../../etc", "type": "jpg"}} | photo | Photo              | ../../etc    | a picture of the journal
        {"photo": {"type": "jpg"}}             | photo          | Photo              | not readable | a picture of the journal
        {"parts": {"name": "motor"}}           | parts          | Parts              | motor        | a list of rows
        {"parts": ["motor"]}                   | parts[0]       | row 1 of Parts     | motor        | an object
        {"parts": [{"name": "motor"}]}         | parts[0].mass  | mass of 'motor'    | missing      | 12 g, above 0 g
        {"parts": [{"mass": "0 g"}]}           | parts[0].mass  | mass of row 1      | 0 g          | above 0 g
        {"parts": [{"name": "motor", "mass": "62 g", "weight": 1}]} | parts[0].weight | 'weight' of 'motor' | unknown | name, mass, x
        {"wingMass": "12 g"}                   | wingMass       | 'wingMass'         | unknown      | parts, scales, wing
        """)
    void refusalNamesInputValueAndWhatIsAccepted(String json, String path, String name, String value, String accepted)
            throws Exception {
        assertThat(bind(json)).isEmpty();
        assertThat(binder.problems()).hasSize(1);
        var problem = binder.problems().get(0);
        assertThat(problem.input()).isEqualTo(path);
        assertThat(problem.name()).contains(name);
        assertThat(problem.value()).contains(value);
        assertThat(problem.accepted()).contains(accepted);
        assertThat(problem.message()).doesNotContain("\n");
    }

    @Test
    void allProblemsAreCollected() throws Exception {
        assertThat(bind("{\"wing\": \"1 m\", \"coats\": 0, \"parts\": [{}, {\"mass\": \"-1 g\"}], \"zzz\": 1}"))
                .isEmpty();
        assertThat(binder.problems())
                .extracting(InputProblem::input)
                .containsExactlyInAnyOrder("zzz", "parts[0].mass", "parts[1].mass", "wing", "coats");
    }

    /** 12 g are 0.42 oz: NIST Special Publication 811 (2008), appendix B.8, 1 oz = 28.349 523 g. */
    @Test
    void whatIsMissingIsAskedForByAnExampleInTheUnitThatIsPreferred() throws Exception {
        var ounces = new Binder(
                NoBuilds.READER,
                Bench.EVENING,
                Language.ENGLISH,
                kind -> Optional.<Unit<?>>of(Units.OUNCE).filter(ounce -> Units.alike(ounce, kind)));
        for (var each : List.of(binder, ounces)) {
            each.bind(SHAPE, JsonFiles.parse("{\"parts\": [{}]}"));
        }
        assertThat(binder.problems().get(0).accepted()).startsWith("a quantity such as 12 g,");
        assertThat(ounces.problems().get(0).accepted()).startsWith("a quantity such as 0.42 oz,");
    }

    @Test
    void unusualIsAcceptedAndRemarkedOn() throws Exception {
        assertThat(bind("{\"wing\": \"9 kg\", \"parts\": [{\"name\": \"pin\", \"mass\": \"10 mg\"}]}"))
                .isPresent();
        assertThat(binder.unusual()).extracting(Finding::grade).containsOnly(Finding.Grade.LOOK_AGAIN);
        assertThat(binder.unusual())
                .extracting(Finding::text)
                .containsExactly(
                        "mass of 'pin' is 10 mg; usual is from 1 g up to 5 kg",
                        "Wing mass is 9 kg; usual is from 10 g up to 5 kg");
    }

    @Test
    void boundsThemselvesAreAcceptedWhereTheySayAtLeastAndAtMost() throws Exception {
        assertThat(bind("{\"wing\": \"0 g\", \"coats\": 9}")).isPresent();
        assertThat(bind("{\"wing\": \"50 kg\", \"coats\": 1}")).isPresent();
        assertThat(binder.problems()).isEmpty();
    }

    private EveryKind.Inputs bound(String json) throws Exception {
        var bound = bind(json);
        assertThat(binder.problems()).isEmpty();
        return (EveryKind.Inputs) bound.orElseThrow();
    }

    private java.util.Optional<Record> bind(String json) throws Exception {
        ObjectNode tree = JsonFiles.parse(json);
        return binder.bind(SHAPE, tree);
    }
}
