package planewright.app.journal;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * How a capture line that is being typed may go on: with a name, or after the name of a joint with a material.
 *
 * @param before what stands before the words that may be completed
 * @param typed those words; empty only for a material of which nothing is typed yet
 * @param isMaterial whether a material is wanted, else a name
 */
public record CaptureCompletion(String before, String typed, boolean isMaterial) {
    /** What could be completed in a line; nothing in a blank one, nor in one that says all. */
    public static Optional<CaptureCompletion> of(String line) {
        var typed = line.stripLeading();
        var meant = CaptureLine.of(typed);
        if (meant.filter(CaptureLine.Words.class::isInstance).isEmpty()) {
            return Optional.empty();
        }
        var joint = CaptureLine.Joints.LINE.matcher(typed);
        return Optional.of(
                joint.matches() && joint.group(2).startsWith(" ")
                        ? new CaptureCompletion(
                                joint.group(1) + " ", joint.group(2).stripLeading(), true)
                        : new CaptureCompletion("", typed, false));
    }

    /** Whether a name goes on from what is typed: each typed word begins a word of the name, in the same order. */
    public boolean fits(String name) {
        var wanted = words(typed);
        var at = 0;
        for (var word : words(name)) {
            at += at < wanted.size() && word.startsWith(wanted.get(at)) ? 1 : 0;
        }
        return at == wanted.size() && !name.strip().equalsIgnoreCase(typed.strip());
    }

    /** Whether a name begins with what is typed; it is offered before others that fit. */
    public boolean begins(String name) {
        return name.toLowerCase(Locale.ROOT).startsWith(typed.toLowerCase(Locale.ROOT));
    }

    /** The line with a name in it, ready for what follows. */
    public String with(String name) {
        return before + name.strip() + " ";
    }

    private static List<String> words(String text) {
        return Arrays.stream(text.toLowerCase(Locale.ROOT).split("\\s+"))
                .filter(word -> !word.isEmpty())
                .toList();
    }
}
