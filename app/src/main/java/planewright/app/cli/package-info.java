/** The command line: the same journal, calculators and sheets as in the window, one command a class. */
package planewright.app.cli;
