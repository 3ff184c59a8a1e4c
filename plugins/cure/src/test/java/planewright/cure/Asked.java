package planewright.cure;

import java.time.DayOfWeek;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Length;
import javax.measure.quantity.Time;
import planewright.api.calculator.Run;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.journal.BenchCalendar;
import planewright.api.journal.BenchSession;
import planewright.api.journal.Build;
import planewright.api.journal.Entry;
import planewright.api.journal.JournalReader;
import planewright.api.journal.OwnMaterial;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;

/** A question of a test: the inputs as they are at first, but for what is said. */
final class Asked {
    static final LocalDateTime EVENING = LocalDateTime.of(2025, 3, 14, 20, 15);

    private final String material;
    private final List<CureTime.ReadingLine> readings = new ArrayList<>();
    private Optional<Measured<Length>> thickness = Optional.empty();
    private boolean betweenFoams;
    private boolean closedWet;
    private double celsius = 20;
    private double celsiusSpread;
    private double humidity = 50;
    private boolean daily;
    private Optional<Measured<Time>> ownHandsOff = Optional.empty();
    private Optional<Measured<Time>> ownFullyCured = Optional.empty();
    private double ownCelsius = 20;
    private CureTime.Pace countOn = CureTime.Pace.SLOW_END;
    private Optional<BenchCalendar> sessions = Optional.empty();
    private LocalDateTime now = EVENING;
    private List<OwnMaterial> materials = List.of();

    private Asked(String material) {
        this.material = material;
    }

    static Asked of(String material) {
        return new Asked(material);
    }

    Asked thick(double millimetres) {
        thickness = Optional.of(Measured.of(millimetres, Units.MILLIMETRE));
        return this;
    }

    Asked betweenFoams() {
        betweenFoams = true;
        return this;
    }

    Asked closedWet() {
        closedWet = true;
        return this;
    }

    Asked at(double shop) {
        celsius = shop;
        return this;
    }

    Asked at(double shop, double spread) {
        celsius = shop;
        celsiusSpread = spread;
        return this;
    }

    Asked humid(double percent) {
        humidity = percent;
        return this;
    }

    Asked reading(LocalDateTime at, double shop) {
        readings.add(new CureTime.ReadingLine(at, Measured.of(shop, Units.CELSIUS)));
        return this;
    }

    Asked daily() {
        daily = true;
        return this;
    }

    Asked own(Measured<Time> handsOff, Measured<Time> fullyCured, double atCelsius) {
        ownHandsOff = Optional.ofNullable(handsOff);
        ownFullyCured = Optional.ofNullable(fullyCured);
        ownCelsius = atCelsius;
        return this;
    }

    Asked knows(OwnMaterial material) {
        materials = List.of(material);
        return this;
    }

    Asked likely() {
        countOn = CureTime.Pace.LIKELY;
        return this;
    }

    /** Every Tuesday and Thursday, from and to an hour. */
    Asked tuesdaysAndThursdays(int from, int to) {
        var session = new BenchSession(LocalTime.of(from, 0), LocalTime.of(to % 24, 0));
        sessions = Optional.of(new Weeks(
                List.of(new Weeks.Day(DayOfWeek.TUESDAY, session), new Weeks.Day(DayOfWeek.THURSDAY, session))));
        return this;
    }

    private record Weeks(List<Day> week) implements BenchCalendar {
        record Day(DayOfWeek day, BenchSession session) implements Weekly {}

        @Override
        public List<OtherDay> otherDays() {
            return List.of();
        }

        @Override
        public List<ShopReading> shop() {
            return List.of();
        }
    }

    Asked nowIs(LocalDateTime clock) {
        now = clock;
        return this;
    }

    CureTime.Results answer() throws UnsuitableInput {
        return answer(List.of(), List.of());
    }

    CureTime.Results answer(List<Build> builds, List<Entry> log) throws UnsuitableInput {
        return new CureTime().compute(inputs(), run(builds, log, materials, now));
    }

    CureTime.Inputs inputs() {
        return new CureTime.Inputs(
                "fin to hull",
                material,
                EVENING,
                thickness,
                betweenFoams,
                closedWet,
                Measured.of(celsius, celsiusSpread, Units.CELSIUS),
                Measured.of(humidity, Units.PERCENT),
                readings,
                daily,
                ownHandsOff,
                ownFullyCured,
                Measured.of(ownCelsius, Units.CELSIUS),
                countOn,
                sessions);
    }

    static Run run(List<Build> builds, List<Entry> log, LocalDateTime now) {
        return run(builds, log, List.of(), now);
    }

    private static Run run(List<Build> builds, List<Entry> log, List<OwnMaterial> materials, LocalDateTime now) {
        var reader = new JournalReader() {
            @Override
            public List<Build> builds() {
                return builds;
            }

            @Override
            public List<Entry> log(String buildId) {
                return log.stream()
                        .filter(entry -> entry.build().equals(buildId))
                        .toList();
            }

            @Override
            public List<OwnMaterial> materials() {
                return materials;
            }
        };
        return new Run() {
            @Override
            public void progress(double done, String doing) {}

            @Override
            public JournalReader journal() {
                return reader;
            }

            @Override
            public LocalDateTime now() {
                return now;
            }
        };
    }
}
