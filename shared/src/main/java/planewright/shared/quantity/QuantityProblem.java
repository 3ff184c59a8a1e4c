package planewright.shared.quantity;

/** A text that is no quantity, or not of the kind wanted; the message names it and says what is accepted. */
public final class QuantityProblem extends Exception {
    private static final long serialVersionUID = 1L;

    public QuantityProblem(String message) {
        super(message);
    }
}
