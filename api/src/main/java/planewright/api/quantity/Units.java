package planewright.api.quantity;

import static javax.measure.MetricPrefix.CENTI;
import static javax.measure.MetricPrefix.DECI;
import static javax.measure.MetricPrefix.HECTO;
import static javax.measure.MetricPrefix.MEGA;
import static javax.measure.MetricPrefix.MILLI;
import static tech.units.indriya.AbstractUnit.ONE;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Acceleration;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.ElectricCharge;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Force;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import org.apiguardian.api.API;

/**
 * The units a builder writes, each with the code that files carry and the symbol that is shown.
 *
 * <p>Codes are those of The Unified Code for Units of Measure (UCUM), version 2.1, case-sensitive variant. The factors
 * of the inch, the pound, the ounce, standard gravity and the kilogram-force are the exact ones of NIST Special Publication
 * 811 (2008), appendix B.
 */
@API(status = API.Status.MAINTAINED, since = "0.1.0")
public final class Units {
    private static final List<Coded> TABLE = new ArrayList<>();

    public static final Unit<Mass> KILOGRAM = add("kg", "kg", tech.units.indriya.unit.Units.KILOGRAM);
    public static final Unit<Mass> GRAM = add("g", "g", tech.units.indriya.unit.Units.GRAM);
    public static final Unit<Mass> MILLIGRAM = add("mg", "mg", MILLI(GRAM));
    public static final Unit<Mass> POUND = add("[lb_av]", "lb", KILOGRAM.multiply(0.45359237));
    public static final Unit<Mass> OUNCE = add("[oz_av]", "oz", KILOGRAM.multiply(0.028349523125));

    public static final Unit<Length> METRE = add("m", "m", tech.units.indriya.unit.Units.METRE);
    public static final Unit<Length> CENTIMETRE = add("cm", "cm", CENTI(METRE));
    public static final Unit<Length> MILLIMETRE = add("mm", "mm", MILLI(METRE));
    public static final Unit<Length> INCH = add("[in_i]", "in", METRE.multiply(0.0254));
    public static final Unit<Length> FOOT = add("[ft_i]", "ft", METRE.multiply(0.3048));

    public static final Unit<Area> SQUARE_METRE = add("m2", "m²", tech.units.indriya.unit.Units.SQUARE_METRE);
    public static final Unit<Area> SQUARE_DECIMETRE = add("dm2", "dm²", area(DECI(METRE)));
    public static final Unit<Area> SQUARE_CENTIMETRE = add("cm2", "cm²", area(CENTIMETRE));
    public static final Unit<Area> SQUARE_MILLIMETRE = add("mm2", "mm²", area(MILLIMETRE));
    public static final Unit<Area> SQUARE_INCH = add("[sin_i]", "in²", area(INCH));

    public static final Unit<Volume> CUBIC_METRE = add("m3", "m³", tech.units.indriya.unit.Units.CUBIC_METRE);
    public static final Unit<Volume> MILLILITRE =
            add("mL", "ml", CENTIMETRE.pow(3).asType(Volume.class));

    public static final Unit<Angle> RADIAN = add("rad", "rad", tech.units.indriya.unit.Units.RADIAN);
    public static final Unit<Angle> DEGREE = add("deg", "°", RADIAN.multiply(Math.PI / 180));

    public static final Unit<Time> SECOND = add("s", "s", tech.units.indriya.unit.Units.SECOND);
    public static final Unit<Time> MINUTE = add("min", "min", SECOND.multiply(60));
    public static final Unit<Time> HOUR = add("h", "h", SECOND.multiply(3600));
    public static final Unit<Time> DAY = add("d", "d", SECOND.multiply(86400));

    public static final Unit<Temperature> KELVIN = add("K", "K", tech.units.indriya.unit.Units.KELVIN);
    public static final Unit<Temperature> CELSIUS = add("Cel", "°C", tech.units.indriya.unit.Units.CELSIUS);

    public static final Unit<Speed> METRE_PER_SECOND =
            add("m/s", "m/s", tech.units.indriya.unit.Units.METRE_PER_SECOND);
    public static final Unit<Speed> KILOMETRE_PER_HOUR = add("km/h", "km/h", METRE_PER_SECOND.divide(3.6));

