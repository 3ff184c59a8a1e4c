/**
 * Quantities (JSR 385) as the journal and calculators exchange them: a value, its unit, how sure one is of it. Inside a
 * computation a number is a {@code double} in SI units; it becomes one, and leaves, through {@link
 * planewright.api.quantity.Measured}.
 */
package planewright.api.quantity;
