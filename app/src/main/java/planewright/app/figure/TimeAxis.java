package planewright.app.figure;

import java.text.DateFormat;
import java.text.SimpleDateFormat;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.TimeZone;
import org.jfree.chart.axis.DateAxis;
import org.jfree.chart.axis.DateTickUnit;
import org.jfree.chart.axis.DateTickUnitType;
import org.jfree.chart.axis.TickUnits;

/** An axis of days and hours as the builder's country writes them. */
final class TimeAxis {
    /** Only for drawing: the builder's clock is shown as it is, whatever zone it stands in. */
    private static final TimeZone ZONE = TimeZone.getTimeZone(ZoneOffset.UTC);

    private static final int[] MINUTES = {1, 5, 10, 15, 30};
    private static final int[] HOURS = {1, 2, 4, 6, 12};
    private static final int[] DAYS = {1, 2, 7, 14};
    private static final int[] MONTHS = {1, 2, 3, 6};
    private static final int[] YEARS = {1, 2, 5, 10, 25, 50, 100};

    private TimeAxis() {}

    static DateAxis of(Locale locale) {
        var axis = new DateAxis(null, ZONE, locale);
        var units = new TickUnits();
        add(units, DateTickUnitType.MINUTE, MINUTES, format("HH:mm", locale));
        add(units, DateTickUnitType.HOUR, HOURS, format("HH:mm", locale));
        add(units, DateTickUnitType.DAY, DAYS, format(day(locale), locale));
        add(units, DateTickUnitType.MONTH, MONTHS, format("MMM yyyy", locale));
        add(units, DateTickUnitType.YEAR, YEARS, format("yyyy", locale));
        axis.setStandardTickUnits(units);
        return axis;
    }

    private static void add(TickUnits units, DateTickUnitType type, int[] counts, DateFormat format) {
        for (int count : counts) {
            units.add(new DateTickUnit(type, count, format));
        }
    }

    private static DateFormat format(String pattern, Locale locale) {
        var format = new SimpleDateFormat(pattern, locale);
        format.setTimeZone(ZONE);
        return format;
    }

    /** {@code 15 Nov}, and {@code 15. Nov.} where a day's number is an ordinal. */
    private static String day(Locale locale) {
        return locale.getLanguage().equals("de") ? "d. MMM" : "d MMM";
    }
}
