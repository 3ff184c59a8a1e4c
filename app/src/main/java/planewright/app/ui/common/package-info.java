/** What all pages share: the work room, background work, look, texts, small components. */
package planewright.app.ui.common;
