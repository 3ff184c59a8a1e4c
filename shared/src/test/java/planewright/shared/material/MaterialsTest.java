package planewright.shared.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashSet;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The table reads, every figure says how it is known and where it stands, and a builder's words find their material. */
class MaterialsTest {
    private static final Materials TABLE = Materials.table();

    @Test
    void everyFigureHasASourceAndSaysHowItIsKnown() {
        assertThat(TABLE.facts()).hasSizeGreaterThan(150);
        var seen = new HashSet<String>();
        for (var fact : TABLE.facts()) {
            assertThat(seen.add(fact.material() + "|" + fact.property()))
                    .as("%s of %s once", fact.property(), fact.material())
                    .isTrue();
            assertThat(fact.source()).as(fact.toString()).isNotBlank();
            assertThat(fact.known().split("/"))
                    .as(fact.toString())
                    .isSubsetOf("read", "memory", "common practice", "chosen", "-");
            assertThat(fact.heading()).isIn("mass", "strength", "cure");
            assertThat(fact.typical().isPresent() || !fact.note().isEmpty())
                    .as(fact.toString())
                    .isTrue();
        }
    }

    /** Handbook of Adhesives and Sealants, p. 356: full cure in 3-7 days; the middle is chosen. */
    @Test
    void figureIsReadWithItsRangeUnitAndSource() {
        var cured = TABLE.fact("30-minute epoxy", "fully cured").orElseThrow();
        assertThat(cured.low()).hasValue(72);
        assertThat(cured.high()).hasValue(168);
        assertThat(cured.unit()).isEqualTo("h");
        assertThat(cured.known()).isEqualTo("read/chosen/read");
        assertThat(cured.source()).contains("p. 356");
    }

    @Test
    void everythingThatCuresHasTimesATemperatureAndAWayOfCuring() {
        var names = TABLE.names(Materials.CURE);
        assertThat(names).hasSize(12);
        for (var name : names) {
            for (var property : new String[] {"hands off", "fully cured", "reference temperature"}) {
                assertThat(TABLE.fact(name, property).orElseThrow().typical())
                        .as("%s of %s", property, name)
                        .isPresent();
            }
            assertThat(TABLE.fact(name, "way of curing").orElseThrow().note())
                    .isIn("reaction", "moisture", "water", "solvent", "cooling");
        }
    }

    @ParameterizedTest
    @CsvSource({
        "Laminating Epoxy, laminating epoxy",
        "contact adhesive, solvent-based contact adhesive",
        "laminating epoxy with flock, laminating epoxy",
        "aliphatic wood glue, PVA or aliphatic wood glue",
        "polyurethane, foaming polyurethane glue",
        "spackle, ",
        "epoxy, ",
        "flexible hinge glue, ",
        "'', ",
        "'--', "
    })
    void wordsFindTheOnlyMaterialTheyCanMean(String words, String material) {
        assertThat(TABLE.meant(Materials.CURE, words).orElse(null)).isEqualTo(material);
    }

    @Test
    void rangeThatFallsIsRefused() {
        assertThatThrownBy(() -> new MaterialFact(
                        "cure",
                        "glue",
                        "hands off",
                        OptionalDouble.of(3),
                        OptionalDouble.of(2),
                        OptionalDouble.empty(),
                        "h",
                        "read",
                        "a sheet",
                        ""))
                .hasMessageContaining("hands off of 'glue'");
        assertThatThrownBy(() -> MaterialFact.of("cure\tglue")).hasMessageContaining("2 columns");
    }

    @Test
    void aMaterialMayBeNamedInGerman() {
        var table = Materials.table();
        assertThat(table.meant(Materials.CURE, "Kontaktkleber")).contains("solvent-based contact adhesive");
        assertThat(table.meant(Materials.CURE, "Laminierharz (Epoxid)")).contains("laminating epoxy");
        assertThat(table.meant(Materials.CURE, "Laminierharz Epoxid mit Flocken"))
                .contains("laminating epoxy");
        assertThat(table.meant(Materials.CURE, "Spucke")).isEmpty();
    }
}