    public static final Unit<Acceleration> METRE_PER_SQUARE_SECOND =
            add("m/s2", "m/s²", tech.units.indriya.unit.Units.METRE_PER_SQUARE_SECOND);
    public static final Unit<Acceleration> STANDARD_GRAVITY =
            add("[g]", "g₀", METRE_PER_SQUARE_SECOND.multiply(9.80665));
    public static final Unit<AngularSpeed> RADIAN_PER_SECOND =
            add("rad/s", "rad/s", RADIAN.divide(SECOND).asType(AngularSpeed.class));
    public static final Unit<AngularSpeed> DEGREE_PER_SECOND =
            add("deg/s", "°/s", DEGREE.divide(SECOND).asType(AngularSpeed.class));
    public static final Unit<AngularSpeed> TURN_PER_MINUTE =
            add("{turn}/min", "rpm", RADIAN_PER_SECOND.multiply(Math.PI / 30));

    public static final Unit<Force> NEWTON = add("N", "N", tech.units.indriya.unit.Units.NEWTON);
    public static final Unit<Pressure> PASCAL = add("Pa", "Pa", tech.units.indriya.unit.Units.PASCAL);
    public static final Unit<Pressure> HECTOPASCAL = add("hPa", "hPa", HECTO(PASCAL));
    public static final Unit<Pressure> MEGAPASCAL = add("MPa", "MPa", MEGA(PASCAL));
    public static final Unit<Torque> NEWTON_METRE =
            add("N.m", "N·m", NEWTON.multiply(METRE).asType(Torque.class));
    public static final Unit<Torque> NEWTON_CENTIMETRE =
            add("N.cm", "N·cm", NEWTON.multiply(CENTIMETRE).asType(Torque.class));
    public static final Unit<Torque> KILOGRAM_FORCE_CENTIMETRE =
            add("kgf.cm", "kgf·cm", NEWTON_METRE.multiply(0.0980665));
    public static final Unit<Energy> JOULE = add("J", "J", tech.units.indriya.unit.Units.JOULE);
    public static final Unit<Energy> WATT_HOUR = add("W.h", "Wh", JOULE.multiply(3600));
    public static final Unit<Power> WATT = add("W", "W", tech.units.indriya.unit.Units.WATT);
    public static final Unit<Frequency> HERTZ = add("Hz", "Hz", tech.units.indriya.unit.Units.HERTZ);

    public static final Unit<ElectricPotential> VOLT = add("V", "V", tech.units.indriya.unit.Units.VOLT);
    public static final Unit<ElectricCurrent> AMPERE = add("A", "A", tech.units.indriya.unit.Units.AMPERE);
    public static final Unit<ElectricResistance> OHM = add("Ohm", "Ω", tech.units.indriya.unit.Units.OHM);
    public static final Unit<ElectricResistance> MILLIOHM = add("mOhm", "mΩ", MILLI(OHM));
    public static final Unit<ElectricCharge> AMPERE_HOUR =
            add("A.h", "Ah", AMPERE.multiply(HOUR).asType(ElectricCharge.class));
    public static final Unit<ElectricCharge> MILLIAMPERE_HOUR = add("mA.h", "mAh", MILLI(AMPERE_HOUR));

    public static final Unit<Dimensionless> NUMBER = add("1", "", ONE);
    public static final Unit<Dimensionless> PERCENT = add("%", "%", ONE.divide(100));

