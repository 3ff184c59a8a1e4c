package planewright.app.synthetic;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import javax.measure.Quantity;
import javax.measure.Unit;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.app.journal.MeasurementRecord;
import planewright.app.journal.SetUpRecord;
import planewright.shared.quantity.Written;
import tech.units.indriya.quantity.Quantities;

/** Measurements and values of the set-up, with numbers as somebody would have written them. */
final class Figures {
    private static final List<String> SIDES = List.of("", "left ", "right ", "upper ", "lower ", "inner ", "outer ");
    private static final List<String> PIECES = List.of(
            "wing panel",
            "tail",
            "fin",
            "aileron",
            "elevator",
            "rudder",
            "hatch",
            "canopy",
            "spar",
            "nose",
            "fuselage");
    private static final List<String> METHODS =
            List.of("", "kitchen scales", "letter scale", "steel rule", "calliper", "drawing", "supply meter", "clock");
    private static final List<Kind> KINDS = List.of(
            new Kind("", true, Units.GRAM, 4, 900, Spelling.WHOLE),
            new Kind("", true, Units.GRAM, 2, 90, Spelling.TENTHS),
            new Kind("", true, Units.OUNCE, 1, 30, Spelling.TENTHS),
            new Kind("", true, Units.OUNCE, 1, 12, Spelling.FRACTION),
            new Kind(" length", true, Units.MILLIMETRE, 20, 1400, Spelling.WHOLE),
            new Kind(" width", true, Units.INCH, 1, 40, Spelling.FRACTION),
            new Kind(" thickness", true, Units.MILLIMETRE, 1, 30, Spelling.TENTHS),
            new Kind(" angle", true, Units.DEGREE, -6, 12, Spelling.TENTHS),
            new Kind("all-up mass", false, Units.GRAM, 180, 4200, Spelling.WHOLE),
            new Kind("balance point", false, Units.MILLIMETRE, 20, 300, Spelling.WHOLE),
            new Kind("wing loading", false, Units.GRAM_PER_SQUARE_DECIMETRE, 12, 80, Spelling.TENTHS),
            new Kind("motor current", false, Units.AMPERE, 3, 60, Spelling.TENTHS),
            new Kind("motor power", false, Units.WATT, 40, 900, Spelling.WHOLE),
            new Kind("pack voltage", false, Units.VOLT, 7, 17, Spelling.TENTHS),
            new Kind("pack capacity", false, Units.MILLIAMPERE_HOUR, 300, 5000, Spelling.WHOLE),
            new Kind("cell resistance", false, Units.MILLIOHM, 2, 25, Spelling.TENTHS),
            new Kind("room temperature", false, Units.CELSIUS, 6, 30, Spelling.WHOLE),
            new Kind("hinge moment", false, Units.GRAM_MILLIMETRE, 500, 9000, Spelling.WHOLE),
            new Kind("glide speed", false, Units.METRE_PER_SECOND, 5, 16, Spelling.TENTHS),
            new Kind("cloth mass", false, Units.GRAM_PER_SQUARE_METRE, 20, 160, Spelling.WHOLE),
            new Kind("foam density", false, Units.KILOGRAM_PER_CUBIC_METRE, 14, 45, Spelling.WHOLE),
            new Kind("motor run", false, Units.MINUTE, 1, 12, Spelling.FRACTION));
    private static final List<Kind> SETTINGS = List.of(
            new Kind("balance point", false, Units.MILLIMETRE, 20, 300, Spelling.WHOLE),
            new Kind("aileron throw up", false, Units.MILLIMETRE, 6, 25, Spelling.WHOLE),
            new Kind("aileron throw down", false, Units.MILLIMETRE, 4, 15, Spelling.WHOLE),
            new Kind("elevator throw", false, Units.INCH, 0, 1, Spelling.FRACTION),
            new Kind("rudder throw", false, Units.DEGREE, 8, 35, Spelling.WHOLE),
            new Kind("elevator rate", false, Units.PERCENT, 40, 100, Spelling.WHOLE),
            new Kind("expo", false, Units.PERCENT, 10, 50, Spelling.WHOLE));

    private final Random random;
    private final SeededIds ids;

    Figures(Random random, SeededIds ids) {
        this.random = random;
        this.ids = ids;
    }

    /**
     * What is measured.
     *
     * @param name the whole name, or what follows on the piece
     * @param ofPiece whether a piece's name comes before
     * @param least in the unit
     * @param most in the unit
     */
    private record Kind(String name, boolean ofPiece, Unit<?> unit, int least, int most, Spelling spelling) {}

    private enum Spelling {
        WHOLE,
        TENTHS,
        FRACTION
    }

    MeasurementRecord measurement() {
        var kind = KINDS.get(random.nextInt(KINDS.size()));
        return new MeasurementRecord(
                ids.small(),
                (kind.ofPiece() ? piece() : "") + kind.name(),
                written(kind, random.nextInt(3) == 0),
                METHODS.get(random.nextInt(METHODS.size())));
    }

    SetUpRecord setting() {
        var kind = SETTINGS.get(random.nextInt(SETTINGS.size()));
        return new SetUpRecord(kind.name(), written(kind, false));
    }

    String piece() {
        return SIDES.get(random.nextInt(SIDES.size())) + PIECES.get(random.nextInt(PIECES.size()));
    }

    int between(int least, int most) {
        return least + random.nextInt(most - least + 1);
    }

    static <Q extends Quantity<Q>> Measured<Q> exactly(double number, Unit<Q> unit) {
        return new Measured<>(Quantities.getQuantity(number, unit), Optional.empty());
    }

    static <Q extends Quantity<Q>> Measured<Q> about(double number, double spread, Unit<Q> unit) {
        return new Measured<>(Quantities.getQuantity(number, unit), Optional.of(Quantities.getQuantity(spread, unit)));
    }

    private Written written(Kind kind, boolean withSpread) {
        int whole = between(kind.least(), kind.most());
        return switch (kind.spelling()) {
            case WHOLE ->
                new Written(
                        Integer.toString(whole),
                        kind.unit(),
                        withSpread ? Optional.of(Integer.toString(between(1, 5))) : Optional.empty());
            case TENTHS ->
                new Written(
                        whole + "." + random.nextInt(10),
                        kind.unit(),
                        withSpread ? Optional.of("0." + between(1, 9)) : Optional.empty());
            case FRACTION ->
                new Written(
                        (whole == 0 ? "" : whole + " ") + fraction(),
                        kind.unit(),
                        withSpread ? Optional.of("1/16") : Optional.empty());
        };
    }

    private String fraction() {
        int parts = 2 << random.nextInt(4);
        return (2 * random.nextInt(parts / 2) + 1) + "/" + parts;
    }
}
