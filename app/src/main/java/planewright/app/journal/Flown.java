package planewright.app.journal;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import planewright.api.journal.Entry;

/**
 * How far a build is proven: what its log says of flying.
 *
 * @param days on how many days it flew
 * @param last the last of them; empty where it has not flown
 */
public record Flown(int days, Optional<LocalDate> last) {
    public static Flown of(List<EntryRecord> log) {
        var days = log.stream()
                .filter(entry ->
                        entry.kind() == Entry.Kind.FLIGHT || !entry.flights().isEmpty())
                .map(entry -> entry.at().toLocalDate())
                .distinct()
                .toList();
        return new Flown(days.size(), days.stream().max(Comparator.naturalOrder()));
    }
}
