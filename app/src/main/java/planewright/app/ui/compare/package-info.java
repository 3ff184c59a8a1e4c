/** Two builds side by side. */
package planewright.app.ui.compare;
