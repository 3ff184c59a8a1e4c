package planewright.api.contract;

/** An assertion that says in words what is wrong. */
final class Checks {
    private Checks() {}

    static void require(boolean kept, String otherwise) {
        if (!kept) {
            throw new AssertionError(otherwise);
        }
    }
}
