package planewright.api.quantity;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.apiguardian.api.API;
import tech.units.indriya.quantity.Quantities;

/**
 * A quantity and how sure we are of it.
 *
 * @param value what was read or computed; finite
 * @param plusMinus one standard uncertainty (JCGM 100:2008, 2.3.1), 0 or more; empty where none is known, which a
 *     computation treats as exact
 * @param <Q> what is measured
 */
@API(status = API.Status.MAINTAINED, since = "0.1.0")
public record Measured<Q extends Quantity<Q>>(Quantity<Q> value, Optional<Quantity<Q>> plusMinus) {
    public Measured {
        requireFinite(value);
        plusMinus.ifPresent(spread -> {
            requireFinite(spread);
            if (spread.getValue().doubleValue() < 0) {
                throw new IllegalArgumentException("± of " + value + " is " + spread + "; accepted: 0 or more");
            }
        });
    }

    /**
     * {@return a value taken as exact}
     *
     * @param value a number in the unit; finite
     * @param unit of the value
     * @param <Q> what is measured
     */
    public static <Q extends Quantity<Q>> Measured<Q> of(double value, Unit<Q> unit) {
        return new Measured<>(quantity(value, unit), Optional.empty());
    }

    /**
     * {@return a value with one standard uncertainty in the same unit}
     *
     * @param value a number in the unit; finite
     * @param plusMinus one standard uncertainty in the same unit; finite, 0 or more
     * @param unit of both
     * @param <Q> what is measured
     */
    public static <Q extends Quantity<Q>> Measured<Q> of(double value, double plusMinus, Unit<Q> unit) {
        return new Measured<>(quantity(value, unit), Optional.of(quantity(plusMinus, unit)));
    }

    /**
     * {@return the value as a bare number of the unit}
     *
     * @param unit of the same kind
     */
    public double in(Unit<Q> unit) {
        return value.to(unit).getValue().doubleValue();
    }

    /**
     * {@return the standard uncertainty as a bare number of the unit; 0 where none is known}
     *
     * @param unit of the same kind
     */
    public double spreadIn(Unit<Q> unit) {
        return plusMinus
                .map(spread -> difference(spread, unit).getValue().doubleValue())
                .orElse(0.0);
    }

    /**
     * {@return the same in another unit of the same kind}
     *
     * @param unit of the same kind
     */
    public Measured<Q> to(Unit<Q> unit) {
        return new Measured<>(value.to(unit), plusMinus.map(spread -> difference(spread, unit)));
    }

    /**
     * {@return the same, known by its type}
     *
     * @param type what it is believed to measure
     * @param <T> the same
     * @throws ClassCastException if it measures something else
     */
    public <T extends Quantity<T>> Measured<T> asType(Class<T> type) {
        return new Measured<>(value.asType(type), plusMinus.map(spread -> spread.asType(type)));
    }

    /** A ± of 2 °C is one of 2 K: a difference knows no offset. */
    private static <Q extends Quantity<Q>> Quantity<Q> difference(Quantity<Q> spread, Unit<Q> unit) {
        var converter = spread.getUnit().getConverterTo(unit);
        if (converter.isLinear()) {
            return spread.to(unit);
        }
        double size = spread.getValue().doubleValue();
        return Quantities.getQuantity(converter.convert(size) - converter.convert(0.0), unit);
    }

    private static <Q extends Quantity<Q>> Quantity<Q> quantity(double value, Unit<Q> unit) {
        requireFinite(value, unit);
        return Quantities.getQuantity(value, unit);
    }

    private static void requireFinite(Quantity<?> quantity) {
        requireFinite(quantity.getValue().doubleValue(), quantity.getUnit());
    }

    private static void requireFinite(double value, Unit<?> unit) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a quantity is " + value + " " + unit + "; accepted: a finite number");
        }
    }
}
