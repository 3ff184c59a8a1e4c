/** Which plugins there are: adding one, with the question whether it is trusted, switching and removing them. */
package planewright.app.ui.plugins;
