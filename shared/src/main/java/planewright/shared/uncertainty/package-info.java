/** Uncertainty of computed values. */
package planewright.shared.uncertainty;
