package planewright.app.ui.log;

import java.awt.EventQueue;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import planewright.api.journal.Joint;
import planewright.app.Program;
import planewright.app.index.Named;
import planewright.app.index.SearchIndex;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.CaptureCompletion;
import planewright.app.journal.CaptureLine;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.MaterialRecord;
import planewright.app.journal.MeasurementRecord;
import planewright.app.journal.PartRecord;
import planewright.app.ui.common.Completion.Offer;
import planewright.app.ui.common.Texts;
import planewright.shared.material.Materials;

/** Finds names with which a capture line may go on: those of this build before those of others, what was used last first. */
final class CaptureNames {
    private static final int MOST = 8;

    private final Program program;

    CaptureNames(Program program) {
        this.program = program;
    }

    /** Runs on the event thread once names of other builds are known too, if they are not yet. */
    void onMore(Runnable more) {
        var index = program.index();
        if (!index.isDone()) {
            index.thenRunAsync(more, EventQueue::invokeLater);
        }
    }

    /** May read files, so not on the event thread. */
    List<Offer> offers(String line, BuildRecord build) throws IOException {
        var asked = CaptureCompletion.of(line);
        if (asked.isEmpty()) {
            return List.of();
        }
        var wanted = asked.get();
        var found = new Found(wanted);
        var newestFirst = new ArrayList<>(program.journal().log(build.id()));
        Collections.reverse(newestFirst);
        if (wanted.isMaterial()) {
            materials(found, newestFirst);
        } else {
            names(found, build, newestFirst);
        }
        return found.offers();
    }

    private void names(Found found, BuildRecord build, List<EntryRecord> newestFirst) throws IOException {
        found.take(Texts.NAME_OF_PART, build.parts().stream().map(PartRecord::name));
        for (var entry : newestFirst) {
            found.take(Texts.NAME_OF_MEASUREMENT, entry.measurements().stream().map(MeasurementRecord::name));
            found.take(Texts.NAME_OF_JOINT, joints(entry.joints().stream().map(Joint::name)));
        }
        program.journal()
                .builds()
                .forEach(other ->
                        found.take(Texts.NAME_OF_PART, other.parts().stream().map(PartRecord::name)));
        found.takeAsJoints(build.parts().stream().map(PartRecord::name));
        newestFirst.forEach(entry -> found.takeAsJoints(entry.joints().stream().map(Joint::name)));
        found.take(Texts.NAME_OF_MEASUREMENT, inOthers(Named.MEASUREMENT, found.wanted()));
        found.take(Texts.NAME_OF_JOINT, joints(inOthers(Named.JOINT, found.wanted())));
    }

    private void materials(Found found, List<EntryRecord> newestFirst) throws IOException {
        newestFirst.forEach(entry ->
                found.take(Texts.NAME_OF_MATERIAL, entry.joints().stream().map(Joint::material)));
        found.take(
                Texts.NAME_OF_MATERIAL, program.journal().materials().stream().map(MaterialRecord::name));
        found.take(Texts.NAME_OF_MATERIAL, inOthers(Named.MATERIAL, found.wanted()));
        found.take(Texts.NAME_OF_MATERIAL, Materials.table().names(Materials.CURE).stream());
    }

    /** A line starts a joint only where it says so. */
    private static Stream<String> joints(Stream<String> names) {
        return names.filter(CaptureLine.Joints::isNamed);
    }

    /** The index is opened for this; until it is, other builds are left out. */
    private Stream<String> inOthers(Named kind, CaptureCompletion wanted) throws IOException {
        var index = program.index().exceptionally(unusable -> null).getNow(null);
        return index == null ? Stream.of() : names(index, kind, wanted);
    }

    private static Stream<String> names(SearchIndex index, Named kind, CaptureCompletion wanted) throws IOException {
        return index.names(kind, wanted::fits, MOST).stream();
    }

    /** Names that fit, each once however it is written. */
    private record Found(CaptureCompletion wanted, Map<String, Offer> byName) {
        Found(CaptureCompletion wanted) {
            this(wanted, new LinkedHashMap<>());
        }

        void take(Texts kind, Stream<String> names) {
            names.map(String::strip)
                    .filter(name -> !name.isEmpty() && wanted.fits(name))
                    .forEach(name -> byName.putIfAbsent(
                            name.toLowerCase(Locale.ROOT), new Offer(name, kind.text(), wanted.with(name))));
        }

        /** Names that fit once they say that something is joined. */
        void takeAsJoints(Stream<String> names) {
            take(
                    Texts.NAME_OF_JOINT,
                    names.filter(name -> !CaptureLine.Joints.isNamed(name) && !wanted.fits(name))
                            .map(name -> Texts.NAME_AS_JOINT.text(name.strip())));
        }

        List<Offer> offers() {
            return byName.values().stream()
                    .sorted(Comparator.comparing(offer -> !wanted.begins(offer.words())))
                    .limit(MOST)
                    .toList();
        }
    }
}
