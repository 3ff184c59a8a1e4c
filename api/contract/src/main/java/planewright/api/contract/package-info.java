/**
 * Tests of what every calculator promises, for a plugin's own build. {@link planewright.api.contract.CalculatorContract}
 * finds the calculators and makes the tests; it knows the API alone and JUnit.
 */
package planewright.api.contract;
