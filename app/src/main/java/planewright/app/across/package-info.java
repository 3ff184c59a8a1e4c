/** One thing over all builds of a journal, and how it goes with another. Start at {@link planewright.app.across.Across}. */
package planewright.app.across;
