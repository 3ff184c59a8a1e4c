package planewright.api.quantity;

import static javax.measure.MetricPrefix.CENTI;
import static javax.measure.MetricPrefix.DECI;
import static javax.measure.MetricPrefix.HECTO;
import static javax.measure.MetricPrefix.MEGA;
import static javax.measure.MetricPrefix.MILLI;
import static tech.units.indriya.AbstractUnit.ONE;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
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
 * of the inch, the foot, the mile, the pound, the ounce, standard gravity and the kilogram-force are the exact ones of NIST Special Publication
 * 811 (2008), appendix B.
 */
@API(status = API.Status.MAINTAINED, since = "0.1.0")
public final class Units {
    private static final List<Coded> TABLE = new ArrayList<>();

    /** Mass: the kilogram. */
    public static final Unit<Mass> KILOGRAM = add("kg", "kg", tech.units.indriya.unit.Units.KILOGRAM);
    /** Mass: the gram, 0.001 kg. */
    public static final Unit<Mass> GRAM = add("g", "g", tech.units.indriya.unit.Units.GRAM);
    /** Mass: the milligram, 1e-6 kg. */
    public static final Unit<Mass> MILLIGRAM = add("mg", "mg", MILLI(GRAM));
    /** Mass: the avoirdupois pound, 0.45359237 kg. */
    public static final Unit<Mass> POUND = add("[lb_av]", "lb", KILOGRAM.multiply(0.45359237));
    /** Mass: the avoirdupois ounce, 0.028349523125 kg. */
    public static final Unit<Mass> OUNCE = add("[oz_av]", "oz", KILOGRAM.multiply(0.028349523125));

    /** Length: the metre. */
    public static final Unit<Length> METRE = add("m", "m", tech.units.indriya.unit.Units.METRE);
    /** Length: the centimetre, 0.01 m. */
    public static final Unit<Length> CENTIMETRE = add("cm", "cm", CENTI(METRE));
    /** Length: the millimetre, 0.001 m. */
    public static final Unit<Length> MILLIMETRE = add("mm", "mm", MILLI(METRE));
    /** Length: the international inch, 0.0254 m. */
    public static final Unit<Length> INCH = add("[in_i]", "in", METRE.multiply(0.0254));
    /** Length: the international foot, 0.3048 m. */
    public static final Unit<Length> FOOT = add("[ft_i]", "ft", METRE.multiply(0.3048));

    /** Area: the square metre. */
    public static final Unit<Area> SQUARE_METRE = add("m2", "m²", tech.units.indriya.unit.Units.SQUARE_METRE);
    /** Area: the square decimetre, 0.01 m²; wings are told in it. */
    public static final Unit<Area> SQUARE_DECIMETRE = add("dm2", "dm²", area(DECI(METRE)));
    /** Area: the square centimetre, 1e-4 m². */
    public static final Unit<Area> SQUARE_CENTIMETRE = add("cm2", "cm²", area(CENTIMETRE));
    /** Area: the square millimetre, 1e-6 m². */
    public static final Unit<Area> SQUARE_MILLIMETRE = add("mm2", "mm²", area(MILLIMETRE));
    /** Area: the square inch, 6.4516e-4 m². */
    public static final Unit<Area> SQUARE_INCH = add("[sin_i]", "in²", area(INCH));
    /** Area: the square foot, 0.09290304 m². */
    public static final Unit<Area> SQUARE_FOOT = add("[sft_i]", "ft²", area(FOOT));

    /** Volume: the cubic metre. */
    public static final Unit<Volume> CUBIC_METRE = add("m3", "m³", tech.units.indriya.unit.Units.CUBIC_METRE);
    /** Volume: the millilitre, which is the cubic centimetre, 1e-6 m³. */
    public static final Unit<Volume> MILLILITRE =
            add("mL", "ml", CENTIMETRE.pow(3).asType(Volume.class));

    /** Angle: the radian, in which calculators compute. */
    public static final Unit<Angle> RADIAN = add("rad", "rad", tech.units.indriya.unit.Units.RADIAN);
    /** Angle: the degree, π/180 rad, which builders read. */
    public static final Unit<Angle> DEGREE = add("deg", "°", RADIAN.multiply(Math.PI / 180));

