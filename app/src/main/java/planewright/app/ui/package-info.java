/**
 * The window; the only packages that know Swing. A page shows what the open journal holds, asks it for edits through the
 * {@link planewright.app.ui.common.Workroom}, and hears of changes from it. Whatever may wait runs in {@link
 * planewright.app.ui.common.Background}.
 */
package planewright.app.ui;
