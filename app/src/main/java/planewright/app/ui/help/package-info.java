/** What each page is for, and the keys. */
package planewright.app.ui.help;
