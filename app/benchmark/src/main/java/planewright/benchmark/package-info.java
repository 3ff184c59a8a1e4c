/** How long the program takes to show itself, as a ratio to an empty window in the same run: whole processes, no tests. */
package planewright.benchmark;
