package planewright.app.pictures;

import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;

/**
 * How long things on a picture are, told by one length on it that is known. It holds only in the plane of that length, and
 * only where the camera looked squarely at it: a plane that is tilted by 10° shows lengths along the tilt 1.5 % too short
 * (cos 10° = 0.985), and what lies nearer or farther than the plane shows too long or too short.
 *
 * <p>Uncertainties add as JCGM 100:2008 (GUM), 5.1.2, equation (10) has it, for marks that were set independently. That a
 * length may share marks with the known one is not counted, so its ± is then rather too large.
 *
 * @param from one end of the known length
 * @param to its other end
 * @param known the length; above 0
 */
public record PictureScale(PictureMark from, PictureMark to, Measured<Length> known) {
    public PictureScale {
        if (!(from.distanceTo(to) > 0)) {
            throw new IllegalArgumentException(
                    PictureWords.say("both ends of the known length lie on one pixel; mark them apart"));
        }
        if (!(known.in(Units.METRE) > 0)) {
            throw new IllegalArgumentException(PictureWords.say(
                    "the known length is {0} mm, which is not above 0; write how long it is, such as 100 mm ± 0.5 mm",
                    known.in(Units.MILLIMETRE)));
        }
    }

    /**
     * The length between two marks, l = L d / d₀ with the distances d and d₀ in pixels: (u(l)/l)² = (u(L)/L)² + (u(d₀)/d₀)² +
     * (u(d)/d)². In the unit of the known length.
     *
     * @throws IllegalArgumentException if both lie on one pixel
     */
    public Measured<Length> between(PictureMark one, PictureMark other) {
        double distance = one.distanceTo(other);
        if (!(distance > 0)) {
            throw new IllegalArgumentException(PictureWords.say("both ends lie on one pixel; mark them apart"));
        }
        double length = known.in(Units.METRE) * distance / from.distanceTo(to);
        double relative = Math.hypot(
                known.spreadIn(Units.METRE) / known.in(Units.METRE),
                Math.hypot(relativeSpread(from, to), relativeSpread(one, other)));
        return Measured.of(length, length * relative, Units.METRE)
                .to(known.value().getUnit());
    }

    /** Each end counts by its spread along the line. */
    private static double relativeSpread(PictureMark one, PictureMark other) {
        return Math.hypot(one.spread(), other.spread()) / one.distanceTo(other);
    }

    /**
     * The angle at a corner, 0° to 180°; it needs no known length. With arms b and c to the other marks, u² = u₁²/b² + u₂²/c² +
     * u₀²(1/b² + 1/c² − 2 cos α/(bc)), for the corner moves both arms.
     *
     * @throws IllegalArgumentException if an arm has no length
     */
    public static Measured<Angle> angle(PictureMark corner, PictureMark one, PictureMark other) {
        double b = corner.distanceTo(one);
        double c = corner.distanceTo(other);
        if (!(b > 0 && c > 0)) {
            throw new IllegalArgumentException(
                    PictureWords.say("the corner and an end lie on one pixel; mark them apart"));
        }
        double x1 = one.at().x() - corner.at().x();
        double y1 = one.at().y() - corner.at().y();
        double x2 = other.at().x() - corner.at().x();
        double y2 = other.at().y() - corner.at().y();
        double angle = Math.abs(Math.atan2(x1 * y2 - y1 * x2, x1 * x2 + y1 * y2));
        double ends = Math.hypot(one.spread() / b, other.spread() / c);
        double arms = 1 / (b * b) + 1 / (c * c) - 2 * Math.cos(angle) / (b * c);
        double spread = Math.hypot(ends, corner.spread() * Math.sqrt(Math.max(0, arms)));
        return Measured.of(Math.toDegrees(angle), Math.toDegrees(spread), Units.DEGREE);
    }
}
