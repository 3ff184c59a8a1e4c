package planewright.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import planewright.api.quantity.Units;
import planewright.app.Bench;
import planewright.app.journal.EntryDraft;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.MeasurementRecord;
import planewright.app.journal.PictureRecord;
import planewright.shared.quantity.Written;

/** Nothing that either side wrote is lost, and what both changed is said. */
class MergedDraftTest {
    private final EntryRecord base = Bench.entry(Bench.build("Grey heron"), "Fin")
            .withText(List.of("Cut."))
            .withTags(List.of("tail"))
            .withMeasurements(List.of(measured("aaa111", "height", "90"), measured("bbb222", "chord", "60")));

    @Test
    void whatOneSideLeftAloneIsTheOthers() {
        var merged = merge(base.withTitle("Fin, cut"), base.withText(List.of("Cut.", "Sanded.")));
        assertThat(merged.told()).isEmpty();
        assertThat(merged.draft())
                .isEqualTo(EntryDraft.of(base.withTitle("Fin, cut").withText(List.of("Cut.", "Sanded."))));
    }

    @Test
    void whatWasNotTouchedAtAllStays() {
        assertThat(merge(base, base).draft()).isEqualTo(EntryDraft.of(base));
        var saved = base.withTitle("Saved").withMeasurements(List.of());
        assertThat(merge(base, saved).draft()).isEqualTo(EntryDraft.of(saved));
        assertThat(merge(saved, base).draft()).isEqualTo(EntryDraft.of(saved));
        assertThat(merge(saved, saved).told()).isEmpty();
    }

    @Test
    void ofAFieldThatBothChangedTheSavedStaysAndTheOtherIsTold() {
        var merged = merge(
                base.withTitle("Mine").withTags(List.of("mine")),
                base.withTitle("Saved").withTags(List.of("saved")));
        assertThat(merged.draft().title()).isEqualTo("Saved");
        assertThat(merged.draft().tags()).isEqualTo("saved");
        assertThat(merged.told()).containsExactly("title: 'Mine'", "tags: 'mine'");
    }

    @Test
    void textThatBothChangedIsKeptFromBoth() {
        var merged = merge(base.withText(List.of("Mine.")), base.withText(List.of("Saved.")));
        assertThat(merged.draft().text()).isEqualTo("Saved.\n\nMine.");
    }

    @Test
    void rowsAreJoinedByTheirIds() {
        var height = base.measurements().get(0);
        var chord = base.measurements().get(1);
        var mine = base.withMeasurements(
                List.of(measured("aaa111", "height", "91"), chord, measured("ccc333", "mass", "4")));
        var saved = base.withMeasurements(List.of(height, measured("ddd444", "sweep", "30")));
        var rows = merge(mine, saved).draft().measurements();
        assertThat(rows)
                .extracting(row -> row.id() + " " + row.name() + " " + row.quantity())
                .containsExactly("aaa111 height 91 mm", "ddd444 sweep 30 mm", "ccc333 mass 4 mm");
    }

    @Test
    void aRowThatBothChangedIsThereTwice() {
        var mine = base.withMeasurements(List.of(measured("aaa111", "height", "91")));
        var saved = base.withMeasurements(List.of(measured("aaa111", "height", "92")));
        assertThat(merge(mine, saved).draft().measurements())
                .extracting(row -> row.id() + " " + row.quantity())
                .containsExactly("aaa111 92 mm", " 91 mm");
    }

    @Test
    void aPictureIsShownOnce() {
        var hash = "ab".repeat(32);
        var mine = base.withPictures(List.of(new PictureRecord(hash, "jpg", "mine")));
        var saved = base.withPictures(List.of(new PictureRecord(hash, "jpg", "saved")));
        assertThat(merge(mine, saved).draft().pictures()).isEqualTo(saved.pictures());
    }

    private MergedDraft merge(EntryRecord written, EntryRecord saved) {
        return MergedDraft.of(EntryDraft.of(base), EntryDraft.of(written), EntryDraft.of(saved));
    }

    private static MeasurementRecord measured(String id, String name, String number) {
        return new MeasurementRecord(id, name, new Written(number, Units.MILLIMETRE, Optional.empty()), "");
    }
}
