package planewright.app.index;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DaysTest {
    @ParameterizedTest
    @CsvSource({
        "2025-03-14, 2025-03-14, 2025-03-14",
        "2024-02, 2024-02-01, 2024-02-29",
        "2025, 2025-01-01, 2025-12-31",
        "' 2025 ', 2025-01-01, 2025-12-31"
    })
    void aMonthOrAYearHasAFirstAndALastDay(String text, LocalDate first, LocalDate last) {
        assertThat(Days.first(text)).isEqualTo(first);
        assertThat(Days.last(text)).isEqualTo(last);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "march", "2025-13", "2025-02-30", "14.3.2025", "25"})
    void anythingElseIsRefused(String text) {
        assertThatThrownBy(() -> Days.first(text))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("'" + text + "' is no day; accepted: a day as 2025-03-14, a month as 2025-03, or a year");
    }

    @Test
    void aFilterThatHoldsNoDayIsRefused() {
        var first = Optional.of(LocalDate.of(2025, 3, 2));
        var last = Optional.of(LocalDate.of(2025, 3, 1));
        assertThatThrownBy(() -> Filter.NONE.between(first, last))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("from 2025-03-02 to 2025-03-01 holds no day");
    }
}
