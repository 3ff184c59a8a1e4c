package planewright.app.calc;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import java.util.Optional;
import planewright.app.store.JsonFiles;

/**
 * Where an input was taken from.
 *
 * @param place {@code measurement}, {@code mass ledger}, {@code set-up}, {@code build}
 * @param name the measurement's, part's or set-up value's name
 * @param entry the id of the entry it stands in; empty where it stands on the build
 * @param said the same for a builder: {@code measured 14 Mar 2025, kitchen scale}
 */
public record Origin(String place, String name, Optional<String> entry, String said) {
    /** Origins by path of the input, as a kept result carries them. */
    public static ObjectNode json(Map<String, Origin> origins) {
        var object = JsonFiles.object();
        origins.forEach((path, origin) -> {
            var node = object.putObject(path).put("place", origin.place()).put("name", origin.name());
            origin.entry().ifPresent(entry -> node.put("entry", entry));
            node.put("said", origin.said());
        });
        return object;
    }
}
