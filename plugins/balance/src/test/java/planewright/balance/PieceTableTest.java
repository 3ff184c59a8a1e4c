package planewright.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Masses of coins and washers; sources, flags and tolerances stand in {@code published.json}. */
class PieceTableTest {
    /** United States Mint, "Coin Specifications": cent, nickel, dime, quarter, half dollar, dollar. */
    @Test
    void coinsOfTheUnitedStatesWeighWhatTheMintPrints() {
        var published = Published.of("E-01");
        assertThat(PieceTable.US_COINS).hasSize(6);
        for (int i = 0; i < PieceTable.US_COINS.size(); i++) {
            assertThat(PieceTable.US_COINS.get(i).grams()).isEqualTo(published.expected("mass", i));
        }
    }

    /** Council Regulation (EC) No 975/98: 1, 2, 5, 10, 20, 50 cent, 1 and 2 euro. */
    @Test
    void euroCoinsWeighWhatTheRegulationSays() {
        var published = Published.of("E-02");
        assertThat(PieceTable.EURO_COINS).hasSize(8);
        for (int i = 0; i < PieceTable.EURO_COINS.size(); i++) {
            assertThat(PieceTable.EURO_COINS.get(i).grams()).isEqualTo(published.expected("mass", i));
        }
    }

    /** ISO 7089 sizes, 7.85 g/cm³ (from memory): the arithmetic within 0.5 %; M2 and M2.5 are not offered. */
    @Test
    void washersWeighWhatTheirSizeSays() {
        var published = Published.of("E-04");
        for (int i = 0; i < PieceTable.STEEL_WASHERS.size(); i++) {
            double expected = published.expected("mass", i + 2);
            assertThat(PieceTable.STEEL_WASHERS.get(i).grams()).isCloseTo(expected, within(0.005 * expected));
        }
        assertThat(PieceTable.washer(2.2, 5, 0.3)).isCloseTo(published.expected("mass", 0), within(0.0002));
    }
}
