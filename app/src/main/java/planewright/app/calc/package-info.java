/**
 * Calculators from plugins: found, described by their records' annotations, filled in from the journal, run, kept. Window,
 * command line and printed sheets all work from {@link planewright.app.calc.Described}; none knows a calculator by name.
 */
package planewright.app.calc;
