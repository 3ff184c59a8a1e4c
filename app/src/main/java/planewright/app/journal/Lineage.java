package planewright.app.journal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where a template came from and where it went.
 *
 * @param cameFrom the build it was taken from
 * @param derivedFrom the id of the template it was made from
 * @param wentTo builds that it was given to
 * @param flewOn builds that have flown with it
 */
public record Lineage(
        Optional<BuildDayRecord> cameFrom,
        Optional<String> derivedFrom,
        List<BuildDayRecord> wentTo,
        List<BuildDayRecord> flewOn) {
    public static final Lineage NONE = new Lineage(Optional.empty(), Optional.empty(), List.of(), List.of());

    public Lineage {
        wentTo = List.copyOf(wentTo);
        flewOn = List.copyOf(flewOn);
    }

    public Lineage from(BuildDayRecord build) {
        return new Lineage(Optional.of(build), derivedFrom, wentTo, flewOn);
    }

    public Lineage derivedFrom(TemplateRecord template) {
        return new Lineage(cameFrom, Optional.of(template.id()), wentTo, flewOn);
    }

    public Lineage goneTo(BuildDayRecord build) {
        return new Lineage(cameFrom, derivedFrom, with(wentTo, build), flewOn);
    }

    public Lineage flownOn(BuildDayRecord build) {
        return new Lineage(cameFrom, derivedFrom, wentTo, with(flewOn, build));
    }

    private static List<BuildDayRecord> with(List<BuildDayRecord> days, BuildDayRecord day) {
        var all = new ArrayList<>(days);
        if (!all.contains(day)) {
            all.add(day);
        }
        return all;
    }
}
