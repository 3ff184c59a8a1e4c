/** Lines through points that scatter, and what the next point may be. Start at {@link planewright.shared.fit.Trend}. */
package planewright.shared.fit;
