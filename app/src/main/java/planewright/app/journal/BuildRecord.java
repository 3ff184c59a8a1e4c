package planewright.app.journal;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import planewright.api.journal.Build;
import planewright.api.journal.Life;
import planewright.api.journal.Planform;

/**
 * A build as the journal holds it.
 *
 * @param begunFrom the build that it was begun from, and when
 */
public record BuildRecord(
        String id,
        String name,
        Life life,
        String layout,
        String datum,
        LocalDate begun,
        List<String> notes,
        List<PartRecord> parts,
        Optional<Planform> planform,
        Optional<BuildDayRecord> begunFrom)
        implements Build, Kept {
    public BuildRecord {
        name = Checks.notBlank("name of a build", name);
        notes = List.copyOf(notes);
        parts = List.copyOf(parts);
    }

    /** A build that was begun from no other. */
    public BuildRecord(
            String id,
            String name,
            Life life,
            String layout,
            String datum,
            LocalDate begun,
            List<String> notes,
            List<PartRecord> parts,
            Optional<Planform> planform) {
        this(id, name, life, layout, datum, begun, notes, parts, planform, Optional.empty());
    }

    /** Its name: lists and boxes ask for words of whatever they hold, and all of a build are thousands. */
    @Override
    public String toString() {
        return name;
    }

    /** A build of which nothing but the name is known. */
    public static BuildRecord begin(String name, LocalDate today) {
        return new BuildRecord(Ids.next(), name, Life.SKETCHED, "", "", today, List.of(), List.of(), Optional.empty());
    }

    public BuildRecord withName(String changed) {
        return new BuildRecord(id, changed, life, layout, datum, begun, notes, parts, planform, begunFrom);
    }

    public BuildRecord withLife(Life changed) {
        return new BuildRecord(id, name, changed, layout, datum, begun, notes, parts, planform, begunFrom);
    }

    public BuildRecord withLayout(String changed) {
        return new BuildRecord(id, name, life, changed, datum, begun, notes, parts, planform, begunFrom);
    }

    public BuildRecord withDatum(String changed) {
        return new BuildRecord(id, name, life, layout, changed, begun, notes, parts, planform, begunFrom);
    }

    public BuildRecord withParts(List<PartRecord> changed) {
        return new BuildRecord(id, name, life, layout, datum, begun, notes, changed, planform, begunFrom);
    }

    public BuildRecord withBegunFrom(BuildDayRecord proven) {
        return new BuildRecord(id, name, life, layout, datum, begun, notes, parts, planform, Optional.of(proven));
    }

    public BuildRecord withPlanform(Planform changed) {
        return new BuildRecord(id, name, life, layout, datum, begun, notes, parts, Optional.of(changed), begunFrom);
    }
}