    /** Time: the second. */
    public static final Unit<Time> SECOND = add("s", "s", tech.units.indriya.unit.Units.SECOND);
    /** Time: the minute, 60 s. */
    public static final Unit<Time> MINUTE = add("min", "min", SECOND.multiply(60));
    /** Time: the hour, 3600 s. */
    public static final Unit<Time> HOUR = add("h", "h", SECOND.multiply(3600));
    /** Time: the day of 24 hours, 86 400 s. */
    public static final Unit<Time> DAY = add("d", "d", SECOND.multiply(86400));

    /** Temperature: the kelvin, from absolute zero. */
    public static final Unit<Temperature> KELVIN = add("K", "K", tech.units.indriya.unit.Units.KELVIN);
    /** Temperature: the degree Celsius, whose 0 is 273.15 K. */
    public static final Unit<Temperature> CELSIUS = add("Cel", "°C", tech.units.indriya.unit.Units.CELSIUS);

    /** Speed: the metre per second. */
    public static final Unit<Speed> METRE_PER_SECOND =
            add("m/s", "m/s", tech.units.indriya.unit.Units.METRE_PER_SECOND);
    /** Speed: the kilometre per hour, 1/3.6 m/s. */
    public static final Unit<Speed> KILOMETRE_PER_HOUR = add("km/h", "km/h", METRE_PER_SECOND.divide(3.6));
    /** Speed: the international mile per hour, 0.44704 m/s. */
    public static final Unit<Speed> MILE_PER_HOUR = add("[mi_i]/h", "mph", METRE_PER_SECOND.multiply(0.44704));

    /** Acceleration: the metre per square second. */
    public static final Unit<Acceleration> METRE_PER_SQUARE_SECOND =
            add("m/s2", "m/s²", tech.units.indriya.unit.Units.METRE_PER_SQUARE_SECOND);
    /** Acceleration: standard gravity, 9.80665 m/s², by which loads are counted. */
    public static final Unit<Acceleration> STANDARD_GRAVITY =
            add("[g]", "g₀", METRE_PER_SQUARE_SECOND.multiply(9.80665));
    /** Rate of turn: the radian per second. */
    public static final Unit<AngularSpeed> RADIAN_PER_SECOND =
            add("rad/s", "rad/s", RADIAN.divide(SECOND).asType(AngularSpeed.class));
    /** Rate of turn: the degree per second, π/180 rad/s. */
    public static final Unit<AngularSpeed> DEGREE_PER_SECOND =
            add("deg/s", "°/s", DEGREE.divide(SECOND).asType(AngularSpeed.class));
    /** Rate of turn: the turn per minute, π/30 rad/s, of motors and propellers. */
    public static final Unit<AngularSpeed> TURN_PER_MINUTE =
            add("{turn}/min", "rpm", RADIAN_PER_SECOND.multiply(Math.PI / 30));

