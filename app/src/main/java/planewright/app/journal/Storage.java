package planewright.app.journal;

import java.io.IOException;

/** Where the open journal's records are made durable. */
public interface Storage {
    /**
     * Makes one change durable; when it returns, the change survives a crash of program and machine.
     *
     * @throws IOException if it could not; then the record on disk is the one from before
     */
    void save(Edit.Change change) throws IOException;
}
