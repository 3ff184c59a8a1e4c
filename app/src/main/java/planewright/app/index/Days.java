package planewright.app.index;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Year;
import java.time.YearMonth;

/** Reads the first and the last day of a filter: {@code 2025-03-14}, or a month {@code 2025-03}, or a year {@code 2025}. */
public final class Days {
    private Days() {}

    /**
     * The day, or the first of the month or year.
     *
     * @throws IllegalArgumentException if it is none of them; the message says what is accepted
     */
    public static LocalDate first(String text) {
        return day(text, false);
    }

    /**
     * The day, or the last of the month or year.
     *
     * @throws IllegalArgumentException if it is none of them; the message says what is accepted
     */
    public static LocalDate last(String text) {
        return day(text, true);
    }

    private static LocalDate day(String text, boolean last) {
        var stripped = text.strip();
        try {
            if (stripped.matches("\\d{4}")) {
                var year = Year.parse(stripped);
                return last ? year.atMonth(12).atEndOfMonth() : year.atDay(1);
            }
            if (stripped.matches("\\d{4}-\\d{2}")) {
                var month = YearMonth.parse(stripped);
                return last ? month.atEndOfMonth() : month.atDay(1);
            }
            return LocalDate.parse(stripped);
        } catch (DateTimeException wrong) {
            throw new IllegalArgumentException(
                    "'" + text + "' is no day; accepted: a day as 2025-03-14, a month as 2025-03, or a year", wrong);
        }
    }
}
