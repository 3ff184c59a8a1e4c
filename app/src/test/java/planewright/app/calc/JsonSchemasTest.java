package planewright.app.calc;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Error;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import planewright.app.Bench;
import planewright.app.store.JsonFiles;

/** The description is a schema of JSON Schema 2020-12, and says of instances what the calculator says of them. */
class JsonSchemasTest {
    private static final Described EVERY = new EveryKind().described();
    private static final ObjectNode SCHEMA = JsonSchemas.describe(EVERY);
    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

    @Test
    void descriptionIsASchemaOfItsDialect() {
        assertThat(SCHEMA.path("$schema").textValue()).isEqualTo("https://json-schema.org/draft/2020-12/schema");
        var meta = REGISTRY.getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertThat(meta.validate(SCHEMA)).isEmpty();
        assertThat(meta.validate(JsonFiles.object().put("type", "nonsense"))).isNotEmpty();
    }

    @Test
    void everyInputAndResultIsDescribedByItsLabel() {
        for (var field : EVERY.inputs().fields()) {
            assertThat(SCHEMA.at("/properties/inputs/properties/" + field.name() + "/title")
                            .textValue())
                    .isEqualTo(field.label());
        }
        for (var field : EVERY.results().fields()) {
            assertThat(SCHEMA.at("/properties/results/properties/" + field.name() + "/title")
                            .textValue())
                    .isEqualTo(field.label());
        }
    }

    @Test
    void materialsAreOfferedAndOtherWordsLetThrough() {
        var filler = SCHEMA.at("/properties/inputs/properties/filler");
        assertThat(filler.at("/examples").toString()).contains("\"laminating epoxy\"", "\"hot-melt glue\"");
        assertThat(filler.has("enum")).isFalse();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{}",
                "{\"wing\": \"3 1/2 oz ± 1/8 oz\", \"coats\": 3, \"glue\": \"epoxy\", \"wet\": true, \"datum\":"
                        + " \"nose\"}",
                "{\"closed\": \"2025-03-14 20:15\", \"sanded\": \"2025-03-15T07:00:30\", \"filler\": \"own brew\"}",
                "{\"closed\": \"now\", \"drying\": \"90 min\", \"joints\": [{\"start\": \"2025-03-14T20:15\"}]}",
                "{\"wing\": 12.5, \"room\": {\"value\": 20, \"unit\": \"Cel\"}}",
                "{\"wing\": {\"value\": \"3 1/2\", \"unit\": \"[oz_av]\", \"plusMinus\": \"1/8\"}}",
                "{\"parts\": [{\"name\": \"motor\", \"mass\": \"62 g\"}, {\"mass\": 7, \"x\": \"3 in\"}]}",
                "{\"fin\": {\"width\": 60, \"height\": 80, \"paths\": [{\"start\": [0, 0], \"pieces\": [[60, 0], [1, 2, 3, 4, 5,"
                        + " 6]], \"closed\": true}]}}",
                "{\"sessions\": {\"week\": [{\"day\": \"tuesday\", \"from\": \"19:00\", \"to\": \"21:30\"}], \"otherDays\": [],"
                        + " \"shop\": []}}",
                "{\"photo\": {\"hash\": \"abababababababababababababababababababababababababababababababab\", \"type\": \"jpg\"}}"
            })
    void whatIsAcceptedIsValidAndSoIsWhatComesBack(String json) throws Exception {
        var given = JsonFiles.parse(json);
        assertThat(wrong(JsonFiles.object().set("inputs", given))).isEmpty();
        var outcome = Calculation.run(EVERY, given, Runs.unwatched(NoBuilds.READER, Bench.EVENING));
        assertThat(outcome).isInstanceOf(Outcome.Answered.class);
        var answered = (Outcome.Answered) outcome;
        var whole = JsonFiles.object().put("calculator", EVERY.id()).put("version", "2");
        whole.set("inputs", answered.inputs());
        whole.set("results", answered.json());
        assertThat(wrong(whole)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        {"wing": true}                                     | /inputs/wing
        {"wing": {"value": 1, "unit": "mm"}}               | /inputs/wing/unit
        {"wing": {"unit": "g"}}                            | /inputs/wing
        {"datum": 7}                                       | /inputs/datum
        {"coats": 2.5}                                     | /inputs/coats
        {"glue": "spit"}                                   | /inputs/glue
        {"closed": "tomorrow"}                             | /inputs/closed
        {"sanded": 7}                                      | /inputs/sanded
        {"joints": [{"name": "fin"}]}                      | /inputs/joints/0
        {"shape": "round"}                                 | /inputs/shape
        {"fin": {"width": 0, "height": 9, "paths": []}}    | /inputs/fin
        {"fin": 7}                                         | /inputs/fin
        {"sessions": "daily"}                              | /inputs/sessions
        {"photo": {"hash": "no", "type": "jpg"}}           | /inputs/photo
        {"parts": {}}                                      | /inputs/parts
        {"parts": [{"name": "motor"}]}                     | /inputs/parts/0
        {"parts": [{"mass": "1 g", "weight": 1}]}          | /inputs/parts/0
        {"wingMass": "12 g"}                               | /inputs
        """)
    void whatIsRefusedIsNotValid(String json, String place) throws Exception {
        var given = JsonFiles.parse(json);
        assertThat(Calculation.run(EVERY, given, Runs.unwatched(NoBuilds.READER, Bench.EVENING)))
                .isInstanceOf(Outcome.Refused.class);
        assertThat(wrong(JsonFiles.object().set("inputs", given))).anyMatch(line -> line.startsWith(place));
    }

    @Test
    void resultsOfAnotherFormAreNotValid() throws Exception {
        var whole = JsonFiles.object();
        whole.putObject("inputs");
        whole.putObject("results").put("mass", "heavy");
        assertThat(wrong(whole)).anyMatch(line -> line.startsWith("/results/mass"));
    }

    private static List<String> wrong(ObjectNode instance) {
        return REGISTRY.getSchema(SCHEMA).validate(instance).stream()
                .map(JsonSchemasTest::line)
                .collect(Collectors.toList());
    }

    private static String line(Error error) {
        return error.getInstanceLocation() + ": " + error.getMessage();
    }
}
