/** What the build that is shown flies with now, since when and by what, and what it flew with before. */
package planewright.app.ui.setup;
