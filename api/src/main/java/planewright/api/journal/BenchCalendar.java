package planewright.api.journal;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Comparator;
import java.util.List;
import javax.measure.quantity.Temperature;
import org.apiguardian.api.API;
import planewright.api.quantity.Measured;

/** When somebody is at the bench, and how warm it is there. */
@API(status = API.Status.MAINTAINED, since = "0.3.0")
public interface BenchCalendar {
    /** Sessions that come every week. */
    List<? extends Weekly> week();

    /** Days that are not as their day of the week is. */
    List<? extends OtherDay> otherDays();

    /** Temperatures of the shop by time of day, which come again every day; it runs straight from one to the next. */
    List<? extends ShopReading> shop();

    /** The sessions of a date in order of time: those of that date where it is another day, else of its day of the week. */
    default List<BenchSession> sessions(LocalDate date) {
        return otherDays().stream()
                .filter(other -> other.date().equals(date))
                .findFirst()
                .<List<BenchSession>>map(other -> List.copyOf(other.sessions()))
                .orElseGet(() -> week().stream()
                        .filter(weekly -> weekly.day() == date.getDayOfWeek())
                        .map(Weekly::session)
                        .toList())
                .stream()
                .sorted(Comparator.comparing(BenchSession::from))
                .toList();
    }

    /** A session that comes every week. */
    interface Weekly {
        DayOfWeek day();

        BenchSession session();
    }

    /** A date with sessions of its own, or none. */
    interface OtherDay {
        LocalDate date();

        List<BenchSession> sessions();

        /** Why; may be empty. */
        String note();
    }

    /** How warm the shop is at a time of day. */
    interface ShopReading {
        LocalTime at();

        Measured<Temperature> temperature();
    }
}
