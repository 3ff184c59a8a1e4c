package planewright.balance;

import java.util.List;

/**
 * Pieces whose mass is published, so that nobody needs to weigh them.
 *
 * <p>Sources: United States Mint, "Coin Specifications". Council Regulation (EC) No 975/98 on denominations and technical
 * specifications of euro coins, as amended. Plain washers: the sizes of ISO 7089 (cited from memory) in carbon steel of 7.85
 * g/cm³ (common engineering value, from memory). All are nominal; worn coins and plated washers differ by a few percent.
 */
final class PieceTable {
    /** Steel, g/mm³. */
    private static final double STEEL = 7.85e-3;

    /** Share of the nominal mass taken as the ± of a piece; a US cent is quoted as 2.5 g within 0.1 g. */
    static final double SPREAD = 0.02;

    static final List<Piece> US_COINS = List.of(
            new Piece("US cent", 2.5),
            new Piece("US nickel", 5.0),
            new Piece("US dime", 2.268),
            new Piece("US quarter", 5.67),
            new Piece("US half dollar", 11.34),
            new Piece("US dollar", 8.1));

    static final List<Piece> EURO_COINS = List.of(
            new Piece("1 euro cent", 2.3),
            new Piece("2 euro cent", 3.06),
            new Piece("5 euro cent", 3.92),
            new Piece("10 euro cent", 4.1),
            new Piece("20 euro cent", 5.74),
            new Piece("50 euro cent", 7.8),
            new Piece("1 euro", 7.5),
            new Piece("2 euro", 8.5));

    static final List<Piece> STEEL_WASHERS = List.of(
            new Piece("M3 washer", washer(3.2, 7, 0.5)),
            new Piece("M4 washer", washer(4.3, 9, 0.8)),
            new Piece("M5 washer", washer(5.3, 10, 1.0)),
            new Piece("M6 washer", washer(6.4, 12, 1.6)),
            new Piece("M8 washer", washer(8.4, 16, 1.6)),
            new Piece("M10 washer", washer(10.5, 20, 2.0)));

    /**
     * A piece.
     *
     * @param name what a builder calls it
     * @param grams its nominal mass
     */
    record Piece(String name, double grams) {}

    private PieceTable() {}

    /** Mass of a flat ring of steel, g; diameters and height in mm. */
    static double washer(double hole, double outside, double height) {
        return STEEL * Math.PI / 4 * (outside * outside - hole * hole) * height;
    }
}
