package planewright.cure;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Optional;
import java.util.stream.Stream;
import planewright.api.journal.BenchCalendar;
import planewright.api.journal.BenchSession;

/**
 * What is left of a bench session once something may be done.
 *
 * @param from when one can begin: its start, or later where the joint needs longer
 * @param to when it ends
 */
record NextSession(LocalDateTime from, LocalDateTime to) {
    /** What is less than this is no session: common practice, no source. */
    private static final Duration LEAST = Duration.ofMinutes(15);

    /** A calendar without a session in so many days has none. */
    private static final int DAYS = 60;

    /** The first in which enough time is left; empty where the calendar has none in two months. */
    static Optional<NextSession> after(LocalDateTime ready, BenchCalendar calendar) {
        return Stream.iterate(ready.toLocalDate(), day -> day.plusDays(1))
                .limit(DAYS)
                .flatMap(day -> calendar.sessions(day).stream().map(session -> left(day, session, ready)))
                .filter(session -> !session.to().isBefore(session.from().plus(LEAST)))
                .findFirst();
    }

    private static NextSession left(LocalDate day, BenchSession session, LocalDateTime ready) {
        var from = day.atTime(session.from());
        var to = session.to().equals(LocalTime.MIDNIGHT) ? day.plusDays(1).atStartOfDay() : day.atTime(session.to());
        return new NextSession(ready.isAfter(from) ? ready : from, to);
    }
}
