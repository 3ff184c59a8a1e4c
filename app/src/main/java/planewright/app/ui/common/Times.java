package planewright.app.ui.common;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;

/** Times as people say them. */
public final class Times {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofLocalizedTime(FormatStyle.SHORT);
    private static final DateTimeFormatter DAY_AND_CLOCK =
            DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofLocalizedDate(FormatStyle.FULL);
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM);
    private static final int HOURS_TO_COUNT = 48;

    private Times() {}

    /** The time of today, or the day with its time. */
    public static String clock(LocalDateTime at, LocalDate today) {
        return (at.toLocalDate().equals(today) ? CLOCK : DAY_AND_CLOCK).format(at);
    }

    /** A day with its name. */
    public static String day(LocalDate day) {
        return DAY.format(day);
    }

    /** A day in few letters: {@code 29.08.2026}. */
    public static String date(LocalDate day) {
        return DATE.format(day);
    }

    /** How long it takes: {@code 40 min}, {@code 3 h 5 min}, {@code 12 h}, {@code 2 d 4 h}. */
    public static String span(Duration time) {
        if (time.toHours() < 1) {
            return Texts.MINUTES.text(time.toMinutes());
        }
        return time.toHours() < HOURS_TO_COUNT
                ? span(time.toHours(), Texts.HOURS, time.toMinutesPart(), Texts.HOURS_MINUTES)
                : span(time.toDays(), Texts.DAYS, time.toHoursPart(), Texts.DAYS_HOURS);
    }

    private static String span(long whole, Texts alone, int rest, Texts both) {
        return rest == 0 ? alone.text(whole) : both.text(whole, rest);
    }
}
