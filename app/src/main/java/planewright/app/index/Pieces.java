package planewright.app.index;

import java.util.ArrayList;
import java.util.List;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.EntryWords;
import planewright.app.journal.JointRecord;

/** What of an entry can be searched. */
final class Pieces {
    static final String JOINT = "joint";

    /** In the languages of the window. */
    private static final String JOINT_WORDS = " joint Klebung";

    private Pieces() {}

    /**
     * A piece of an entry.
     *
     * @param where what it is of the entry
     * @param text its words
     */
    record Piece(String where, String text) {
        /** The text, and where nobody writes in it what it is, that too: a joint is called by the parts it joins. */
        String words() {
            return where.equals(JOINT) ? text + JOINT_WORDS : text;
        }
    }

    /** What the entries of a build are found by of it. */
    static String words(BuildRecord build) {
        return build.layout().isEmpty() ? build.name() : build.name() + ", " + build.layout();
    }

    /**
     * @param build what it is found by of its build
     */
    static List<Piece> of(EntryRecord entry, String build) {
        var pieces = new ArrayList<Piece>();
        add(pieces, "title", entry.title());
        entry.text().forEach(paragraph -> add(pieces, "text", paragraph));
        entry.measurements()
                .forEach(measurement -> add(
                        pieces,
                        "measurement",
                        measurement.name() + " " + measurement.quantity().text() + " " + measurement.method()));
        entry.joints().forEach(joint -> add(pieces, JOINT, text(joint)));
        entry.setUp()
                .forEach(value -> add(
                        pieces, "set-up", value.name() + " " + value.quantity().text()));
        entry.flights().forEach(flight -> add(pieces, "flight", flight.conditions() + " " + flight.behaviour()));
        entry.repairs().forEach(repair -> add(pieces, "repair", EntryWords.repair(repair)));
        entry.tasks().forEach(task -> add(pieces, "task", EntryWords.task(task)));
        entry.pictures().forEach(picture -> add(pieces, "picture", picture.caption()));
        add(pieces, "tag", String.join(" ", entry.tags()));
        add(pieces, "kind", entry.kind().word());
        entry.keptResult().ifPresent(kept -> add(pieces, "calculator", kept.calculator()));
        add(pieces, "build", build);
        return pieces;
    }

    /** What is joined and what holds it. */
    static String text(JointRecord joint) {
        return joint.material().isEmpty() ? joint.name() : joint.name() + " · " + joint.material();
    }

    private static void add(List<Piece> pieces, String where, String text) {
        if (!text.isBlank()) {
            pieces.add(new Piece(where, text.strip()));
        }
    }
}
