/**
 * What a control surface does: when the servo moves ({@link planewright.throws_.ServoLinkage}), and what its angle is in
 * millimetres ({@link planewright.throws_.SurfaceTravel}). {@link planewright.throws_.Linkage} and {@link
 * planewright.throws_.FourBar} close the linkage exactly, in metres and radians, and know no annotations.
 */
package planewright.throws_;
