package planewright.app.journal;

import java.util.List;

/** What its owner knows of materials, as the journal holds it. A journal has one such list at most. */
public record MaterialsRecord(List<MaterialRecord> materials) implements Kept {
    /** Stands for the list where other records have a ULID. */
    public static final String ID = "materials";

    public static final MaterialsRecord EMPTY = new MaterialsRecord(List.of());

    public MaterialsRecord {
        materials = List.copyOf(materials);
    }

    @Override
    public String id() {
        return ID;
    }
}
