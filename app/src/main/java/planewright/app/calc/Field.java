package planewright.app.calc;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.measure.Unit;
import planewright.api.calculator.From;
import planewright.api.calculator.Language;
import planewright.shared.quantity.UnitChoice;

/**
 * A component of an inputs or results record, or of a row in one.
 *
 * @param name the component's name
 * @param label what it is, in a word or two
 * @param help a sentence for who is not sure; may be empty
 * @param kind what it holds
 * @param unit the unit offered first, or shown in; of quantities only
 * @param optional whether it may be left out
 * @param initial what it is where nothing else is known, as text; may be empty
 * @param bounds what is accepted
 * @param choices the words of a choice, or those offered for a text
 * @param row what each row holds; of rows only
 * @param from where in the journal it can be taken from; empty for nowhere and for results
 * @param under the heading that it belongs under; may be empty
 * @param upTo the component that holds the other end of a range; of results only, may be empty
 * @param language in which label, help, heading and choices are told
 * @param type the component's Java type without {@code Optional} or {@code List}
 */
public record Field(
        String name,
        String label,
        String help,
        Kind kind,
        Optional<Unit<?>> unit,
        boolean optional,
        String initial,
        Bounds bounds,
        List<String> choices,
        Optional<Shape> row,
        Optional<From> from,
        String under,
        String upTo,
        Language language,
        Class<?> type) {
    /** The same in another language. */
    Field in(Language other) {
        return new Field(
                name,
                other.say(label),
                help.isEmpty() ? help : other.say(help),
                kind,
                unit,
                optional,
                initial,
                bounds,
                choices,
                row.map(shape -> shape.in(other)),
                from,
                under.isEmpty() ? under : other.say(under),
                upTo,
                other,
                type);
    }

    /** The same in the unit that somebody prefers. */
    Field in(UnitChoice units) {
        return new Field(
                name,
                label,
                help,
                kind,
                unit.map(units::shown),
                optional,
                initial,
                unit.filter(kind -> !units.shown(kind).equals(kind))
                        .map(kind -> bounds.in(units.shown(kind)))
                        .orElse(bounds),
                choices,
                row.map(shape -> shape.in(units)),
                from,
                under,
                upTo,
                language,
                type);
    }

    /** A word of a choice as people read it; files and scripts carry the word itself. */
    public String told(String choice) {
        return kind == Kind.CHOICE && !choice.isEmpty() ? language.say(choice) : choice;
    }

    /** What it is where nothing else is known, as people read and type it; may be empty. */
    public String toldInitial() {
        return kind == Kind.DATE_TIME && !initial.isEmpty() ? language.say(initial) : told(initial);
    }

    /** What is offered for a text, as people read and type it. */
    public List<String> offered() {
        return choices.stream().map(language::say).toList();
    }

    /** The option of the command line: {@code --target-x} for {@code targetX}. */
    public String option() {
        return "--" + name.replaceAll("([a-z0-9])([A-Z])", "$1-$2").toLowerCase(Locale.ROOT);
    }
}
