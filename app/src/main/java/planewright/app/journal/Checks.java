package planewright.app.journal;

/** Refusals that name the thing and the value. */
final class Checks {
    private Checks() {}

    static String notBlank(String what, String value) {
        if (value.isBlank()) {
            throw new IllegalArgumentException(what + " is '" + value + "'; accepted: some words");
        }
        return value.strip();
    }
}
