/**
 * Air into a model and out of it. {@link planewright.ducts.SubmergedInlet} draws the inlet that lies below the skin; {@link
 * planewright.ducts.InletShape} is its geometry, in metres and radians, and knows no annotations.
 */
package planewright.ducts;
