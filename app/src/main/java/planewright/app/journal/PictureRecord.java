package planewright.app.journal;

import planewright.api.journal.Picture;

/** A picture of an entry as the journal holds it. */
public record PictureRecord(String hash, String type, String caption) implements Picture {
    public PictureRecord {
        Checks.hash("a picture", hash);
        if (!type.matches("[a-z0-9]{1,8}")) {
            throw new IllegalArgumentException("type of a picture is '" + type + "'; accepted: such as jpg or png");
        }
    }
}
