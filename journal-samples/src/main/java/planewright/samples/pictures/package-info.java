/** The pictures of the sample journal: benches, parts, aircraft and sketches of an invented workshop. */
package planewright.samples.pictures;
