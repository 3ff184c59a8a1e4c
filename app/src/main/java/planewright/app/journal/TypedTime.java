package planewright.app.journal;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.chrono.IsoChronology;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.FormatStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Days with a clock time as they are typed: {@code 2025-03-14 20:15}, or as the builder's country writes them, {@code 14.3.2025 20:15}. */
final class TypedTime {
    private TypedTime() {}

    /** The time that was typed; empty where it is none. */
    static Optional<LocalDateTime> parse(String typed, Locale locale) {
        var text = typed.strip().replace(",", "");
        return time(text.replaceFirst("(?<=^\\d{4}-\\d\\d-\\d\\d) +", "T"), DateTimeFormatter.ISO_LOCAL_DATE_TIME)
                .or(() -> Stream.of(FormatStyle.SHORT, FormatStyle.MEDIUM)
                        .flatMap(style -> forms(style, locale).stream())
                        .flatMap(form -> time(text, form).stream())
                        .findFirst());
    }

    /** With a year of two digits and of four; a day or month of one digit needs no zero before it. */
    private static List<DateTimeFormatter> forms(FormatStyle style, Locale locale) {
        var pattern = DateTimeFormatterBuilder.getLocalizedDateTimePattern(
                        style, FormatStyle.SHORT, IsoChronology.INSTANCE, locale)
                .replace(",", "")
                .replace("dd", "d")
                .replaceFirst("(?<!M)MM(?!M)", "M");
        return Stream.of("uu", "uuuu")
                .map(year -> new DateTimeFormatterBuilder()
                        .parseCaseInsensitive()
                        .appendPattern(pattern.replaceFirst("[yu]+", year))
                        .toFormatter(locale))
                .toList();
    }

    private static Optional<LocalDateTime> time(String typed, DateTimeFormatter form) {
        try {
            return Optional.of(LocalDateTime.parse(typed, form));
        } catch (DateTimeException other) {
            return Optional.empty();
        }
    }
}
