package planewright.app.calc;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import planewright.api.journal.Entry;
import planewright.api.journal.Joint;
import planewright.api.journal.JournalReader.Dated;

/**
 * The joints of a log. A later one takes the place of an earlier one of the same name: its times are known better.
 *
 * @param newestFirst by start
 */
public record Joints(List<Dated<Joint>> newestFirst) {
    /** Of a log in order of time. */
    public static Joints of(List<? extends Entry> log) {
        var all = new ArrayList<Dated<Joint>>();
        log.forEach(entry -> entry.joints().forEach(joint -> all.add(new Dated<>(joint, entry))));
        Collections.reverse(all);
        all.sort(Comparator.comparing((Dated<Joint> dated) -> dated.what().start())
                .reversed());
        var names = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
        return new Joints(all.stream()
                .filter(dated -> names.add(dated.what().name().strip()))
                .toList());
    }

    Optional<Dated<Joint>> newest() {
        return newestFirst.stream().findFirst();
    }

    /** The newest that nobody has given an end. */
    Optional<Dated<Joint>> unfinished() {
        return newestFirst.stream()
                .filter(dated -> dated.what().fullyCured().isEmpty())
                .findFirst();
    }
}
