/**
 * The journal as a calculator sees it: views to read, never to write. What a calculator would have written it returns as
 * proposals. Views are unchanging; a later edit of the journal makes new ones.
 */
package planewright.api.journal;
