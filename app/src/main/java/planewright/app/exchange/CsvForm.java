package planewright.app.exchange;

import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * How a table of measurements is written.
 *
 * @param columns headers of columns that are not called as usual
 * @param separator between cells: a comma by RFC 4180, in some countries a semicolon
 * @param dates how days are written, where not as in ISO 8601
 */
public record CsvForm(Map<Column, String> columns, char separator, Optional<DateTimeFormatter> dates) {
    /**
     * Days in a form of their own, such as {@code dd.MM.yyyy}.
     *
     * @throws IllegalArgumentException if no day is written so
     */
    public static DateTimeFormatter days(String pattern) {
        return DateTimeFormatter.ofPattern(pattern.replace('y', 'u'), Locale.ROOT)
                .withResolverStyle(ResolverStyle.STRICT);
    }

    public CsvForm {
        columns = Map.copyOf(columns);
        if (separator != ',' && separator != ';' && separator != '\t') {
            throw new IllegalArgumentException(
                    "separator is '" + separator + "'; accepted: a comma, a semicolon or a tab");
        }
    }
}
