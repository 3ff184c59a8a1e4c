package planewright.app.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TypedTimeTest {
    private static final LocalDateTime EVENING = LocalDateTime.of(2025, 3, 4, 20, 15);

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "de|2025-03-04 20:15",
                "de|2025-03-04T20:15",
                "de|04.03.2025, 20:15",
                "de|4.3.25 20:15",
                "de|4.3.2025 20:15",
                "en-GB|04/03/2025 20:15",
                "en-GB|4 Mar 2025, 20:15",
                "en-US|3/4/25 8:15 pm",
                "en-US|Mar 4, 2025, 8:15 PM"
            })
    void aTimeIsReadAsTheCountryWritesItAndInOrderOfSize(String language, String typed) {
        assertThat(TypedTime.parse(typed, Locale.forLanguageTag(language))).contains(EVENING);
    }

    @Test
    void whatIsNoTimeStaysNone() {
        assertThat(TypedTime.parse("31.2.", Locale.GERMANY)).isEmpty();
        assertThat(TypedTime.parse("4.13.2025 20:15", Locale.GERMANY)).isEmpty();
        assertThat(TypedTime.parse("2025-03-04", Locale.GERMANY)).isEmpty();
        assertThat(TypedTime.parse("tonight", Locale.UK)).isEmpty();
    }
}
