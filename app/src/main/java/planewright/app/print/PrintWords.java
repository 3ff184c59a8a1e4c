package planewright.app.print;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Locale;
import planewright.api.quantity.Measured;
import planewright.app.journal.Said;
import planewright.shared.quantity.QuantityText;
import planewright.shared.quantity.Written;

/** What stands on paper, in the language that is shown. */
final class PrintWords {
    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("d MMMM uuuu, HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);

    private PrintWords() {}

    static void prepare() {
        Said.prepare(PrintWords.class);
    }

    static String say(String english, Object... values) {
        return Said.beside(PrintWords.class, english, values);
    }

    static String when(LocalDateTime at) {
        return isEnglish()
                ? WHEN.format(at)
                : DateTimeFormatter.ofLocalizedDateTime(FormatStyle.LONG, FormatStyle.SHORT)
                        .localizedBy(locale())
                        .format(at);
    }

    static String day(LocalDate day) {
        return isEnglish()
                ? DAY.format(day)
                : DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM)
                        .localizedBy(locale())
                        .format(day);
    }

    static String quantity(Measured<?> value) {
        return QuantityText.show(value, locale());
    }

    static String quantity(Written value) {
        return isEnglish() ? value.text() : value.text(locale());
    }

    private static boolean isEnglish() {
        return locale().getLanguage().equals("en");
    }

    static Locale locale() {
        return Locale.getDefault(Locale.Category.DISPLAY);
    }
}
