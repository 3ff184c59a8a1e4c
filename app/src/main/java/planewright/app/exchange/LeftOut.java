package planewright.app.exchange;

/**
 * Something that was not brought in or taken out.
 *
 * @param what a file, or a line of one
 * @param reason why
 */
public record LeftOut(String what, String reason) {}
