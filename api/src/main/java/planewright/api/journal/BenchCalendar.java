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
    /** {@return sessions that come every week} */
    List<? extends Weekly> week();

    /** {@return days that are not as their day of the week is} */
    List<? extends OtherDay> otherDays();

    /**
     * {@return temperatures of the shop by time of day, which come again every day; it runs straight from one to
     * the next}
     */
    List<? extends ShopReading> shop();

    /**
     * {@return the sessions of a date in order of time: those of that date where it is another day, else of its
     * day of the week}
     *
     * @param date by the builder's clock
     */
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
        /** {@return on which day of the week it comes} */
        DayOfWeek day();

        /** {@return from when to when} */
        BenchSession session();
    }

    /** A date with sessions of its own, or none. */
    interface OtherDay {
        /** {@return the date that is not as its day of the week is} */
        LocalDate date();

        /** {@return its sessions in order of time; empty for a day without} */
        List<BenchSession> sessions();

        /** {@return why it is another day; may be empty} */
        String note();
    }

    /** How warm the shop is at a time of day. */
    interface ShopReading {
        /** {@return the time of day by the builder's clock} */
        LocalTime at();

        /** {@return how warm it is then, from -40 °C to 60 °C} */
        Measured<Temperature> temperature();
    }
}
