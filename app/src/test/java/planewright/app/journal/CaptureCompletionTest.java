package planewright.app.journal;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CaptureCompletionTest {
    @ParameterizedTest
    @CsvSource({
        "left, true, left wing panel",
        "LEFT w, true, left wing panel",
        "l w p, true, left wing panel",
        "wi pa, true, left wing panel",
        "pa wi, false, left wing panel",
        "eft, false, left wing panel",
        "left wing panel, false, Left wing panel",
        "left wing panel was, false, left wing panel",
        "lö, true, Löwenkopf"
    })
    void eachTypedWordBeginsAWordOfTheNameInTheSameOrder(String typed, boolean fits, String name) {
        assertThat(CaptureCompletion.of(typed).orElseThrow().fits(name)).isEqualTo(fits);
    }

    @Test
    void theNameStandsInTheLineReadyForAQuantity() {
        var completion = CaptureCompletion.of("  wi pa").orElseThrow();
        assertThat(completion.isMaterial()).isFalse();
        assertThat(completion.begins("wing panel")).isFalse();
        assertThat(completion.with("wing panel")).isEqualTo("wing panel ");
    }

    @ParameterizedTest
    @CsvSource({
        "'fin joint ', '', 'fin joint laminating epoxy '",
        "'fin joint lam', lam, 'fin joint laminating epoxy '",
        "'Leitwerksfuge ep', ep, 'Leitwerksfuge laminating epoxy '"
    })
    void afterTheNameOfAJointAMaterialIsWanted(String line, String typed, String with) {
        var completion = CaptureCompletion.of(line).orElseThrow();
        assertThat(completion.isMaterial()).isTrue();
        assertThat(completion.typed()).isEqualTo(typed);
        assertThat(completion.fits("laminating epoxy")).isTrue();
        assertThat(completion.with("laminating epoxy")).isEqualTo(with);
    }

    @Test
    void aJointsNameItselfIsStillAName() {
        assertThat(CaptureCompletion.of("fin joint").orElseThrow().isMaterial()).isFalse();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "   ", "left wing panel 212 g", "fin joint contact adhesive 12 h"})
    void aLineThatSaysAllHasNothingToComplete(String line) {
        assertThat(CaptureCompletion.of(line)).isEmpty();
    }
}
