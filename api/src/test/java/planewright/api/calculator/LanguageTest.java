package planewright.api.calculator;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import planewright.api.quantity.Units;

/** The table {@code words_de.tsv} beside this class. */
class LanguageTest {
    private static final Language GERMAN = Language.of(Locale.GERMANY, LanguageTest.class);

    @Test
    void aSentenceIsSaidInTheLanguageWithItsValuesInPlace() {
        assertThat(Language.ENGLISH.say("It balances {0} behind {1}.", "3 mm", "the target"))
                .isEqualTo("It balances 3 mm behind the target.");
        assertThat(GERMAN.say("It balances {0} behind {1}.", "3 mm", "dem Ziel"))
                .isEqualTo("Der Schwerpunkt liegt 3 mm hinter dem Ziel.");
    }

    @Test
    void numbersHaveTheSignsOfTheLanguage() {
        assertThat(GERMAN.number(12.345, 1)).isEqualTo("12,3");
        assertThat(Language.ENGLISH.number(12.345, 1)).isEqualTo("12.3");
        assertThat(Language.of(Locale.forLanguageTag("de-CH"), LanguageTest.class)
                        .number(12.345, 1))
                .isEqualTo("12.3");
    }

    @Test
    void whatTheTableLacksIsSaidInEnglishAndNoted() {
        var missing = new ArrayList<String>();
        var noting = Language.of(Locale.GERMAN, LanguageTest.class, missing::add);
        assertThat(noting.say("Not there: {0}.", 3)).isEqualTo("Not there: 3.");
        assertThat(noting.say("without a translation")).isEqualTo("without a translation");
        assertThat(missing).containsExactly("Not there: {0}.", "without a translation");
    }

    @Test
    void bracesOfABuilderAreNoPlacesAndPlacesWithoutAValueStay() {
        assertThat(Language.ENGLISH.say("'{0}' and '{1}'", "{1}", "$2 \\ {0}")).isEqualTo("'{1}' and '$2 \\ {0}'");
        assertThat(GERMAN.say("Of {1}, {0}", "a", "b")).isEqualTo("Von b: a {2} {x}");
    }

    @Test
    void anotherTableIsAskedAfterItsOwn() {
        assertThat(Language.of(Locale.GERMAN, Units.class).say("It balances {0} behind {1}.", 1, 2))
                .isEqualTo("It balances 1 behind 2.");
        assertThat(Language.of(Locale.GERMAN, Units.class)
                        .and(LanguageTest.class)
                        .say("It balances {0} behind {1}.", 1, 2))
                .isEqualTo("Der Schwerpunkt liegt 1 hinter 2.");
        assertThat(Language.words(Locale.FRENCH, LanguageTest.class)).isEmpty();
        assertThat(List.copyOf(Language.words(Locale.GERMAN, LanguageTest.class).keySet()))
                .doesNotContain("without a translation");
    }
}
