package planewright.app.journal;

import java.util.ArrayList;
import java.util.List;

/**
 * What has become of records, through an edit or another program.
 *
 * @param present records that are new or say something else than before
 * @param gone records that are no more
 */
public record News(List<Present> present, List<Gone> gone) {
    public News {
        present = List.copyOf(present);
        gone = List.copyOf(gone);
    }

    /**
     * A record as it is now.
     *
     * @param stamp as in {@link EntryLine#stamp()}
     */
    public record Present(Kept record, long stamp) {}

    /**
     * A record that is no more.
     *
     * @param build the build in whose log an entry stood; the id itself for any other record
     */
    public record Gone(String id, String build) {
        static Gone of(Kept record) {
            return new Gone(record.id(), record instanceof EntryRecord entry ? entry.build() : record.id());
        }
    }

    /** Whether nothing has changed. */
    public boolean isNone() {
        return present.isEmpty() && gone.isEmpty();
    }

    static News of(List<Storage.Saved> saved) {
        var present = new ArrayList<Present>();
        var gone = new ArrayList<Gone>();
        for (var each : saved) {
            each.change()
                    .after()
                    .ifPresentOrElse(
                            record -> present.add(new Present(record, each.stamp())),
                            () -> gone.add(Gone.of(each.change().subject())));
        }
        return new News(present, gone);
    }
}
