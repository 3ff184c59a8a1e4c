package planewright.shared.quantity;

import java.util.Locale;
import planewright.api.calculator.Language;

/** A text that is no quantity, or not of the kind wanted; the message names it and says what is accepted. */
public final class QuantityProblem extends Exception {
    private static final long serialVersionUID = 1L;

    private final String said;
    private final String accepted;
    private final String[] values;

    /**
     * @param said what is wrong, in English, places of values as {@code {0}}, {@code {1}}, …
     * @param accepted what is accepted instead, likewise
     * @param values what goes into either
     */
    public QuantityProblem(String said, String accepted, String... values) {
        this.said = said;
        this.accepted = accepted;
        this.values = values.clone();
    }

    @Override
    public String getMessage() {
        return message(Locale.ENGLISH);
    }

    /** In the language that is shown. */
    @Override
    public String getLocalizedMessage() {
        return message(Locale.getDefault(Locale.Category.DISPLAY));
    }

    /** The whole of it as it is read: {@code 'three' is not a number; accepted: 212, 0.85}. */
    public String message(Locale locale) {
        return language(locale)
                .say("{0}; accepted: {1}", language(locale).say(said, (Object[]) values), accepted(locale));
    }

    /** What is accepted instead. */
    public String accepted(Locale locale) {
        return language(locale).say(accepted, (Object[]) values);
    }

    private static Language language(Locale locale) {
        return Language.of(locale, QuantityProblem.class);
    }
}
