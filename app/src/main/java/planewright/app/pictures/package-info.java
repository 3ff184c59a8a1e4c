/** Photos: taken in once under their hash, never altered; small views of them, made when wanted and kept in the cache. */
package planewright.app.pictures;