    /** Force: the newton. */
    public static final Unit<Force> NEWTON = add("N", "N", tech.units.indriya.unit.Units.NEWTON);
    /** Pressure: the pascal. */
    public static final Unit<Pressure> PASCAL = add("Pa", "Pa", tech.units.indriya.unit.Units.PASCAL);
    /** Pressure: the hectopascal, 100 Pa, as the air's is told. */
    public static final Unit<Pressure> HECTOPASCAL = add("hPa", "hPa", HECTO(PASCAL));
    /** Pressure and stress: the megapascal, 1e6 Pa, as strengths are told. */
    public static final Unit<Pressure> MEGAPASCAL = add("MPa", "MPa", MEGA(PASCAL));
    /** Torque: the newton metre. */
    public static final Unit<Torque> NEWTON_METRE =
            add("N.m", "N·m", NEWTON.multiply(METRE).asType(Torque.class));
    /** Torque: the newton centimetre, 0.01 N·m. */
    public static final Unit<Torque> NEWTON_CENTIMETRE =
            add("N.cm", "N·cm", NEWTON.multiply(CENTIMETRE).asType(Torque.class));
    /** Torque: the kilogram-force centimetre, 0.0980665 N·m, as servos are sold. */
    public static final Unit<Torque> KILOGRAM_FORCE_CENTIMETRE =
            add("kgf.cm", "kgf·cm", NEWTON_METRE.multiply(0.0980665));
    /** Torque: the ounce-force inch, about 7.061552e-3 N·m, as servos are also sold. */
    public static final Unit<Torque> OUNCE_FORCE_INCH =
            add("[oz_av].[g].[in_i]", "ozf·in", NEWTON_METRE.multiply(0.028349523125 * 9.80665 * 0.0254));
    /** Energy: the joule. */
    public static final Unit<Energy> JOULE = add("J", "J", tech.units.indriya.unit.Units.JOULE);
    /** Energy: the watt-hour, 3600 J. */
    public static final Unit<Energy> WATT_HOUR = add("W.h", "Wh", JOULE.multiply(3600));
    /** Power: the watt. */
    public static final Unit<Power> WATT = add("W", "W", tech.units.indriya.unit.Units.WATT);
    /** Frequency: the hertz, once a second. */
    public static final Unit<Frequency> HERTZ = add("Hz", "Hz", tech.units.indriya.unit.Units.HERTZ);

    /** Voltage: the volt. */
    public static final Unit<ElectricPotential> VOLT = add("V", "V", tech.units.indriya.unit.Units.VOLT);
    /** Current: the ampere. */
    public static final Unit<ElectricCurrent> AMPERE = add("A", "A", tech.units.indriya.unit.Units.AMPERE);
    /** Resistance: the ohm. */
    public static final Unit<ElectricResistance> OHM = add("Ohm", "Ω", tech.units.indriya.unit.Units.OHM);
    /** Resistance: the milliohm, 0.001 Ω, as of packs. */
    public static final Unit<ElectricResistance> MILLIOHM = add("mOhm", "mΩ", MILLI(OHM));
    /** Charge: the ampere-hour, 3600 C. */
    public static final Unit<ElectricCharge> AMPERE_HOUR =
            add("A.h", "Ah", AMPERE.multiply(HOUR).asType(ElectricCharge.class));
    /** Charge: the milliampere-hour, 3.6 C, as packs are labelled. */
    public static final Unit<ElectricCharge> MILLIAMPERE_HOUR = add("mA.h", "mAh", MILLI(AMPERE_HOUR));

    /** A bare number, such as a ratio or a coefficient. */
    public static final Unit<Dimensionless> NUMBER = add("1", "", ONE);
    /** A bare number told in hundredths. */
    public static final Unit<Dimensionless> PERCENT = add("%", "%", ONE.divide(100));

