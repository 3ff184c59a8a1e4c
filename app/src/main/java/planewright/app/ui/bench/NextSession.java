package planewright.app.ui.bench;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Optional;
import java.util.stream.Stream;
import planewright.api.journal.BenchCalendar;
import planewright.api.journal.BenchSession;

/**
 * The bench session that goes on, or else the next one.
 *
 * @param day on which it begins
 * @param session from when to when
 */
record NextSession(LocalDate day, BenchSession session) {
    private static final int DAYS_AHEAD = 100;

    /** Empty where the calendar has none within a hundred days. */
    static Optional<NextSession> of(BenchCalendar calendar, LocalDateTime now) {
        return Stream.iterate(now.toLocalDate(), day -> day.plusDays(1))
                .limit(DAYS_AHEAD)
                .flatMap(day -> calendar.sessions(day).stream().map(session -> new NextSession(day, session)))
                .filter(next -> next.to().isAfter(now))
                .findFirst();
    }

    LocalDateTime from() {
        return day.atTime(session.from());
    }

    LocalDateTime to() {
        return session.to().equals(LocalTime.MIDNIGHT) ? day.plusDays(1).atStartOfDay() : day.atTime(session.to());
    }
}
