/**
 * Where an aircraft balances: from its parts ({@link planewright.balance.Ledger}) and from scales ({@link
 * planewright.balance.Weighing}); and what brings it where it should ({@link planewright.balance.Ballast}) and level ({@link planewright.balance.Lean}). {@link
 * planewright.balance.MassProperties}, {@link planewright.balance.Weighings} and {@link planewright.balance.LightestPieces} do
 * the computation in SI units or whole numbers and know no annotations.
 */
package planewright.balance;
