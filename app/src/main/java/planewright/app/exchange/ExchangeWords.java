package planewright.app.exchange;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Locale;
import planewright.api.quantity.Measured;
import planewright.app.journal.Said;
import planewright.shared.quantity.QuantityText;
import planewright.shared.quantity.Written;

/** What is said of what comes in and goes out, in the language that is shown. */
final class ExchangeWords {
    private ExchangeWords() {}

    static String say(String english, Object... values) {
        return Said.beside(ExchangeWords.class, english, values);
    }

    static String day(LocalDate day) {
        return locale().getLanguage().equals("en")
                ? day.toString()
                : DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM)
                        .localizedBy(locale())
                        .format(day);
    }

    static String quantity(Measured<?> value) {
        return QuantityText.show(value, locale());
    }

    /** What was written stays so in English, where both signs are read. */
    static String quantity(Written value) {
        return locale().getLanguage().equals("en") ? value.text() : value.text(locale());
    }

    static Locale locale() {
        return Locale.getDefault(Locale.Category.DISPLAY);
    }
}
