/**
 * Where an aircraft balances: from its parts ({@link planewright.balance.Ledger}) and from scales ({@link
 * planewright.balance.Weighing}). {@link planewright.balance.MassProperties} and {@link planewright.balance.Weighings} do the
 * computation in SI units and know no annotations.
 */
package planewright.balance;
