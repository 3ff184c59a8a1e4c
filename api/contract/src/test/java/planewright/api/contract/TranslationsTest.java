package planewright.api.contract;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class TranslationsTest {
    private static final Set<String> NEEDED = Set.of("Mass", "It is {0} of {1}.");
    private static final Set<String> KNOWN = Set.of("Mass", "It is {0} of {1}.", "level");

    @Test
    void aTableWithAllThatIsNeededAndNothingElseHasNoFlaws() {
        assertThat(flaws("Mass\tMasse", "It is {0} of {1}.\tVon {1} ist es {0}.", "level\tgerade"))
                .isEmpty();
    }

    @Test
    void gapsStraysAndSpoiltLinesAreNamed() {
        assertThat(flaws("Mass\tMasse")).containsExactly("it lacks 'It is {0} of {1}.'");
        assertThat(flaws("Mass\tMasse", "It is {0} of {1}.\tEs ist {0} von {2}."))
                .containsExactly(
                        "'Es ist {0} von {2}.' has the values [{0}, {2}]; accepted: those of the English, [{0}, {1}]");
        assertThat(flaws("Mass\tMasse", "It is {0} of {1}.\t{0}{1}", "Weight\tGewicht"))
                .containsExactly("nothing says 'Weight'");
        assertThat(flaws("Mass\tMasse", "Mass\tGewicht", "It is {0} of {1}.\t{0}{1}"))
                .containsExactly("'Mass' is there twice");
        assertThat(flaws("Mass", "Mass\t", "Mass\tMasse\tmass", "Mass\tMasse", "It is {0} of {1}.\t{0}{1}"))
                .hasSize(3)
                .allMatch(flaw -> flaw.endsWith("is not English, a tabulator and its translation"));
    }

    private static List<String> flaws(String... lines) {
        return Translations.flaws(List.of(lines), NEEDED, KNOWN);
    }
}
