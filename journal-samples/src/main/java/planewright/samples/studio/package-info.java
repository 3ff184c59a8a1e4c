/** A small studio: bodies given by their distance, lit and photographed without any library. Lengths are millimetres, z is up. */
package planewright.samples.studio;
