package planewright.app.exchange;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Locale;
import planewright.api.calculator.Language;

/** What is said of what comes in and goes out, in the language that is shown. */
final class ExchangeWords {
    private ExchangeWords() {}

    static String say(String english, Object... values) {
        return Language.of(locale(), ExchangeWords.class).say(english, values);
    }

    static String day(LocalDate day) {
        return locale().getLanguage().equals("en")
                ? day.toString()
                : DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM)
                        .localizedBy(locale())
                        .format(day);
    }

    private static Locale locale() {
        return Locale.getDefault(Locale.Category.DISPLAY);
    }
}
