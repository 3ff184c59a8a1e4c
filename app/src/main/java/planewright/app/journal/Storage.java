package planewright.app.journal;

import java.io.IOException;

/** Where the open journal's records are made durable. */
public interface Storage {
    /**
     * Makes one change durable; when it returns, the change survives a crash of program and machine.
     *
     * @return the change as it was made: where another program has changed the record meanwhile, both are in it
     * @throws IOException if it could not; then the record on disk is the one from before
     */
    Saved save(Edit.Change change) throws IOException;

    /**
     * A change that is durable.
     *
     * @param stamp as in {@link EntryLine#stamp()}
     */
    record Saved(Edit.Change change, long stamp) {}
}
