package planewright.app.ui.pictures;

import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Which pictures are chosen, by their places: one leads, and a range goes from the anchor to it. */
final class Chosen {
    private final BitSet places = new BitSet();
    private final Runnable changed;
    private int lead = -1;
    private int anchor = -1;

    /** What is chosen, whatever places it will have. */
    record Keys(Set<String> chosen, Optional<String> lead) {}

    Chosen(Runnable changed) {
        this.changed = changed;
    }

    boolean has(int place) {
        return places.get(place);
    }

    /** The one that was chosen last, −1 where none was. */
    int lead() {
        return lead;
    }

    int count() {
        return places.cardinality();
    }

    IntStream places() {
        return places.stream();
    }

    void only(int place) {
        places.clear();
        places.set(place);
        lead = place;
        anchor = place;
        changed.run();
    }

    void toggle(int place) {
        places.flip(place);
        lead = place;
        anchor = place;
        changed.run();
    }

    void extendTo(int place) {
        int from = anchor < 0 ? place : anchor;
        places.clear();
        places.set(Math.min(from, place), Math.max(from, place) + 1);
        lead = place;
        anchor = from;
        changed.run();
    }

    void all(int count) {
        places.set(0, count);
        lead = lead < 0 && count > 0 ? 0 : lead;
        changed.run();
    }

    Keys keys(List<LoggedPicture> pictures) {
        return new Keys(
                places.stream().mapToObj(place -> pictures.get(place).key()).collect(Collectors.toSet()),
                lead < 0 ? Optional.empty() : Optional.of(pictures.get(lead).key()));
    }

    /** Chooses the same pictures at their new places, without telling. */
    void restore(Keys keys, List<LoggedPicture> pictures) {
        var now = new HashMap<String, Integer>();
        for (int place = 0; place < pictures.size(); place++) {
            now.putIfAbsent(pictures.get(place).key(), place);
        }
        places.clear();
        keys.chosen().stream().filter(now::containsKey).forEach(key -> places.set(now.get(key)));
        lead = keys.lead().map(key -> now.getOrDefault(key, -1)).orElse(-1);
        anchor = lead;
    }
}
