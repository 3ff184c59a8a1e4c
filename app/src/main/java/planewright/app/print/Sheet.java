package planewright.app.print;

import java.nio.file.Path;
import java.util.List;
import planewright.api.figure.Chart;
import planewright.api.figure.Drawing;
import planewright.app.figure.Fitted;

/**
 * What is printed, in order.
 *
 * @param title stands on top of every page
 * @param blocks from top to bottom; pages break where they must
 */
public record Sheet(String title, List<Block> blocks) {
    public Sheet {
        blocks = List.copyOf(blocks);
    }

    /** A piece of a sheet. */
    public sealed interface Block {}

    /** A heading; 1 is the largest, 3 the smallest. */
    public record Heading(int level, String text) implements Block {}

    /** Running text. */
    public record Paragraph(String text) implements Block {}

    /** A remark that begins with a word in bold. */
    public record Remark(String word, String text) implements Block {}

    /** Rows under headings; numeric columns are set to the right. */
    public record Table(List<String> headings, List<Boolean> numeric, List<List<String>> rows) implements Block {}

    /** A picture with its caption. */
    public record Photo(Path file, String caption) implements Block {}

    /** A chart. */
    public record ChartBlock(Chart chart) implements Block {}

    /** Dots with the line through them. */
    public record FittedBlock(Fitted fitted) implements Block {}

    /** A drawing, fitted to the page. */
    public record DrawingBlock(Drawing drawing) implements Block {}

    /** A drawing at true size on pages of its own, as many as it needs; fitted where that would be too many. */
    public record TrueSize(Drawing drawing) implements Block {}
}
