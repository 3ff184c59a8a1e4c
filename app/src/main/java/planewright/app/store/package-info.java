/**
 * Records to files and back. A save that was acknowledged is on disk; a crash at any instant leaves the old file or the
 * new one; a file that cannot be read is set aside with its reason, stays as it is, and the rest opens.
 */
package planewright.app.store;
