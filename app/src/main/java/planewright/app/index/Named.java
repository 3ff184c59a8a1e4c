package planewright.app.index;

import java.util.List;
import java.util.stream.Stream;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.JointRecord;
import planewright.app.journal.MeasurementRecord;

/** What entries call things by names that come again from build to build. */
public enum Named {
    MEASUREMENT,
    JOINT,
    MATERIAL;

    /** The field of the index. */
    static final String FIELD = "named";

    /** All terms of an entry. */
    static List<String> terms(EntryRecord entry) {
        return Stream.of(
                        MEASUREMENT.terms(entry.measurements().stream().map(MeasurementRecord::name)),
                        JOINT.terms(entry.joints().stream().map(JointRecord::name)),
                        MATERIAL.terms(entry.joints().stream().map(JointRecord::material)))
                .flatMap(terms -> terms)
                .distinct()
                .toList();
    }

    /** What all terms of this kind begin with. */
    String head() {
        return name() + " ";
    }

    private Stream<String> terms(Stream<String> names) {
        return names.map(String::strip).filter(name -> !name.isEmpty()).map(name -> Documents.term(head() + name));
    }
}
