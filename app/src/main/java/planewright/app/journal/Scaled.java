package planewright.app.journal;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import planewright.api.journal.Planform;
import planewright.api.quantity.Measured;
import planewright.shared.quantity.Written;
import tech.units.indriya.quantity.Quantities;

/**
 * The same aircraft at another size: every length in one proportion, every angle as it is, areas with the second power (similar
 * figures, Euclid, Elements VI.20), and what is of one material with the third power, since density stays (similar solids, XI.33).
 */
final class Scaled {
    /** Figures of a scaled value without ±; more would claim what nobody has measured. Chosen. */
    private static final MathContext FIGURES = new MathContext(4);

    private final double size;

    Scaled(double size) {
        this.size = size;
    }

    Planform planform(Planform shape) {
        return new Planform(
                shape.surfaces().stream().map(this::surface).toList(),
                shape.bodies().stream().map(this::body).toList());
    }

    private Planform.Surface surface(Planform.Surface from) {
        return new Planform.Surface(
                from.name(),
                size * from.x(),
                size * from.y(),
                size * from.z(),
                from.mirrored(),
                from.panels().stream().map(this::panel).toList(),
                from.controls());
    }

    private Planform.Panel panel(Planform.Panel from) {
        return new Planform.Panel(
                size * from.rootChord(),
                size * from.tipChord(),
                size * from.span(),
                from.sweep(),
                from.dihedral(),
                from.twist());
    }

    private Planform.Body body(Planform.Body from) {
        return new Planform.Body(
                from.name(),
                size * from.y(),
                from.sections().stream()
                        .map(each -> new Planform.Section(
                                size * each.x(), size * each.width(), size * each.top(), size * each.bottom()))
                        .toList());
    }

    /** Its place and extent, and its mass as such parts grow. */
    PartRecord part(PartRecord from) {
        return new PartRecord(
                from.id(),
                from.name(),
                from.group(),
                from.mass().map(mass -> times(mass, PartGrowth.of(from).factor(size))),
                from.x().map(this::length),
                from.y().map(this::length),
                from.z().map(this::length),
                from.length().map(this::length),
                from.width().map(this::length),
                from.height().map(this::length),
                from.carried());
    }

    /** A length of the set-up; anything else stays as it is. */
    SetUpRecord setting(SetUpRecord from) {
        return CarryOver.isLength(from) && size != 1
                ? new SetUpRecord(
                        from.name(),
                        Written.of(length(from.quantity().measured().asType(Length.class))))
                : from;
    }

    private Measured<Length> length(Measured<Length> from) {
        return times(from, size);
    }

    private static <Q extends Quantity<Q>> Measured<Q> times(Measured<Q> from, double factor) {
        if (factor == 1) {
            return from;
        }
        var unit = from.value().getUnit();
        double value = from.value().getValue().doubleValue() * factor;
        Optional<Quantity<Q>> spread = from.plusMinus().map(known -> known.multiply(factor));
        double shown = spread.isPresent()
                ? value
                : new BigDecimal(value).round(FIGURES).doubleValue();
        return new Measured<>(Quantities.getQuantity(shown, unit), spread);
    }
}
