package planewright.app.ui.across;

import planewright.app.across.Named;
import planewright.app.ui.common.Terms;
import planewright.app.ui.common.Texts;

/**
 * A thing in a list of choices. Typing its first letters finds it.
 *
 * @param named the thing
 */
record Picked(Named named) {
    String text() {
        return Texts.ACROSS_CHOICE.text(toString(), named.builds());
    }

    @Override
    public String toString() {
        return named.text().replace(named.name(), Terms.of(named.name()));
    }
}
