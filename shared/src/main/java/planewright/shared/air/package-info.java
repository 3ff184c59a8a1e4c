/** The air that aircraft fly in. */
package planewright.shared.air;
