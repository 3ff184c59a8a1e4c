package planewright.app.store;

/** The version of the file format. */
final class Schema {
    /** What this program writes, and the newest that it reads. */
    static final int CURRENT = 1;

    private Schema() {}

    /**
     * Refuses a file of a newer format.
     *
     * @throws Unreadable also where the field is missing or no whole number
     */
    static void require(Fields fields) throws Unreadable {
        int schema = fields.whole("schema");
        if (schema < 1) {
            throw new Unreadable("field 'schema' is " + schema + "; accepted: 1 to " + CURRENT);
        }
        if (schema > CURRENT) {
            throw new Unreadable("it was written by a newer version of the program: its schema is " + schema
                    + "; accepted: 1 to " + CURRENT);
        }
    }
}
