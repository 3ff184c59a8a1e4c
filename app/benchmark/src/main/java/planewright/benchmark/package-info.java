/**
 * The program measured against goals: numbers, yardsticks of the same run and their ratios as one JSON object. Start at {@link
 * planewright.benchmark.Benchmark}. Whatever takes a program's time runs in a Java virtual machine of its own.
 */
package planewright.benchmark;
