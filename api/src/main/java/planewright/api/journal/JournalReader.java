package planewright.api.journal;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apiguardian.api.API;
import planewright.api.figure.Outline;

/** Questions a calculator may ask of the open journal. All answers are of one instant. */
@API(status = API.Status.MAINTAINED, since = "0.1.0")
public interface JournalReader {
    /** {@return all builds, the latest begun first} */
    List<? extends Build> builds();

    /**
     * {@return a build's log in order of time; empty for an unknown build}
     *
     * @param buildId the ULID of a build, as {@link Build#id()}
     */
    List<? extends Entry> log(String buildId);

    /**
     * {@return the build of that id, or empty}
     *
     * @param id a ULID
     */
    default Optional<? extends Build> build(String id) {
        return builds().stream().filter(build -> build.id().equals(id)).findFirst();
    }

    /**
     * {@return the newest measurement of that name in a build's log, letter case and outer spaces aside}
     *
     * @param buildId the ULID of a build
     * @param name what was measured
     */
    default Optional<Dated<Measurement>> latestMeasurement(String buildId, String name) {
        return measurements(buildId).stream()
                .filter(dated -> sameName(dated.what().name(), name))
                .max(Comparator.comparing(dated -> dated.entry().at()));
    }

    /**
     * {@return every measurement of a build's log in order of time}
     *
     * @param buildId the ULID of a build
     */
    default List<Dated<Measurement>> measurements(String buildId) {
        return log(buildId).stream()
                .flatMap(entry -> entry.measurements().stream().map(value -> new Dated<Measurement>(value, entry)))
                .toList();
    }

    /**
     * {@return the set-up value of that name a build flies with now}
     *
     * @param buildId the ULID of a build
     * @param name what is set
     */
    default Optional<Dated<SetUpValue>> setUpValue(String buildId, String name) {
        return log(buildId).stream()
                .flatMap(entry -> entry.setUp().stream().map(value -> new Dated<SetUpValue>(value, entry)))
                .filter(dated -> sameName(dated.what().name(), name))
                .max(Comparator.comparing(dated -> dated.entry().at()));
    }

    /** {@return all templates, by name} */
    default List<? extends Template> templates() {
        return List.of();
    }

    /**
     * {@return the shape of an outline template; empty for other templates, and where its file cannot be read}
     *
     * @param template of any kind
     */
    default Optional<Outline> outline(Template template) {
        return Optional.empty();
    }

    /** {@return when its owner is at the bench, and how warm it is there; empty where nobody has said} */
    default Optional<? extends BenchCalendar> calendar() {
        return Optional.empty();
    }

    /** {@return the owner's own experience with materials, which goes before any table; in the owner's order} */
    default List<? extends OwnMaterial> materials() {
        return List.of();
    }

    /**
     * {@return whether two names mean the same thing: letter case and outer spaces aside}
     *
     * @param one a name as somebody wrote it
     * @param other another one
     */
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
