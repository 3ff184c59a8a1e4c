package planewright.app.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import planewright.api.journal.BenchSession;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.app.journal.CalendarRecord.OtherDayRecord;
import planewright.app.journal.CalendarRecord.ReadingRecord;
import planewright.app.journal.CalendarRecord.WeeklyRecord;

class CalendarRecordTest {
    private final BenchSession morning = session(9, 12);
    private final BenchSession evening = session(19, 21);
    private final CalendarRecord calendar = CalendarRecord.EMPTY
            .withWeek(List.of(
                    new WeeklyRecord(DayOfWeek.SATURDAY, evening),
                    new WeeklyRecord(DayOfWeek.SATURDAY, morning),
                    new WeeklyRecord(DayOfWeek.TUESDAY, evening)))
            .withOtherDays(List.of(
                    new OtherDayRecord(LocalDate.of(2026, 12, 26), List.of(), "away"),
                    new OtherDayRecord(LocalDate.of(2026, 12, 23), List.of(evening, morning), "")));

    /** 12 December 2026 is a Saturday, the 15th a Tuesday (ISO 8601 calendar). */
    @Test
    void aDateHasTheSessionsOfItsDayOfTheWeekInOrder() {
        assertThat(calendar.sessions(LocalDate.of(2026, 12, 12))).containsExactly(morning, evening);
        assertThat(calendar.sessions(LocalDate.of(2026, 12, 15))).containsExactly(evening);
        assertThat(calendar.sessions(LocalDate.of(2026, 12, 16))).isEmpty();
    }

    @Test
    void anotherDayHasItsOwnOrNone() {
        assertThat(calendar.sessions(LocalDate.of(2026, 12, 26))).isEmpty();
        assertThat(calendar.sessions(LocalDate.of(2026, 12, 23))).containsExactly(morning, evening);
    }

    @Test
    void whatCannotBeIsRefusedByName() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> session(21, 19))
                .withMessageContainingAll("21:00", "19:00", "accepted");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> calendar.withWeek(List.of(
                        new WeeklyRecord(DayOfWeek.SUNDAY, session(9, 12)),
                        new WeeklyRecord(DayOfWeek.SUNDAY, session(11, 13)))))
                .withMessageContainingAll("sunday", "11:00");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> calendar.withWeek(List.of(
                        new WeeklyRecord(DayOfWeek.SUNDAY, new BenchSession(LocalTime.NOON, LocalTime.MIDNIGHT)),
                        new WeeklyRecord(DayOfWeek.SUNDAY, session(13, 14)))))
                .withMessageContaining("overlap");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> calendar.withOtherDays(List.of(
                        new OtherDayRecord(LocalDate.of(2026, 12, 26), List.of(), "away"),
                        new OtherDayRecord(LocalDate.of(2026, 12, 26), List.of(evening), ""))))
                .withMessageContaining("2026-12-26");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ReadingRecord(LocalTime.NOON, Measured.of(180, Units.CELSIUS)))
                .withMessageContainingAll("12:00", "180", "accepted");
    }

    @Test
    void sessionsThatTouchAreApart() {
        var whole = calendar.withWeek(List.of(
                new WeeklyRecord(DayOfWeek.SUNDAY, session(9, 12)),
                new WeeklyRecord(DayOfWeek.SUNDAY, new BenchSession(LocalTime.NOON, LocalTime.MIDNIGHT))));
        assertThat(whole.week()).hasSize(2);
    }

    private static BenchSession session(int from, int to) {
        return new BenchSession(LocalTime.of(from, 0), LocalTime.of(to, 0));
    }
}
