package planewright.app.journal;

import java.time.LocalDate;
import planewright.api.journal.BuildDay;

/** A build on a day as a template holds it. */
public record BuildDayRecord(String build, String name, LocalDate date) implements BuildDay {
    public BuildDayRecord {
        name = Checks.notBlank("name of a template's build", name);
    }

    public static BuildDayRecord of(BuildRecord build, LocalDate date) {
        return new BuildDayRecord(build.id(), build.name(), date);
    }
}
