package planewright.app.journal;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import javax.measure.quantity.Temperature;
import planewright.api.journal.BenchCalendar;
import planewright.api.journal.BenchSession;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;

/** The bench calendar as the journal holds it; each list is in order of time. A journal has one at most. */
public record CalendarRecord(List<WeeklyRecord> week, List<OtherDayRecord> otherDays, List<ReadingRecord> shop)
        implements BenchCalendar, Kept {
    /** Stands for the calendar where other records have a ULID. */
    public static final String ID = "calendar";

    public static final CalendarRecord EMPTY = new CalendarRecord(List.of(), List.of(), List.of());

    public CalendarRecord {
        week = sorted(
                week,
                Comparator.comparing(WeeklyRecord::day)
                        .thenComparing(weekly -> weekly.session().from()));
        otherDays = sorted(otherDays, Comparator.comparing(OtherDayRecord::date));
        shop = sorted(shop, Comparator.comparing(ReadingRecord::at));
        once("the date", otherDays, OtherDayRecord::date);
        once("the shop's reading at", shop, ReadingRecord::at);
        for (var day : DayOfWeek.values()) {
            apart(
                    "on " + day.toString().toLowerCase(Locale.ROOT),
                    week.stream()
                            .filter(weekly -> weekly.day() == day)
                            .map(WeeklyRecord::session)
                            .toList());
        }
        otherDays.forEach(other -> apart("on " + other.date(), other.sessions()));
    }

    /** A calendar as the journal holds it. */
    public static CalendarRecord of(BenchCalendar calendar) {
        return new CalendarRecord(
                calendar.week().stream()
                        .map(each -> new WeeklyRecord(each.day(), each.session()))
                        .toList(),
                calendar.otherDays().stream()
                        .map(each -> new OtherDayRecord(each.date(), each.sessions(), each.note()))
                        .toList(),
                calendar.shop().stream()
                        .map(each -> new ReadingRecord(each.at(), each.temperature()))
                        .toList());
    }

    /** A session that comes every week. */
    public record WeeklyRecord(DayOfWeek day, BenchSession session) implements Weekly {}

    /** A date with sessions of its own, or none. */
    public record OtherDayRecord(LocalDate date, List<BenchSession> sessions, String note) implements OtherDay {
        public OtherDayRecord {
            sessions = sorted(sessions, Comparator.comparing(BenchSession::from));
        }
    }

    /** How warm the shop is at a time of day. */
    public record ReadingRecord(LocalTime at, Measured<Temperature> temperature) implements ShopReading {
        public ReadingRecord {
            double celsius = temperature.in(Units.CELSIUS);
            if (!(celsius >= -40) || !(celsius <= 60)) {
                throw new IllegalArgumentException(
                        "temperature of the shop at " + at + " is " + celsius + " °C; accepted: -40 °C to 60 °C");
            }
        }
    }

    @Override
    public String id() {
        return ID;
    }

    public CalendarRecord withWeek(List<WeeklyRecord> changed) {
        return new CalendarRecord(changed, otherDays, shop);
    }

    public CalendarRecord withOtherDays(List<OtherDayRecord> changed) {
        return new CalendarRecord(week, changed, shop);
    }

    public CalendarRecord withShop(List<ReadingRecord> changed) {
        return new CalendarRecord(week, otherDays, changed);
    }

    private static <T> List<T> sorted(List<T> list, Comparator<? super T> order) {
        return list.stream().sorted(order).toList();
    }

    private static <T, K> void once(String what, List<T> list, Function<T, K> key) {
        Set<K> seen = new HashSet<>();
        for (var each : list) {
            if (!seen.add(key.apply(each))) {
                throw new IllegalArgumentException(
                        what + " " + key.apply(each) + " stands there twice; accepted: once");
            }
        }
    }

    private static void apart(String when, List<BenchSession> sessions) {
        for (int i = 1; i < sessions.size(); i++) {
            var before = sessions.get(i - 1);
            var after = sessions.get(i);
            if (before.to().equals(LocalTime.MIDNIGHT) || after.from().isBefore(before.to())) {
                throw new IllegalArgumentException("bench sessions " + when + " overlap: " + before.from() + "-"
                        + before.to() + " and " + after.from() + "-" + after.to() + "; accepted: one after the other");
            }
        }
    }
}
