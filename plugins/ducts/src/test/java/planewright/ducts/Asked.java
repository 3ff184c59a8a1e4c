package planewright.ducts;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import planewright.api.calculator.Finding;
import planewright.api.calculator.Run;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.journal.Build;
import planewright.api.journal.Entry;
import planewright.api.journal.JournalReader;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;

/** An inlet to ask for; what is not said is as a form would fill it in. */
final class Asked {
    private Measured<Length> width;
    private Measured<Area> area;
    private Measured<Dimensionless> ratio = Measured.of(4, Units.NUMBER);
    private Measured<Angle> ramp = Measured.of(7, Units.DEGREE);
    private SubmergedInlet.Edge lip = SubmergedInlet.Edge.SHAPED;
    private Measured<Length> skin = Measured.of(2, Units.MILLIMETRE);
    private Measured<Length> across;
    private Measured<Length> along;
    private Measured<Length> foam;
    private double keep = 3;

    static Asked width(double millimetres) {
        return width(Measured.of(millimetres, Units.MILLIMETRE));
    }

    static Asked width(Measured<Length> width) {
        var asked = new Asked();
        asked.width = width;
        return asked;
    }

    static Asked area(double squareMillimetres) {
        var asked = new Asked();
        asked.area = Measured.of(squareMillimetres, Units.SQUARE_MILLIMETRE);
        return asked;
    }

    static Asked nothing() {
        return new Asked();
    }

    Asked area(Measured<Area> given) {
        area = given;
        return this;
    }

    Asked ratio(double given) {
        return ratio(Measured.of(given, Units.NUMBER));
    }

    Asked ratio(Measured<Dimensionless> given) {
        ratio = given;
        return this;
    }

    Asked ramp(double degrees) {
        return ramp(Measured.of(degrees, Units.DEGREE));
    }

    Asked ramp(Measured<Angle> given) {
        ramp = given;
        return this;
    }

    Asked plain(Measured<Length> thickness) {
        lip = SubmergedInlet.Edge.PLAIN;
        skin = thickness;
        return this;
    }

    Asked plain(double millimetres) {
        return plain(Measured.of(millimetres, Units.MILLIMETRE));
    }

    Asked across(Measured<Length> radius) {
        across = radius;
        return this;
    }

    Asked across(double millimetres) {
        return across(Measured.of(millimetres, Units.MILLIMETRE));
    }

    Asked along(Measured<Length> radius) {
        along = radius;
        return this;
    }

    Asked along(double millimetres) {
        return along(Measured.of(millimetres, Units.MILLIMETRE));
    }

    Asked foam(Measured<Length> thickness) {
        foam = thickness;
        return this;
    }

    Asked foam(double millimetres) {
        return foam(Measured.of(millimetres, Units.MILLIMETRE));
    }

    Asked keep(double millimetres) {
        keep = millimetres;
        return this;
    }

    SubmergedInlet.Inputs inputs() {
        return new SubmergedInlet.Inputs(
                Optional.ofNullable(width),
                Optional.ofNullable(area),
                ratio,
                ramp,
                lip,
                skin,
                Optional.ofNullable(across),
                Optional.ofNullable(along),
                Optional.ofNullable(foam),
                Measured.of(keep, Units.MILLIMETRE));
    }

    SubmergedInlet.Results answer() throws UnsuitableInput {
        return new SubmergedInlet().compute(inputs(), RUN);
    }

    List<String> told(Finding.Grade grade) throws UnsuitableInput {
        return answer().findings().stream()
                .filter(finding -> finding.grade() == grade)
                .map(Finding::text)
                .toList();
    }

    private static final Run RUN = new Run() {
        @Override
        public void progress(double done, String doing) {}

        @Override
        public JournalReader journal() {
            return new JournalReader() {
                @Override
                public List<Build> builds() {
                    return List.of();
                }

                @Override
                public List<Entry> log(String buildId) {
                    return List.of();
                }
            };
        }

        @Override
        public LocalDateTime now() {
            return LocalDateTime.of(2025, 3, 14, 20, 15);
        }
    };
}
