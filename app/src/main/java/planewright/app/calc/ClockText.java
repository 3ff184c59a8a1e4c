package planewright.app.calc;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.Optional;
import planewright.api.calculator.Language;

/** Instants of the builder's clock as people type them and as they read them. */
public final class ClockText {
    /** What may be typed, in words. */
    static final String ACCEPTED = "now, or a time such as 2025-03-14 20:15, from 1900 to 2199";

    private static final String NOW = "now";
    private static final DateTimeFormatter READ = DateTimeFormatter.ofPattern("EEE d MMM uuuu, HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);
    private static final DateTimeFormatter TYPED = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);
    private static final int FIRST_YEAR = 1900;
    private static final int LAST_YEAR = 2199;

    private ClockText() {}

    /** The instant that was typed; empty where it is none, or out of the years accepted. */
    static Optional<LocalDateTime> parse(String typed, LocalDateTime now, Language language) {
        var text = typed.strip();
        if (text.equalsIgnoreCase(NOW) || text.equalsIgnoreCase(language.say(NOW))) {
            return Optional.of(now.truncatedTo(ChronoUnit.MINUTES));
        }
        try {
            return Optional.of(LocalDateTime.parse(text.replace(' ', 'T')))
                    .filter(time -> time.getYear() >= FIRST_YEAR && time.getYear() <= LAST_YEAR);
        } catch (DateTimeException none) {
            return Optional.empty();
        }
    }

    /** As it is typed, to the minute: {@code 2025-03-14 20:15}; what is no instant stays as it is. */
    static String typed(String text) {
        try {
            return TYPED.format(LocalDateTime.parse(text));
        } catch (DateTimeException none) {
            return text;
        }
    }

    /** A day as it is read: {@code 14 Mar 2025}, or as the country writes it. */
    static String day(LocalDate day, Locale locale) {
        return locale.getLanguage().equals("en")
                ? DAY.format(day)
                : DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM)
                        .localizedBy(locale)
                        .format(day);
    }

    /** As it is read: {@code Fri 14 Mar 2025, 20:15}, or as the country writes it. */
    public static String show(LocalDateTime time, Locale locale) {
        return locale.getLanguage().equals("en")
                ? READ.format(time)
                : DateTimeFormatter.ofPattern("EEE", locale).format(time) + " "
                        + DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT)
                                .localizedBy(locale)
                                .format(time);
    }
}
