package planewright.acceptance.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import planewright.api.journal.Entry;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.MeasurementRecord;
import planewright.app.journal.PartRecord;
import planewright.app.journal.SetUpRecord;
import planewright.app.store.JournalFolder;
import planewright.shared.quantity.QuantityText;

/** Where Java speaks German, numbers bear a comma wherever they can be typed over, and what is left alone stays as it was written. */
class GermanNumbersTest extends InNewJournal {
    @Test
    void numbersBearTheSignOfTheLanguageAndTheJournalKeepsItsOwn() throws Exception {
        String build;
        EntryRecord before;
        try (var opened = JournalFolder.open(journal, user)) {
            var begun = BuildRecord.begin("Teal", LocalDate.of(2026, 10, 3));
            var motor = PartRecord.named("motor");
            begun = begun.withParts(List.of(new PartRecord(
                    motor.id(),
                    motor.name(),
                    "",
                    Optional.of(Measured.of(46.5, 0.5, Units.GRAM)),
                    Optional.of(Measured.of(-32.5, Units.MILLIMETRE)),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    false)));
            build = begun.id();
            before = EntryRecord.blank(
                            build, Entry.Kind.NOTE, LocalDate.of(2026, 10, 4).atTime(9, 30))
                    .withMeasurements(List.of(
                            MeasurementRecord.of("fin", QuantityText.parse("12.50 g ± 0.5 g", Units.GRAM), "scale")))
                    .withSetUp(List.of(
                            new SetUpRecord("balance point", QuantityText.parse("217.50 mm", Units.MILLIMETRE))));
            opened.journal().apply(Edit.add("build", begun));
            opened.journal().apply(Edit.add("entry", before));
        }
        var saved = Files.readString(journal.resolve(file(build)));
        var told = Speech.GERMAN.run(
                NumbersTyped.class,
                folder,
                journal.toString(),
                folder.resolve("user").toString());
        assertThat(told)
                .containsExactly(
                        "12,50 g ± 0,5 g",
                        "46,5 g ± 0,5 g",
                        "-32,5 mm",
                        "217,50 mm",
                        "12,50 g ± 0,5 g",
                        "217,50 mm",
                        "46,5 g ± 0,5 g",
                        "217,50 mm");
        assertThat(Files.readString(journal.resolve(file(build)))).isEqualTo(saved);
        try (var opened = JournalFolder.open(journal, user)) {
            var log = opened.journal().log(build);
            assertThat(log).containsExactly(before.withTitle("Anders"));
            assertThat(log.get(0).measurements()).isEqualTo(before.measurements());
        }
    }

    private String file(String build) throws Exception {
        try (var files = Files.walk(journal.resolve("builds"))) {
            return journal.relativize(files.filter(each -> each.endsWith("build.json"))
                            .findFirst()
                            .orElseThrow())
                    .toString();
        }
    }
}
