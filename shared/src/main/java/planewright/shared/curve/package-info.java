/** Curves through given points. */
package planewright.shared.curve;
