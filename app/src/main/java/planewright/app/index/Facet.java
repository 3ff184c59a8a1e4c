package planewright.app.index;

import java.util.List;
import java.util.stream.Stream;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.JointRecord;

/** What entries are counted by, and can be kept to. */
public enum Facet {
    /** The build, by its id. */
    BUILD("build"),
    TAG("tag"),
    /** The kind of entry, by its word. */
    KIND("kind"),
    /** What joints are made with. */
    MATERIAL("material"),
    /** The life of the build, by its word. */
    LIFE("life");

    private final String word;

    Facet(String word) {
        this.word = word;
    }

    /** The word that people and JSON carry. */
    public String word() {
        return word;
    }

    /** The values of an entry, each once. */
    List<String> values(EntryRecord entry, String life) {
        return switch (this) {
            case BUILD -> List.of(entry.build());
            case TAG -> entry.tags();
            case KIND -> List.of(entry.kind().word());
            case MATERIAL ->
                entry.joints().stream()
                        .map(JointRecord::material)
                        .map(String::strip)
                        .filter(material -> !material.isEmpty())
                        .distinct()
                        .toList();
            case LIFE -> Stream.of(life).filter(each -> !each.isEmpty()).toList();
        };
    }

    /** The field of the index. */
    String field() {
        return "facet-" + word;
    }
}
