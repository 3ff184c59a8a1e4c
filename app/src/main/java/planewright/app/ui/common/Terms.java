package planewright.app.ui.common;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The journal's own words, which its files carry in English, in the language of the window. */
public final class Terms {
    private static final String PREFIX = "WORD_";

    private static final Map<String, Texts> KNOWN = Arrays.stream(Texts.values())
            .filter(text -> text.name().startsWith(PREFIX))
            .collect(Collectors.toMap(text -> text.name().substring(PREFIX.length()), Function.identity()));

    private Terms() {}

    /**
     * A word as people read it; one that is not the journal's own stays as it is.
     *
     * @param word of a life, a kind of entry, a grade of a finding, or a figure of a build: {@code on the bench}
     */
    public static String of(String word) {
        var known = KNOWN.get(word.toUpperCase(Locale.ROOT).replace(' ', '_').replace('-', '_'));
        return known == null ? word : known.text();
    }
}
