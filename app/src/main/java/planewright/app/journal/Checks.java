package planewright.app.journal;

import java.util.List;

/** Refusals that name the thing and the value. */
final class Checks {
    private Checks() {}

    static String notBlank(String what, String value) {
        if (value.isBlank()) {
            throw new IllegalArgumentException(Said.say("{0} is '{1}'; accepted: some words", Said.say(what), value));
        }
        return value.strip();
    }

    static void hash(String what, String value) {
        if (!value.matches("[0-9a-f]{64}")) {
            throw new IllegalArgumentException(
                    "hash of " + what + " is '" + value + "'; accepted: 64 lower-case hexadecimal digits");
        }
    }

    static void some(String what, String of, List<?> list) {
        if (list.isEmpty()) {
            throw new IllegalArgumentException(what + " has no " + of + "; accepted: 1 or more");
        }
    }

    /** Sorted, without blanks and repeats. */
    static List<String> tags(List<String> tags) {
        return tags.stream()
                .map(String::strip)
                .filter(tag -> !tag.isEmpty())
                .sorted()
                .distinct()
                .toList();
    }
}
