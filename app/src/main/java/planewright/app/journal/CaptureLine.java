package planewright.app.journal;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.measure.quantity.Time;
import planewright.api.quantity.Units;
import planewright.shared.quantity.QuantityText;
import planewright.shared.quantity.Written;

/** What one line typed with gluey hands means: a measurement, a joint, or words. */
public sealed interface CaptureLine {
    /** {@code left wing panel 212 g}. */
    record Measured(String name, Written quantity) implements CaptureLine {}

    /** {@code fin joint contact adhesive 12 h}: held until fully cured after that time. */
    record Joined(String name, String material, Duration cure) implements CaptureLine {}

    /** Anything else. */
    record Words(String text) implements CaptureLine {}

    /**
     * What a line means, or empty for a blank one. A line with the word {@code joint}, {@code Fuge} or {@code Klebung} that ends in a
     * duration starts a joint; what stands after the word is its material. So does one that ends in an adhesive or filler and a
     * duration. Any other line that ends in a quantity is a measurement.
     */
    static Optional<CaptureLine> of(String line) {
        if (line.isBlank()) {
            return Optional.empty();
        }
        return Optional.of(
                QuantityText.trailing(line).map(CaptureLine::ofQuantity).orElseGet(() -> new Words(line.strip())));
    }

    /** The entry with this line written into it. */
    default EntryRecord addedTo(EntryRecord entry, LocalDateTime now) {
        if (this instanceof Measured measured) {
            return entry.withMeasurements(
                    with(entry.measurements(), MeasurementRecord.of(measured.name(), measured.quantity(), "")));
        }
        if (this instanceof Joined joined) {
            var joint = new JointRecord(
                    Ids.small(),
                    joined.name(),
                    joined.material(),
                    now,
                    Optional.empty(),
                    Optional.of(now.plus(joined.cure())));
            return entry.withJoints(with(entry.joints(), joint));
        }
        return entry.withText(with(entry.text(), ((Words) this).text()));
    }

    private static CaptureLine ofQuantity(QuantityText.Trailing trailing) {
        var joint = Joints.matched(trailing.before());
        var quantity = trailing.quantity();
        if (joint.matches() && Units.alike(quantity.unit(), Units.SECOND)) {
            var seconds = quantity.measured().asType(Time.class).in(Units.SECOND);
            if (seconds > 0 && seconds < Duration.ofDays(366).toSeconds()) {
                return new Joined(joint.group(1).strip(), joint.group(2).strip(), Duration.ofSeconds((long) seconds));
            }
        }
        return new Measured(trailing.before(), quantity);
    }

    private static <T> List<T> with(List<T> list, T last) {
        return Stream.concat(list.stream(), Stream.of(last)).toList();
    }

    /** How a joint is written: its name ends in a word for it, in one of the window's languages. */
    final class Joints {
        private static final String WORD = "(?:joint|\\p{L}*fuge|\\p{L}*klebung)";

        /** The name, and what stands after it. */
        static final Pattern LINE = Pattern.compile("(?iU)(\\S.*\\b" + WORD + "|" + WORD + ")\\b(.*)");

        private static final String QUALITY =
                "(?:lightweight|contact|laminating|foaming|polyurethane|PU|PVA|aliphatic|wood|white"
                        + "|hot-melt|solvent-based|solvent|flexible|slow|fast|thin|medium|thick|\\d+[ -]min(?:ute)?)";
        private static final String MATERIAL =
                "(?:" + QUALITY + "\\s+)*(?:glue|adhesive|epoxy|resin|spackle|filler|putty"
                        + "|cyanoacrylate|\\p{L}*kleber|\\p{L}*leim|epoxid\\p{L}*|\\p{L}*harz|\\p{L}*spachtel)";

        /** What is joined, and what with; how long a material can be worked is no joint. */
        private static final Pattern GLUED = Pattern.compile(
                "(?iU)(?!(?:.*(?:time|life|zeit)\\s+)?" + MATERIAL + "$)(\\S.*?)\\s+(" + MATERIAL + ")");

        private Joints() {}

        private static Matcher matched(String line) {
            var named = LINE.matcher(line);
            return named.matches() ? named : GLUED.matcher(line);
        }

        /** Whether a line with this name in it starts a joint. */
        public static boolean isNamed(String name) {
            var line = LINE.matcher(name);
            return line.matches() && line.group(2).isBlank();
        }
    }
}
