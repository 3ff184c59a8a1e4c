package planewright.app.exchange;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Optional;

/** Dates as ISO 8601 writes them, with or without a time. */
final class DateText {
    /** Stands in where only a day is known. */
    static final LocalTime NOON = LocalTime.of(12, 0);

    private DateText() {}

    /** {@code 2025-03-14}, {@code 2025-03-14T20:15} or {@code 2025-03-14 20:15}; empty where it is none of them. */
    static Optional<LocalDateTime> parse(String text) {
        var stripped = text.strip();
        try {
            return Optional.of(
                    stripped.length() > 10
                            ? LocalDateTime.parse(stripped.replace(' ', 'T'))
                            : LocalDate.parse(stripped).atTime(NOON));
        } catch (DateTimeException none) {
            return Optional.empty();
        }
    }
}
