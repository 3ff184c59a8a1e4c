/** The program: one journal opened with its search index and plugins, for the window and for the command line. */
package planewright.app;
