/**
 * Journals of any size for tests and measurements, the same from the same seed.
 *
 * <p>Start at {@link planewright.app.synthetic.SyntheticJournal}. What stands in them is invented, and reads like a workshop only
 * from afar: words come as often as they do in real text, sentences mean nothing.
 */
package planewright.app.synthetic;
