package planewright.app.journal;

import planewright.api.journal.Picture;

/** A picture of an entry as the journal holds it. */
public record PictureRecord(String hash, String type, String caption) implements Picture {
    public PictureRecord {
        if (!hash.matches("[0-9a-f]{64}")) {
            throw new IllegalArgumentException(
                    "hash of a picture is '" + hash + "'; accepted: 64 lower-case hexadecimal digits");
        }
        if (!type.matches("[a-z0-9]{1,8}")) {
            throw new IllegalArgumentException("type of a picture is '" + type + "'; accepted: such as jpg or png");
        }
    }
}
