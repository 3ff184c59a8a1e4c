package planewright.app.ui.planform;

import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.app.ui.common.Amounts;
import planewright.app.ui.common.ShownUnits;
import planewright.shared.quantity.QuantityProblem;
import planewright.shared.quantity.QuantityText;

/** Numbers of a shape as people read and type them: lengths and areas in the unit of their choice, angles in degrees, shares in percent. */
public final class Lengths {
    /** Hundredths of what is usual; inches and metres are larger. */
    private static final double DIGITS = 100;

    private static final double MORE_DIGITS = 1000;

    private static final double TENTHS = 1e4;

    private static final double METRES_OF_AN_INCH = 0.0254;

    private final ShownUnits units;

    public Lengths(ShownUnits units) {
        this.units = units;
    }

    /** A length of metres. */
    String text(double metres) {
        return Amounts.of(rounded(Measured.of(metres, Units.METRE), unit()));
    }

    /** A step of metres; one of an inch as rules have it, halved and halved again. */
    String step(double metres) {
        return unit().equals(Units.INCH) ? "1/" + Math.round(METRES_OF_AN_INCH / metres) + " in" : text(metres);
    }

    /** A computed length of metres, to a tenth of a millimetre. */
    public String shown(double metres) {
        return text(Math.rint(metres * TENTHS) / TENTHS);
    }

    /** The same with its standard uncertainty. */
    public String shown(double metres, double doubt) {
        return Amounts.of(QuantityText.in(Measured.of(metres, doubt, Units.METRE), unit()));
    }

    /**
     * Metres; a number alone is in the unit that is shown.
     *
     * @throws QuantityProblem if it is no length
     */
    double metres(String typed) throws QuantityProblem {
        return QuantityText.parseLike(typed, unit())
                .measured()
                .asType(Length.class)
                .in(Units.METRE);
    }

    /** An angle of radians. */
    static String angle(double radians) {
        return Amounts.of(rounded(Measured.of(radians, Units.RADIAN), Units.DEGREE));
    }

    /**
     * Radians; a number alone is degrees.
     *
     * @throws QuantityProblem if it is no angle
     */
    static double radians(String typed) throws QuantityProblem {
        return QuantityText.parseLike(typed, Units.DEGREE)
                .measured()
                .asType(Angle.class)
                .in(Units.RADIAN);
    }

    static String percent(double share) {
        return Amounts.of(rounded(Measured.of(share, Units.NUMBER), Units.PERCENT));
    }

    /**
     * A share; a number alone is percent.
     *
     * @throws QuantityProblem if it is none
     */
    static double share(String typed) throws QuantityProblem {
        return QuantityText.parseLike(typed, Units.PERCENT)
                .measured()
                .asType(Dimensionless.class)
                .in(Units.NUMBER);
    }

    /** An area of square metres. */
    String area(double squareMetres) {
        return Amounts.of(rounded(
                Measured.of(squareMetres, Units.SQUARE_METRE),
                units.preferred(Units.SQUARE_DECIMETRE).orElse(Units.SQUARE_DECIMETRE)));
    }

    /** The unit of lengths that is shown. */
    public Unit<?> unit() {
        return units.preferred(Units.MILLIMETRE).orElse(Units.MILLIMETRE);
    }

    private static Measured<?> rounded(Measured<?> value, Unit<?> unit) {
        double digits = unit.equals(Units.MILLIMETRE) || !Units.alike(unit, Units.METRE) ? DIGITS : MORE_DIGITS;
        double number = QuantityText.in(value, unit).value().getValue().doubleValue();
        return Measured.of(Math.rint(number * digits) / digits + 0.0, unit);
    }
}
