package planewright.app.ui.pictures;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Cells of days: counted by hand, and, for days at random, that no two share a pixel and each is found at its place. */
class DayRowsTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 14);
    private static final DayRows.Sizes SIZES = new DayRows.Sizes(10, 20, 5);

    private static List<LocalDate> days(int... counts) {
        return IntStream.range(0, counts.length)
                .boxed()
                .flatMap(day -> Stream.generate(() -> DAY.minusDays(day)).limit(counts[day]))
                .toList();
    }

    /** Four columns: 2 and 1 stand side by side, 2 more do not fit; 6 want two lines of their own. */
    @Test
    void shortDaysStandBesideEachOtherAndLongOnesAlone() {
        var rows = new DayRows(days(2, 1, 2, 6, 1), 43, SIZES);
        assertThat(rows.daysBetween(0, 1000))
                .extracting(DayRows.Day::x, DayRows.Day::top, DayRows.Day::width)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(0, 0, 20),
                        org.assertj.core.groups.Tuple.tuple(20, 0, 10),
                        org.assertj.core.groups.Tuple.tuple(0, 25, 20),
                        org.assertj.core.groups.Tuple.tuple(0, 50, 40),
                        org.assertj.core.groups.Tuple.tuple(0, 95, 10));
        assertThat(rows.height()).isEqualTo(120);
        assertThat(rows.between(26, 30)).containsExactly(3, 5);
        assertThat(rows.between(50, 52)).as("headings alone").containsExactly(5, 5);
        assertThat(rows.between(60, 80)).containsExactly(5, 11);
    }

    @Test
    void arrowsFindTheCellAboveAndBelowAcrossHeadings() {
        var rows = new DayRows(days(2, 1, 2, 6, 1), 43, SIZES);
        assertThat(rows.below(2)).as("a shorter line gives its last").isEqualTo(4);
        assertThat(rows.below(4)).isEqualTo(6);
        assertThat(rows.below(8)).as("from four to two").isEqualTo(10);
        assertThat(rows.below(10)).isEqualTo(11);
        assertThat(rows.below(11)).as("the last line").isEqualTo(11);
        assertThat(rows.above(11)).isEqualTo(9);
        assertThat(rows.above(9)).isEqualTo(5);
        assertThat(rows.above(8)).isEqualTo(4);
        assertThat(rows.above(1)).as("the first line").isEqualTo(1);
    }

    @Test
    void nothingHasNoCells() {
        var rows = new DayRows(List.of(), 100, SIZES);
        assertThat(rows.height()).isZero();
        assertThat(rows.at(3, 3)).isEqualTo(-1);
        assertThat(rows.between(0, 100)).containsExactly(0, 0);
        assertThat(rows.daysBetween(0, 100)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(ints = {4, 10, 37, 95, 400})
    void everyCellIsFoundAtItsPlaceAndOnlyThere(int width) {
        var random = new Random(width);
        var dates = days(random.ints(40, 1, 14).toArray());
        var rows = new DayRows(dates, width, SIZES);
        for (int place = 0; place < dates.size(); place++) {
            var cell = rows.cell(place);
            assertThat(rows.at(cell.x, cell.y)).isEqualTo(place);
            assertThat(rows.at(cell.x + 9, cell.y + 19)).isEqualTo(place);
            assertThat(rows.between(cell.y, cell.y))
                    .satisfies(span -> assertThat(span[0]).isLessThanOrEqualTo(span[1]));
            int wanted = place;
            var seen = rows.between(cell.y + 3, cell.y + 4);
            assertThat(wanted).isBetween(seen[0], seen[1] - 1);
            assertThat(rows.daysBetween(cell.y, cell.y))
                    .anyMatch(day -> wanted >= day.first() && wanted < day.first() + day.count());
        }
    }
}
