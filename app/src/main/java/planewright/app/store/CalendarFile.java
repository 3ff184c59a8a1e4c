package planewright.app.store;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.DayOfWeek;
import java.util.Locale;
import javax.measure.quantity.Temperature;
import planewright.api.journal.BenchSession;
import planewright.app.journal.CalendarRecord;
import planewright.app.journal.CalendarRecord.OtherDayRecord;
import planewright.app.journal.CalendarRecord.ReadingRecord;
import planewright.app.journal.CalendarRecord.WeeklyRecord;

/** The bench calendar as a file says it. */
final class CalendarFile {
    private CalendarFile() {}

    static CalendarRecord read(Fields fields) throws Unreadable {
        return new CalendarRecord(
                fields.rows(
                        "week",
                        row -> new WeeklyRecord(row.word("day", DayOfWeek.values(), CalendarFile::word), session(row))),
                fields.rows(
                        "otherDays",
                        row -> new OtherDayRecord(
                                row.date("date"), row.rows("sessions", CalendarFile::session), row.textOr("note", ""))),
                fields.rows(
                        "shop",
                        row -> new ReadingRecord(
                                row.clock("at"), row.written().measured().asType(Temperature.class))));
    }

    static ObjectNode write(CalendarRecord calendar) {
        return new Writing()
                .rows(
                        "week",
                        calendar.week(),
                        row -> session(new Writing().text("day", word(row.day())), row.session()))
                .rows(
                        "otherDays",
                        calendar.otherDays(),
                        row -> new Writing()
                                .text("date", row.date().toString())
                                .rows("sessions", row.sessions(), each -> session(new Writing(), each))
                                .text("note", row.note()))
                .rows(
                        "shop",
                        calendar.shop(),
                        row -> new Writing().text("at", row.at().toString()).measured(row.temperature()))
                .done();
    }

    private static BenchSession session(Fields row) throws Unreadable {
        return new BenchSession(row.clock("from"), row.clock("to"));
    }

    private static Writing session(Writing writing, BenchSession session) {
        return writing.text("from", session.from().toString())
                .text("to", session.to().toString());
    }

    private static String word(DayOfWeek day) {
        return day.name().toLowerCase(Locale.ROOT);
    }
}
