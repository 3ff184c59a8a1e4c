package planewright.shared.material;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import planewright.api.calculator.Language;

class CautionsTest {
    /** Classes of the table of materials that hurt no more than anything at a bench: chosen. */
    private static final Set<String> HARMLESS = Set.of("PVA or aliphatic wood glue", "acrylic foam tape");

    @Test
    void eachMaterialThatCuresHasItsCaution() {
        var names = Materials.table().names(Materials.CURE);
        assertThat(names).hasSizeGreaterThan(10);
        for (var name : names) {
            assertThat(Cautions.usual(List.of(name)).isEmpty()).as(name).isEqualTo(HARMLESS.contains(name));
        }
    }

    @Test
    void wordsOfAStepCallForThemToo() {
        assertThat(Cautions.usual(List.of("Cut both cores with the hot wire", "XPS foam")))
                .hasSize(1)
                .first()
                .asString()
                .contains("fumes of melting foam");
        assertThat(Cautions.usual(List.of("Charge the flight pack, then fit the propeller")))
                .hasSize(2);
        assertThat(Cautions.usual(List.of("Thousands of ribs", "Draw the outline")))
                .isEmpty();
    }

    @Test
    void germanWordsCallForThemAndTheyAreReadInGerman() throws Exception {
        assertThat(Cautions.usual(List.of("Kerne mit dem Heißdraht schneiden"), Locale.GERMANY))
                .singleElement()
                .asString()
                .contains("Dämpfe von schmelzendem Schaum");
        var german = Language.words(Locale.GERMAN, Cautions.class);
        try (var table = Cautions.class.getResourceAsStream("cautions.tsv")) {
            assertThat(new String(table.readAllBytes(), StandardCharsets.UTF_8)
                            .lines()
                            .skip(1)
                            .map(line -> line.split("\t")[1]))
                    .isNotEmpty()
                    .allMatch(german::containsKey);
        }
        for (var fact : Materials.table().facts()) {
            if (fact.heading().equals(Materials.CURE)) {
                assertThat(german).containsKeys(fact.material(), fact.property());
                assertThat(german).containsKeys(fact.known().split("/"));
            }
        }
    }

    @Test
    void aCautionIsGivenOnce() {
        assertThat(Cautions.usual(List.of("laminating epoxy", "Laminating Epoxy", "epoxy")))
                .hasSize(1);
    }

    /** Two materials that stand side by side are not read as one. */
    @Test
    void wordsDoNotReachFromOneTextIntoTheNext() {
        assertThat(Cautions.usual(List.of("very hot", "wire"))).isEmpty();
    }
}
