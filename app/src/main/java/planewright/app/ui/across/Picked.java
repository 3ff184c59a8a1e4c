package planewright.app.ui.across;

import java.util.Optional;
import javax.measure.Unit;
import planewright.app.across.Named;
import planewright.app.ui.common.Terms;
import planewright.app.ui.common.Texts;

/**
 * A thing in a list of choices. Typing its first letters finds it. Its words are made once: a list of thousands asks each for its width.
 *
 * @param named the thing
 * @param words what it is called
 * @param text the same, with the number of builds
 */
record Picked(Named named, String words, String text) {
    private Picked(Named named, String words) {
        this(named, words, Texts.ACROSS_CHOICE.text(words, named.builds()));
    }

    /**
     * A choice.
     *
     * @param unit in which the builder wants to see its kind
     */
    Picked(Named named, Optional<Unit<?>> unit) {
        this(named, unit.map(named::text).orElseGet(named::text).replace(named.name(), Terms.of(named.name())));
    }

    @Override
    public String toString() {
        return words;
    }
}
