package planewright.api.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;

class JournalReaderTest {
    private static final LocalDateTime MARCH = LocalDateTime.of(2025, 3, 14, 20, 15);

    private final JournalReader journal = reader(
            new Told("1", MARCH, List.of(new Weighed("left panel", 212)), List.of(new Flown("balance point", 92))),
            new Told("2", MARCH.plusDays(9), List.of(new Weighed("Left Panel ", 219)), List.of()),
            new Told("3", MARCH.plusDays(4), List.of(new Weighed("fin", 18)), List.of(new Flown("balance point", 95))));

    @Test
    void theNewestMeasurementOfANameWinsWhateverItsLetterCase() {
        var found = journal.latestMeasurement("build", "left panel").orElseThrow();
        assertThat(found.entry().id()).isEqualTo("2");
        assertThat(found.what().value()).isEqualTo(Measured.of(219, Units.GRAM));
        assertThat(journal.latestMeasurement("build", "right panel")).isEmpty();
    }

    @Test
    void theSetUpIsWhatWasLastChanged() {
        assertThat(journal.setUpValue("build", "Balance point")
                        .orElseThrow()
                        .what()
                        .value())
                .isEqualTo(Measured.of(95, Units.MILLIMETRE));
    }

    @Test
    void everyMeasurementComesWithItsEntry() {
        assertThat(journal.measurements("build"))
                .extracting(
                        dated -> dated.what().name() + " in " + dated.entry().id())
                .containsExactly("left panel in 1", "Left Panel  in 2", "fin in 3");
    }

    private static JournalReader reader(Entry... log) {
        return new JournalReader() {
            @Override
            public List<Build> builds() {
                return List.of();
            }

            @Override
            public List<Entry> log(String buildId) {
                return List.of(log);
            }
        };
    }

    private record Weighed(String name, double grams) implements Measurement {
        @Override
        public String id() {
            return name;
        }

        @Override
        public Measured<?> value() {
            return Measured.of(grams, Units.GRAM);
        }

        @Override
        public String written() {
            return Double.toString(grams);
        }

        @Override
        public String method() {
            return "kitchen scale";
        }
    }

    private record Flown(String name, double millimetres) implements SetUpValue {
        @Override
        public Measured<?> value() {
            return Measured.of(millimetres, Units.MILLIMETRE);
        }

        @Override
        public String written() {
            return Double.toString(millimetres);
        }
    }

    private record Told(String id, LocalDateTime at, List<Weighed> measurements, List<Flown> setUp) implements Entry {
        @Override
        public String build() {
            return "build";
        }

        @Override
        public Kind kind() {
            return Kind.WORK;
        }

        @Override
        public String title() {
            return "";
        }

        @Override
        public List<String> text() {
            return List.of();
        }

        @Override
        public List<String> tags() {
            return List.of();
        }

        @Override
        public List<Joint> joints() {
            return List.of();
        }

        @Override
        public List<Picture> pictures() {
            return List.of();
        }
    }
}