    /** Moment of mass: the kilogram metre. */
    public static final Unit<MomentOfMass> KILOGRAM_METRE =
            add("kg.m", "kg·m", KILOGRAM.multiply(METRE).asType(MomentOfMass.class));
    /** Moment of mass: the gram millimetre, 1e-6 kg·m. */
    public static final Unit<MomentOfMass> GRAM_MILLIMETRE =
            add("g.mm", "g·mm", GRAM.multiply(MILLIMETRE).asType(MomentOfMass.class));
    /** Moment of mass: the ounce inch, about 7.200779e-4 kg·m. */
    public static final Unit<MomentOfMass> OUNCE_INCH =
            add("[oz_av].[in_i]", "oz·in", OUNCE.multiply(INCH).asType(MomentOfMass.class));
    /** Moment of inertia: the kilogram square metre. */
    public static final Unit<MomentOfInertia> KILOGRAM_SQUARE_METRE =
            add("kg.m2", "kg·m²", KILOGRAM.multiply(METRE.pow(2)).asType(MomentOfInertia.class));
    /** Moment of inertia: the gram square centimetre, 1e-7 kg·m². */
    public static final Unit<MomentOfInertia> GRAM_SQUARE_CENTIMETRE =
            add("g.cm2", "g·cm²", GRAM.multiply(CENTIMETRE.pow(2)).asType(MomentOfInertia.class));
    /** Moment of inertia: the pound square inch, about 2.926397e-4 kg·m². */
    public static final Unit<MomentOfInertia> POUND_SQUARE_INCH =
            add("[lb_av].[in_i]2", "lb·in²", POUND.multiply(INCH.pow(2)).asType(MomentOfInertia.class));
    /** Mass of an area: the gram per square metre, 0.001 kg/m², as cloth is sold. */
    public static final Unit<AreaDensity> GRAM_PER_SQUARE_METRE =
            add("g/m2", "g/m²", GRAM.divide(SQUARE_METRE).asType(AreaDensity.class));
    /** Mass of an area: the gram per square decimetre, 0.1 kg/m², as wing loadings are told. */
    public static final Unit<AreaDensity> GRAM_PER_SQUARE_DECIMETRE =
            add("g/dm2", "g/dm²", GRAM.divide(SQUARE_DECIMETRE).asType(AreaDensity.class));
    /** Mass of an area: the ounce per square foot, about 0.3051517 kg/m², as wing loadings are also told. */
    public static final Unit<AreaDensity> OUNCE_PER_SQUARE_FOOT =
            add("[oz_av]/[sft_i]", "oz/ft²", OUNCE.divide(SQUARE_FOOT).asType(AreaDensity.class));
    /** Density: the kilogram per cubic metre. */
    public static final Unit<Density> KILOGRAM_PER_CUBIC_METRE =
            add("kg/m3", "kg/m³", KILOGRAM.divide(CUBIC_METRE).asType(Density.class));
    /** Density: the pound per cubic foot, about 16.01846 kg/m³, as foam is also sold. */
    public static final Unit<Density> POUND_PER_CUBIC_FOOT =
            add("[lb_av]/[cft_i]", "lb/ft³", POUND.divide(FOOT.pow(3)).asType(Density.class));
    /** Mass flow: the kilogram per second. */
    public static final Unit<MassFlow> KILOGRAM_PER_SECOND =
            add("kg/s", "kg/s", KILOGRAM.divide(SECOND).asType(MassFlow.class));
    /** Mass flow: the gram per second, 0.001 kg/s. */
    public static final Unit<MassFlow> GRAM_PER_SECOND =
            add("g/s", "g/s", GRAM.divide(SECOND).asType(MassFlow.class));
    /** Volume flow: the cubic metre per second. */
    public static final Unit<VolumeFlow> CUBIC_METRE_PER_SECOND =
            add("m3/s", "m³/s", CUBIC_METRE.divide(SECOND).asType(VolumeFlow.class));
    /** Volume flow: the litre per second, 0.001 m³/s. */
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

    private static final Map<String, Unit<?>> BY_CODE =
            TABLE.stream().collect(Collectors.toUnmodifiableMap(Coded::code, Coded::unit));

    private Units() {}

    /** {@return all units known here, those of one dimension standing together} */
    public static List<Coded> all() {
        return List.copyOf(TABLE);
    }

    /**
     * {@return the unit of a UCUM code, or empty where the code is not in the table}
     *
     * @param code a UCUM code, case-sensitive variant
     */
    public static Optional<Unit<?>> ofCode(String code) {
        return Optional.ofNullable(BY_CODE.get(code));
    }

    /**
     * {@return the UCUM code of a unit of the table}
     *
     * @param unit one of this table
     * @throws IllegalArgumentException for a unit that is not in the table
     */
    public static String codeOf(Unit<?> unit) {
        return coded(unit).code();
    }

    /**
     * {@return the symbol shown for a unit of the table}
     *
     * @param unit one of this table
     * @throws IllegalArgumentException for a unit that is not in the table
     */
    public static String symbolOf(Unit<?> unit) {
        return coded(unit).symbol();
    }

    /**
     * {@return all units that measure the same thing as the one given, itself included}
     *
     * @param unit one of this table
     */
    public static List<Coded> alike(Unit<?> unit) {
        return TABLE.stream().filter(coded -> alike(coded.unit(), unit)).toList();
    }

    /**
     * {@return whether two units measure the same thing; an angle is not a bare number here}
     *
     * @param one a unit
     * @param other another one
     */
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
