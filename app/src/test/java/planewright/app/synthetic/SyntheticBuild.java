package planewright.app.synthetic;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import javax.measure.quantity.Length;
import planewright.api.journal.Life;
import planewright.api.journal.Planform;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.PartRecord;

/** Makes a build: parts that are weighed and placed, and the shape that goes with them. */
final class SyntheticBuild {
    private static final List<String> FIRST = List.of(
            "Grey",
            "Lazy",
            "Second",
            "Paper",
            "Loud",
            "Patient",
            "Crooked",
            "Winter",
            "Borrowed",
            "Spotted",
            "Late",
            "Round");
    private static final List<String> SECOND = List.of(
            "Heron", "Beetle", "Kettle", "Lantern", "Bramble", "Otter", "Plank", "Thistle", "Gull", "Barrow", "Wren",
            "Moth");
    private static final List<String> LAYOUTS =
            List.of("high wing", "low wing", "tailless", "canard", "biplane", "glider", "ray wing", "V-tail");
    private static final List<String> PARTS = List.of(
            "fuselage",
            "left wing",
            "right wing",
            "tail",
            "fin",
            "motor",
            "propeller",
            "controller",
            "pack",
            "receiver",
            "left servo",
            "right servo",
            "tail servo",
            "undercarriage",
            "canopy",
            "ballast");

    private final Random random;
    private final SeededIds ids;
    private final Figures figures;
    private final Prose prose;

    SyntheticBuild(Random random, SeededIds ids, Figures figures, Prose prose) {
        this.random = random;
        this.ids = ids;
        this.figures = figures;
        this.prose = prose;
    }

    BuildRecord make(int number, LocalDate begun) {
        double chord = figures.between(120, 320) / 1000.0;
        double span = chord * figures.between(2, 5);
        return new BuildRecord(
                ids.ulid(begun.atTime(LocalTime.of(18, 0))),
                pick(FIRST) + " " + pick(SECOND) + " " + number,
                Life.values()[random.nextInt(Life.values().length)],
                pick(LAYOUTS),
                "leading edge of the wing at the root",
                begun,
                List.of(prose.sentence(), prose.sentence()),
                parts(chord),
                Optional.of(planform(chord, span)));
    }

    private List<PartRecord> parts(double chord) {
        var parts = new ArrayList<PartRecord>();
        for (var name : PARTS) {
            double mass = figures.between(4, 300);
            parts.add(new PartRecord(
                    ids.small(),
                    name,
                    parts.size() < 5 ? "airframe" : "equipment",
                    Optional.of(Figures.about(mass, 1, Units.GRAM)),
                    millimetres(figures.between(-200, (int) (3000 * chord))),
                    millimetres(name.startsWith("left") ? -120 : name.startsWith("right") ? 120 : 0),
                    millimetres(figures.between(-40, 60)),
                    millimetres(figures.between(20, 300)),
                    millimetres(figures.between(10, 120)),
                    millimetres(figures.between(5, 60))));
        }
        return parts;
    }

    private Planform planform(double chord, double span) {
        double tip = chord * figures.between(5, 10) / 10;
        var wing = new Planform.Surface("wing", 0, 0, 0.03, true, List.of(panel(chord, tip, span)));
        var tail = new Planform.Surface(
                "tail", 2.6 * chord, 0, 0, true, List.of(panel(0.6 * chord, 0.4 * chord, 0.3 * span)));
        var fin = new Planform.Surface(
                "fin",
                2.5 * chord,
                0,
                0,
                false,
                List.of(new Planform.Panel(
                        0.6 * chord, 0.3 * chord, 0.6 * chord, Math.toRadians(25), Math.toRadians(90), 0)));
        var body = new Planform.Body(
                "fuselage",
                0,
                List.of(
                        new Planform.Section(-chord, 0.05, 0.03, -0.03),
                        new Planform.Section(0, 0.09, 0.05, -0.06),
                        new Planform.Section(3 * chord, 0.03, 0.02, 0)));
        return new Planform(List.of(wing, tail, fin), List.of(body));
    }

    private Planform.Panel panel(double root, double tip, double span) {
        return new Planform.Panel(
                root,
                tip,
                span,
                Math.toRadians(figures.between(-2, 25)),
                Math.toRadians(figures.between(0, 6)),
                Math.toRadians(figures.between(-3, 0)));
    }

    private static Optional<Measured<Length>> millimetres(int number) {
        return Optional.of(Figures.exactly(number, Units.MILLIMETRE));
    }

    private String pick(List<String> from) {
        return from.get(random.nextInt(from.size()));
    }
}
