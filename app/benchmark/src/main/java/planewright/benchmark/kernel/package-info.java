/** Small pieces of the program, measured by JMH: microseconds a call, each beside a yardstick where there is one. */
package planewright.benchmark.kernel;
