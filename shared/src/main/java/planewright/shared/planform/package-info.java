/** The shape of an aircraft seen from above, from the side and from ahead, in millimetres. */
package planewright.shared.planform;
