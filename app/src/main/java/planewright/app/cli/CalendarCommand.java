package planewright.app.cli;

import java.io.IOException;
import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.regex.Pattern;
import javax.measure.quantity.Temperature;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import planewright.api.journal.BenchSession;
import planewright.api.quantity.Units;
import planewright.app.journal.CalendarRecord;
import planewright.app.journal.CalendarRecord.OtherDayRecord;
import planewright.app.journal.CalendarRecord.ReadingRecord;
import planewright.app.journal.CalendarRecord.WeeklyRecord;
import planewright.app.journal.Edit;
import planewright.app.store.RecordFiles;
import planewright.shared.quantity.QuantityText;

@Command(name = "calendar", description = "When you are at the bench, and how warm it is there.")
final class CalendarCommand extends Group {
    private static final Pattern SESSION = Pattern.compile("(\\d{1,2}:\\d\\d)\\s*-\\s*(\\d{1,2}:\\d\\d)\\s*");

    static CommandLine line(Desk desk) {
        return new CommandLine(new CalendarCommand())
                .addSubcommand(new Show(desk))
                .addSubcommand(new SetIt(desk))
                .addSubcommand(new Remove(desk));
    }

    @Command(name = "show", description = "Show the calendar.")
    private static final class Show implements Callable<Integer> {
        private final Desk desk;

        @Mixin
        private JournalOption common;

        Show(Desk desk) {
            this.desk = desk;
        }

        @Override
        public Integer call() throws IOException {
            try (var program = desk.open(common.journal())) {
                var calendar = program.journal().calendar().orElse(CalendarRecord.EMPTY);
                if (common.json()) {
                    desk.json(RecordFiles.json(calendar));
                } else {
                    tell(calendar);
                }
            }
            return 0;
        }

        private void tell(CalendarRecord calendar) {
            var out = desk.out();
            if (calendar.equals(CalendarRecord.EMPTY)) {
                out.println("The journal has no calendar yet; 'calendar set' makes one.");
            }
            calendar.week().forEach(each -> out.println("  every " + word(each.day()) + " " + said(each.session())));
            calendar.otherDays()
                    .forEach(each -> out.println("  " + each.date() + " "
                            + (each.sessions().isEmpty()
                                    ? "no session"
                                    : String.join(
                                            ", ",
                                            each.sessions().stream()
                                                    .map(CalendarCommand::said)
                                                    .toList()))
                            + (each.note().isEmpty() ? "" : " · " + each.note())));
            calendar.shop()
                    .forEach(each ->
                            out.println("  shop at " + each.at() + " " + QuantityText.show(each.temperature())));
        }
    }

    @Command(
            name = "set",
            description = "Change the calendar: each kind of line that is given replaces those of its kind.")
    private static final class SetIt implements Callable<Integer> {
        private final Desk desk;

        @Mixin
        private JournalOption common;

        @Option(
                names = "--session",
                paramLabel = "LINE",
                description = "A session of every week: 'tuesday 19:00-21:30'; may be repeated.")
        private List<String> sessions = List.of();

        @Option(
                names = "--other-day",
                paramLabel = "LINE",
                description = "A date that is not as its day of the week is, with its sessions, or none, and why:"
                        + " '2025-12-24 away', '2025-12-27 10:00-12:00'; may be repeated.")
        private List<String> otherDays = List.of();

        @Option(
                names = "--shop",
                paramLabel = "TIME=TEMPERATURE",
                description = "How warm the shop is at a time of day: '15:00=18 °C'; may be repeated.")
        private List<String> shop = List.of();

        SetIt(Desk desk) {
            this.desk = desk;
        }

        @Override
        public Integer call() throws IOException {
            if (sessions.isEmpty() && otherDays.isEmpty() && shop.isEmpty()) {
                throw CommandFailed.words("nothing to set; accepted: --session, --other-day or --shop");
            }
            try (var program = desk.open(common.journal())) {
                var before = program.journal().calendar();
                var calendar = before.orElse(CalendarRecord.EMPTY);
                if (!sessions.isEmpty()) {
                    calendar = calendar.withWeek(
                            sessions.stream().map(CalendarCommand::weekly).toList());
                }
                if (!otherDays.isEmpty()) {
                    calendar = calendar.withOtherDays(
                            otherDays.stream().map(CalendarCommand::otherDay).toList());
                }
                if (!shop.isEmpty()) {
                    calendar = calendar.withShop(
                            shop.stream().map(CalendarCommand::reading).toList());
                }
                program.journal().apply(Edit.put("set calendar", before, calendar));
                desk.said(common.json(), calendar, "Set the calendar");
            }
            return 0;
        }
    }

    @Command(name = "remove", description = "Put the calendar into the bin; 'bin --restore calendar' brings it back.")
    private static final class Remove implements Callable<Integer> {
        private final Desk desk;

        @Mixin
        private JournalOption common;

        Remove(Desk desk) {
            this.desk = desk;
        }

        @Override
        public Integer call() throws IOException {
            try (var program = desk.open(common.journal())) {
                var calendar = program.journal()
                        .calendar()
                        .orElseThrow(() -> CommandFailed.work("the journal has no calendar"));
                program.journal().apply(Edit.remove("remove calendar", calendar));
                desk.said(common.json(), calendar, "Put the calendar into the bin");
            }
            return 0;
        }
    }

    private static String word(DayOfWeek day) {
        return day.name().toLowerCase(Locale.ROOT);
    }

    private static String said(BenchSession session) {
        return session.from() + "-" + session.to();
    }

    private static WeeklyRecord weekly(String line) {
        var words = line.strip().split("\\s+", 2);
        for (var day : DayOfWeek.values()) {
            if (words.length == 2 && word(day).equalsIgnoreCase(words[0])) {
                var found = SESSION.matcher(words[1]);
                if (found.matches()) {
                    return new WeeklyRecord(day, session("--session", line, found.group(1), found.group(2)));
                }
            }
        }
        throw CommandFailed.words("--session is '" + line + "'; accepted: such as 'tuesday 19:00-21:30'");
    }

    private static OtherDayRecord otherDay(String line) {
        var words = line.strip().split("\\s+", 2);
        var rest = words.length == 2 ? words[1] : "";
        var sessions = new ArrayList<BenchSession>();
        var found = SESSION.matcher(rest);
        int read = 0;
        while (found.find() && found.start() == read) {
            sessions.add(session("--other-day", line, found.group(1), found.group(2)));
            read = found.end();
        }
        return new OtherDayRecord(
                Desk.date("--other-day", words[0]),
                sessions,
                rest.substring(read).strip());
    }

    private static ReadingRecord reading(String line) {
        int sign = line.indexOf('=');
        if (sign < 1) {
            throw CommandFailed.words("--shop is '" + line + "'; accepted: such as '15:00=18 °C'");
        }
        return new ReadingRecord(
                clock("--shop", line, line.substring(0, sign)),
                Desk.quantity("--shop", line.substring(sign + 1), Units.CELSIUS, Temperature.class));
    }

    private static BenchSession session(String option, String line, String from, String to) {
        return new BenchSession(clock(option, line, from), clock(option, line, to));
    }

    private static LocalTime clock(String option, String line, String text) {
        var padded = text.strip().length() == "7:00".length() ? "0" + text.strip() : text.strip();
        try {
            return padded.equals("24:00") ? LocalTime.MIDNIGHT : LocalTime.parse(padded);
        } catch (DateTimeException wrong) {
            throw CommandFailed.words(
                    option + " has the time '" + text + "' in '" + line + "'; accepted: such as 19:00");
        }
    }
}
