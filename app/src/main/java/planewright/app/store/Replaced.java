package planewright.app.store;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** What saves have replaced, so that undo gives a file back with all in it that we do not know. */
final class Replaced {
    private static final int MOST = 100;

    private final Map<String, Deque<Step>> steps = new HashMap<>();

    private record Step(String before, String after) {}

    /**
     * Notes a save.
     *
     * @param id of the record
     * @param before the file's text before
     * @param after the file's text after; empty where it was deleted
     */
    void note(String id, String before, String after) {
        var saves = steps.computeIfAbsent(id, any -> new ArrayDeque<>());
        saves.push(new Step(before, after));
        if (saves.size() > MOST) {
            saves.removeLast();
        }
    }

    /** The text before the last save, if that save has left the file as it is now. */
    Optional<String> before(String id, String now) {
        return Optional.ofNullable(steps.get(id))
                .map(Deque::peek)
                .filter(step -> step.after().equals(now))
                .map(Step::before);
    }

    /** The last save has been taken back. */
    void drop(String id) {
        steps.get(id).pop();
    }
}
