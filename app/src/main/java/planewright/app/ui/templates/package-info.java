/** Templates: outlines, procedures and set-ups that the next build starts from. */
package planewright.app.ui.templates;
