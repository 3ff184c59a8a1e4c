/** Beginning a build from a proven one and from templates. */
package planewright.app.ui.start;
