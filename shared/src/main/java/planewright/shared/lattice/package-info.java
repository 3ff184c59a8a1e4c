/**
 * Vortex lattice: loads on any set of thin surfaces in a uniform, inviscid, incompressible stream, to first order in
 * incidence. Start at {@link planewright.shared.lattice.Lattice#of} or, for where an aircraft should balance, at {@link
 * planewright.shared.lattice.NeutralPoint#of}.
 *
 * <p>Axes are those of the aircraft: x aft, y to the right wing, z up, metres. The stream has unit speed along x, so a force
 * is per ρU² and a circulation per U; angles are radians. Surfaces lie flat along the stream, their twist turns only the
 * direction in which no air may pass, and trailing vortices run straight aft: what a thin wing does near its zero-lift
 * incidence. Thickness, viscosity, separation and a propeller's wash are not in it.
 *
 * <p>Sources: J. Katz and A. Plotkin, Low-Speed Aerodynamics, 2nd edition, chapter 12 (horseshoe vortices, Kutta–Joukowski);
 * M. Drela, Flight Vehicle Aerodynamics, equation 5.40 and section 5.7 (velocity of a horseshoe, Trefftz plane); C. E. Lan, A
 * quasi-vortex-lattice method in thin wing theory, Journal of Aircraft 11 (1974) 518 (where vortices and control points
 * stand). Cited from memory; what they give is checked against published values in the tests.
 */
package planewright.shared.lattice;
