/** The pictures of the build that is shown: a grid of all, one large, two side by side, and measuring on one. */
package planewright.app.ui.pictures;
