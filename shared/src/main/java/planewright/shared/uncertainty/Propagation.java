package planewright.shared.uncertainty;

import java.util.function.ToDoubleFunction;
import javax.measure.Quantity;
import javax.measure.Unit;
import planewright.api.quantity.Measured;

/**
 * First-order propagation for independent inputs: u² = Σ (∂f/∂xᵢ · uᵢ)². Source: JCGM 100:2008 (GUM), 5.1.2, equation (10);
 * the derivatives are taken numerically over ± one standard uncertainty, as its 5.1.3, note 2 describes.
 *
 * @param value the function at the inputs
 * @param spread its standard uncertainty
 * @param components the share that each input brings to it, with the sign of its derivative
 */
public record Propagation(double value, double spread, double[] components) {
    /**
     * Propagates through a function.
     *
     * @param function smooth around the inputs; gets a fresh array each time
     * @param inputs the values
     * @param spreads their standard uncertainties, as many, 0 or more
     * @throws IllegalArgumentException if they are not as many
     */
    public static Propagation through(ToDoubleFunction<double[]> function, double[] inputs, double[] spreads) {
        if (inputs.length != spreads.length) {
            throw new IllegalArgumentException(inputs.length + " inputs and " + spreads.length + " spreads");
        }
        var components = new double[inputs.length];
        double sum = 0;
        for (int i = 0; i < inputs.length; i++) {
            if (spreads[i] > 0) {
                components[i] = (at(function, inputs, i, spreads[i]) - at(function, inputs, i, -spreads[i])) / 2;
                sum += components[i] * components[i];
            }
        }
        return new Propagation(function.applyAsDouble(inputs.clone()), Math.sqrt(sum), components);
    }

    /** The value as a quantity; without a ± where no input has one. */
    public <Q extends Quantity<Q>> Measured<Q> in(Unit<Q> unit) {
        return spread > 0 ? Measured.of(value, spread, unit) : Measured.of(value, unit);
    }

    private static double at(ToDoubleFunction<double[]> function, double[] inputs, int which, double shift) {
        var moved = inputs.clone();
        moved[which] += shift;
        return function.applyAsDouble(moved);
    }
}
