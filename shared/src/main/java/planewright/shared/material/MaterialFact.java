package planewright.shared.material;

import java.util.OptionalDouble;

/**
 * A figure of a material, as a range.
 *
 * @param heading what it serves: {@code mass}, {@code strength}, {@code cure}
 * @param material the class: {@code laminating epoxy}
 * @param property what it tells: {@code hands off}
 * @param low the least that is usual; empty where nobody says
 * @param typical the usual; empty where nobody says, or where the note is all there is to say
 * @param high the most that is usual; empty where nobody says
 * @param unit a UCUM code
 * @param known how it is known, see the package; low/typical/high where they differ
 * @param source where it stands
 * @param note more; may be empty
 */
public record MaterialFact(
        String heading,
        String material,
        String property,
        OptionalDouble low,
        OptionalDouble typical,
        OptionalDouble high,
        String unit,
        String known,
        String source,
        String note) {
    private static final int COLUMNS = 10;

    public MaterialFact {
        double least = low.orElse(Double.NEGATIVE_INFINITY);
        double most = high.orElse(Double.POSITIVE_INFINITY);
        if (!(least <= typical.orElse(least)) || !(typical.orElse(least) <= most)) {
            throw new IllegalArgumentException(property + " of '" + material + "' is " + low + ", " + typical + ", "
                    + high + "; accepted: a range that does not fall");
        }
    }

    /** The fact of a line of the table; trailing columns may be missing. */
    static MaterialFact of(String line) {
        var cells = line.split("\t", -1);
        if (cells.length > COLUMNS || cells.length < COLUMNS - 1) {
            throw new IllegalArgumentException("a line of the table of materials has " + cells.length
                    + " columns; accepted: " + (COLUMNS - 1) + " or " + COLUMNS + ": " + line);
        }
        return new MaterialFact(
                cells[0],
                cells[1],
                cells[2],
                number(cells[3]),
                number(cells[4]),
                number(cells[5]),
                cells[6],
                cells[7],
                cells[8],
                cells.length == COLUMNS ? cells[9] : "");
    }

    private static OptionalDouble number(String cell) {
        return cell.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(cell));
    }
}