    public static final Unit<MomentOfMass> KILOGRAM_METRE =
            add("kg.m", "kg·m", KILOGRAM.multiply(METRE).asType(MomentOfMass.class));
    public static final Unit<MomentOfMass> GRAM_MILLIMETRE =
            add("g.mm", "g·mm", GRAM.multiply(MILLIMETRE).asType(MomentOfMass.class));
    public static final Unit<MomentOfInertia> KILOGRAM_SQUARE_METRE =
            add("kg.m2", "kg·m²", KILOGRAM.multiply(METRE.pow(2)).asType(MomentOfInertia.class));
    public static final Unit<MomentOfInertia> GRAM_SQUARE_CENTIMETRE =
            add("g.cm2", "g·cm²", GRAM.multiply(CENTIMETRE.pow(2)).asType(MomentOfInertia.class));
    public static final Unit<AreaDensity> GRAM_PER_SQUARE_METRE =
            add("g/m2", "g/m²", GRAM.divide(SQUARE_METRE).asType(AreaDensity.class));
    public static final Unit<AreaDensity> GRAM_PER_SQUARE_DECIMETRE =
            add("g/dm2", "g/dm²", GRAM.divide(SQUARE_DECIMETRE).asType(AreaDensity.class));
    public static final Unit<Density> KILOGRAM_PER_CUBIC_METRE =
            add("kg/m3", "kg/m³", KILOGRAM.divide(CUBIC_METRE).asType(Density.class));
    public static final Unit<MassFlow> KILOGRAM_PER_SECOND =
            add("kg/s", "kg/s", KILOGRAM.divide(SECOND).asType(MassFlow.class));
    public static final Unit<MassFlow> GRAM_PER_SECOND =
            add("g/s", "g/s", GRAM.divide(SECOND).asType(MassFlow.class));
    public static final Unit<VolumeFlow> CUBIC_METRE_PER_SECOND =
            add("m3/s", "m³/s", CUBIC_METRE.divide(SECOND).asType(VolumeFlow.class));
    public static final Unit<VolumeFlow> LITRE_PER_SECOND = add("L/s", "l/s", CUBIC_METRE_PER_SECOND.divide(1000));

    /** Mass times arm, as in a table of moments. */
    public interface MomentOfMass extends Quantity<MomentOfMass> {}

    /** Mass times squared distance. */
    public interface MomentOfInertia extends Quantity<MomentOfInertia> {}

    /** Mass of a square metre of cloth, foam sheet or wing. */
    public interface AreaDensity extends Quantity<AreaDensity> {}

    /** Mass of a cubic metre of a material. */
    public interface Density extends Quantity<Density> {}

    /** Force times arm, as a servo's. Not an energy, though both are newton times metre. */
    public interface Torque extends Quantity<Torque> {}

    /** How fast something turns. */
    public interface AngularSpeed extends Quantity<AngularSpeed> {}

    /** Mass that goes through in a time, as of cooling air. */
    public interface MassFlow extends Quantity<MassFlow> {}

    /** Volume that goes through in a time. */
    public interface VolumeFlow extends Quantity<VolumeFlow> {}

    /**
     * A unit with its names.
     *
     * @param code its UCUM code, as files carry it
     * @param symbol what a builder sees; empty for a bare number
     * @param unit the unit
     */
    public record Coded(String code, String symbol, Unit<?> unit) {}

    private Units() {}

    /** All units known here, those of one dimension standing together. */
    public static List<Coded> all() {
        return List.copyOf(TABLE);
    }

    /** The unit of a UCUM code, or empty where the code is not in the table. */
    public static Optional<Unit<?>> ofCode(String code) {
        return TABLE.stream()
                .filter(coded -> coded.code().equals(code))
                .<Unit<?>>map(Coded::unit)
                .findFirst();
    }

    /**
     * The UCUM code of a unit of the table.
     *
     * @throws IllegalArgumentException for a unit that is not in the table
     */
    public static String codeOf(Unit<?> unit) {
        return coded(unit).code();
    }

    /**
     * The symbol shown for a unit of the table.
     *
     * @throws IllegalArgumentException for a unit that is not in the table
     */
    public static String symbolOf(Unit<?> unit) {
        return coded(unit).symbol();
    }

    /** All units that measure the same thing as the one given, itself included. */
    public static List<Coded> alike(Unit<?> unit) {
        return TABLE.stream().filter(coded -> alike(coded.unit(), unit)).toList();
    }

    /** Whether two units measure the same thing; an angle is not a bare number here. */
    public static boolean alike(Unit<?> one, Unit<?> other) {
        return one.getSystemUnit().equals(other.getSystemUnit());
    }

    private static Coded coded(Unit<?> unit) {
        return TABLE.stream()
                .filter(coded -> coded.unit().equals(unit))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("unit '" + unit + "' is not in the table of units"));
    }

    private static Unit<Area> area(Unit<Length> side) {
        return side.pow(2).asType(Area.class);
    }

    private static <Q extends Quantity<Q>> Unit<Q> add(String code, String symbol, Unit<Q> unit) {
        TABLE.add(new Coded(code, symbol, unit));
        return unit;
    }
}
