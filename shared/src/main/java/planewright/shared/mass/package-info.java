/** Masses and where they balance. */
package planewright.shared.mass;
