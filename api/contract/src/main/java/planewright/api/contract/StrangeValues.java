package planewright.api.contract;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.measure.quantity.Temperature;
import planewright.api.figure.Outline;
import planewright.api.figure.Point;
import planewright.api.journal.BenchCalendar;
import planewright.api.journal.BenchSession;
import planewright.api.journal.Picture;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;

/** Outlines, calendars and pictures that a journal may hold and few do. */
final class StrangeValues {
    private static final int MANY = 2000;
    private static final Point CORNER = new Point(0, 0);

    private StrangeValues() {}

    /** A dot, a line, a shape that crosses itself, one far off its sheet, one of many pieces, the smallest and the largest sheet. */
    static Stream<Outline> outlines() {
        var far = new Point(1e6, -1e6);
        return Stream.of(
                outline(1, true, new Outline.Line(CORNER)),
                outline(1, false, new Outline.Line(new Point(1, 0))),
                outline(
                        100,
                        true,
                        new Outline.Line(new Point(100, 100)),
                        new Outline.Line(new Point(100, 0)),
                        new Outline.Line(new Point(0, 100))),
                outline(100, true, new Outline.Curve(far, new Point(-1e6, 1e6), new Point(50, 50))),
                outline(
                        MANY,
                        true,
                        IntStream.rangeClosed(1, MANY)
                                .mapToObj(i -> new Outline.Line(new Point(i, i % 2)))
                                .toArray(Outline.Piece[]::new)),
                outline(Double.MIN_VALUE, true, new Outline.Line(new Point(Double.MIN_VALUE, 0))),
                outline(10_000, true, new Outline.Line(new Point(10_000, 0)), new Outline.Line(new Point(0, 10_000))));
    }

    private static Outline outline(double edge, boolean closed, Outline.Piece... pieces) {
        return new Outline(edge, edge, List.of(new Outline.Path(CORNER, Arrays.asList(pieces), closed)));
    }

    /** Nobody is ever there; somebody is always there; one minute before midnight, and a shop between frost and heat. */
    static Stream<BenchCalendar> calendars() {
        var always = new BenchSession(LocalTime.MIDNIGHT, LocalTime.MIDNIGHT);
        var minute = new BenchSession(LocalTime.of(23, 59), LocalTime.MIDNIGHT);
        return Stream.of(
                new Calendar(List.of(), List.of(), List.of()),
                new Calendar(
                        Stream.of(DayOfWeek.values())
                                .map(day -> new WeekDay(day, always))
                                .toList(),
                        List.of(),
                        List.of(new Reading(LocalTime.NOON, Measured.of(20, Units.CELSIUS)))),
                new Calendar(
                        List.of(new WeekDay(DayOfWeek.MONDAY, minute)),
                        List.of(new Holiday(LocalDate.of(2025, 3, 17), List.of(), "away")),
                        List.of(
                                new Reading(LocalTime.MIDNIGHT, Measured.of(-40, Units.CELSIUS)),
                                new Reading(LocalTime.of(23, 59), Measured.of(60, 5, Units.CELSIUS)))));
    }

    /** Without a caption, and with one that is too long for any line. */
    static Stream<Picture> pictures() {
        return Stream.of(
                new Kept("0".repeat(64), "jpg", ""), new Kept("f".repeat(64), "png", "\u202e{{%s}}\"'<& ".repeat(500)));
    }

    private record Calendar(List<WeekDay> week, List<Holiday> otherDays, List<Reading> shop) implements BenchCalendar {}

    private record WeekDay(DayOfWeek day, BenchSession session) implements BenchCalendar.Weekly {}

    private record Holiday(LocalDate date, List<BenchSession> sessions, String note)
            implements BenchCalendar.OtherDay {}

    private record Reading(LocalTime at, Measured<Temperature> temperature) implements BenchCalendar.ShopReading {}

    private record Kept(String hash, String type, String caption) implements Picture {}
}
