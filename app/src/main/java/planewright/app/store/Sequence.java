package planewright.app.store;

import com.fasterxml.jackson.databind.node.ArrayNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Merges two changes of one sequence of texts: paragraphs, tags. */
final class Sequence {
    private Sequence() {}

    static List<String> of(ArrayNode array) {
        var texts = new ArrayList<String>();
        array.forEach(element -> texts.add(element.textValue()));
        return texts;
    }

    /** Both changes in one; empty where they touch the same places. */
    static Optional<List<String>> merged(List<String> base, List<String> one, List<String> other) {
        if (one.equals(base) || one.equals(other)) {
            return Optional.of(other);
        }
        var first = Hunk.between(base, one);
        var second = Hunk.between(base, other);
        if (first.to() <= second.from() && !first.equals(second)) {
            return Optional.of(joined(base, first, second));
        }
        return second.to() <= first.from() ? Optional.of(joined(base, second, first)) : Optional.empty();
    }

    private static List<String> joined(List<String> base, Hunk first, Hunk second) {
        var joined = new ArrayList<>(base.subList(0, first.from()));
        joined.addAll(first.texts());
        joined.addAll(base.subList(first.to(), second.from()));
        joined.addAll(second.texts());
        joined.addAll(base.subList(second.to(), base.size()));
        return joined;
    }

    /**
     * What one change has replaced.
     *
     * @param from first place in the base that is replaced
     * @param to the place after the last
     * @param texts what stands there now
     */
    private record Hunk(int from, int to, List<String> texts) {
        static Hunk between(List<String> base, List<String> changed) {
            int most = Math.min(base.size(), changed.size());
            int front = 0;
            while (front < most && base.get(front).equals(changed.get(front))) {
                front++;
            }
            int back = 0;
            while (back < most - front
                    && base.get(base.size() - 1 - back).equals(changed.get(changed.size() - 1 - back))) {
                back++;
            }
            return new Hunk(front, base.size() - back, changed.subList(front, changed.size() - back));
        }
    }
}
