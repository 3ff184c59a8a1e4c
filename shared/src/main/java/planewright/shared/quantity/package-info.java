/**
 * Quantities as a builder writes and reads them. Every text that the program takes for a quantity, be it in a form, on the
 * command line, in a file or on the capture line, goes through {@link planewright.shared.quantity.QuantityText}.
 */
package planewright.shared.quantity;
