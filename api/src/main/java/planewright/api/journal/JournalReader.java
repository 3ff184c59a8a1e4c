package planewright.api.journal;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apiguardian.api.API;
import planewright.api.figure.Outline;

/** Questions a calculator may ask of the open journal. All answers are of one instant. */
@API(status = API.Status.MAINTAINED, since = "0.1.0")
public interface JournalReader {
    /** All builds, the latest begun first. */
    List<? extends Build> builds();

    /** A build's log in order of time; empty for an unknown build. */
    List<? extends Entry> log(String buildId);

    /** The build of that id, or empty. */
    default Optional<? extends Build> build(String id) {
        return builds().stream().filter(build -> build.id().equals(id)).findFirst();
    }

    /** The newest measurement of that name in a build's log, letter case and outer spaces aside. */
    default Optional<Dated<Measurement>> latestMeasurement(String buildId, String name) {
        return measurements(buildId).stream()
                .filter(dated -> sameName(dated.what().name(), name))
                .max(Comparator.comparing(dated -> dated.entry().at()));
    }

    /** Every measurement of a build's log in order of time. */
    default List<Dated<Measurement>> measurements(String buildId) {
        return log(buildId).stream()
                .flatMap(entry -> entry.measurements().stream().map(value -> new Dated<Measurement>(value, entry)))
                .toList();
    }

    /** The set-up value of that name a build flies with now. */
    default Optional<Dated<SetUpValue>> setUpValue(String buildId, String name) {
        return log(buildId).stream()
                .flatMap(entry -> entry.setUp().stream().map(value -> new Dated<SetUpValue>(value, entry)))
                .filter(dated -> sameName(dated.what().name(), name))
                .max(Comparator.comparing(dated -> dated.entry().at()));
    }

    /** All templates, by name. */
    default List<? extends Template> templates() {
        return List.of();
    }

    /** The shape of an outline template; empty for other templates, and where its file cannot be read. */
    default Optional<Outline> outline(Template template) {
        return Optional.empty();
    }

    /** When its owner is at the bench, and how warm it is there; empty where nobody has said. */
    default Optional<? extends BenchCalendar> calendar() {
        return Optional.empty();
    }

    /** The owner's own experience with materials, which goes before any table; in the owner's order. */
    default List<? extends OwnMaterial> materials() {
        return List.of();
    }

    /** Whether two names mean the same thing: letter case and outer spaces aside. */
    static boolean sameName(String one, String other) {
        return one.strip().equalsIgnoreCase(other.strip());
    }

    /**
     * A value and the entry it stands in.
     *
     * @param what the value
     * @param entry where it stands
     * @param <T> its kind
     */
    record Dated<T>(T what, Entry entry) {}
}
