package planewright.api.calculator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.measure.Unit;
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

    /** An inch is 25.4 mm, an ounce 28.349523125 g, a foot 0.3048 m: NIST Special Publication 811 (2008), appendix B.8. */
    @Test
    void quantitiesAreReadInTheUnitsOfTheReader() {
        assertThat(Language.ENGLISH.quantity(12.34, Units.MILLIMETRE, 1)).isEqualTo("12.3 mm");
        assertThat(GERMAN.quantity(-12.34, Units.MILLIMETRE, 1)).isEqualTo("-12,3 mm");
        assertThat(GERMAN.quantity(3.25, Units.DEGREE, 1)).isEqualTo("3,3°");
        assertThat(Language.ENGLISH.quantity(0.35, Units.NUMBER, 2)).isEqualTo("0.35");
        var imperial = GERMAN.in(LanguageTest::imperial);
        assertThat(imperial.quantity(12.7, Units.MILLIMETRE, 1)).isEqualTo("0,500 in");
        assertThat(imperial.quantity(254, Units.MILLIMETRE, 0)).isEqualTo("10,00 in");
        assertThat(imperial.quantity(14.2, Units.GRAM, 1)).isEqualTo("0,501 oz");
        assertThat(Language.ENGLISH.in(told -> Units.CENTIMETRE).quantity(12.34, Units.MILLIMETRE, 1))
                .isEqualTo("1.23 cm");
        assertThat(Language.ENGLISH.in(told -> Units.MILLIMETRE).quantity(0.1234, Units.METRE, 3))
                .isEqualTo("123 mm");
        assertThat(imperial.quantity(3.048, Units.METRE, 0)).isEqualTo("10 ft");
        assertThat(imperial.number(25.4, Units.MILLIMETRE, 1)).isEqualTo("1,000");
        assertThat(imperial.and(Units.class).unit(Units.MILLIMETRE)).isEqualTo(Units.INCH);
        assertThat(imperial.quantity(21.5, Units.CELSIUS, 0)).isEqualTo("22 °C");
    }

    private static Unit<?> imperial(Unit<?> told) {
        return told.equals(Units.MILLIMETRE)
                ? Units.INCH
                : told.equals(Units.METRE) ? Units.FOOT : told.equals(Units.GRAM) ? Units.OUNCE : told;
    }

    /** 0 °C is 273.15 K: SI Brochure (9th edition), 2.3.1. */
    @Test
    void aScaleMayHaveItsZeroElsewhereAndAUnitOfAnotherKindIsRefused() {
        assertThat(Language.ENGLISH.in(told -> Units.KELVIN).quantity(21.5, Units.CELSIUS, 1))
                .isEqualTo("294.7 K");
        assertThatThrownBy(() -> Language.ENGLISH.in(told -> Units.GRAM).quantity(1, Units.MILLIMETRE, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContainingAll("mm", "g", "accepted: a unit of the same kind");
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
