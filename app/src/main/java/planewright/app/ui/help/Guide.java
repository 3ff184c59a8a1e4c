package planewright.app.ui.help;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import planewright.app.journal.Slow;

/**
 * A chapter of the guide as it stands in the folder {@code guide}: a heading, pictures each on a line of its own, and paragraphs of
 * CommonMark.
 *
 * @param title its heading
 * @param pieces in order
 */
record Guide(String title, List<Piece> pieces) {
    private static final String PLACE = "/planewright/app/guide/";
    private static final String HEADING = "# ";
    private static final Pattern PICTURE = Pattern.compile("!\\[(.*)]\\(\\.\\./(pictures/.*\\.png)\\)");
    private static final Pattern LINK = Pattern.compile("\\[([^]]*)]\\((?!https:)[^)]*\\)");

    /** A paragraph, or a picture with its words. */
    record Piece(String words, Optional<BufferedImage> picture) {}

    /** In a language where the guide has it, else in English; reads resources, so not on the event thread. */
    static Guide read(Chapter chapter, Locale language) throws IOException {
        var pieces = new ArrayList<Piece>();
        for (var block : blocks(chapter, language)) {
            var picture = PICTURE.matcher(block);
            if (picture.matches()) {
                pieces.add(new Piece(picture.group(1), Optional.of(picture(PLACE + picture.group(2)))));
            } else if (!block.startsWith(HEADING)) {
                pieces.add(new Piece(LINK.matcher(block).replaceAll("*$1*"), Optional.empty()));
            }
        }
        return new Guide(title(chapter, language), List.copyOf(pieces));
    }

    /** The heading of a chapter alone; as {@link #read} otherwise. */
    static String title(Chapter chapter, Locale language) throws IOException {
        return blocks(chapter, language)[0].substring(HEADING.length());
    }

    private static String[] blocks(Chapter chapter, Locale language) throws IOException {
        Slow.work("reading the guide");
        var file = chapter.file() + ".md";
        var own = PLACE + language.getLanguage() + "/" + file;
        var blocks = text(Guide.class.getResource(own) == null ? PLACE + "en/" + file : own)
                .strip()
                .split("\n{2,}");
        if (!blocks[0].startsWith(HEADING)) {
            throw new IOException("the guide's page " + file + " begins with no heading");
        }
        return blocks;
    }

    private static String text(String resource) throws IOException {
        try (var in = Guide.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IOException("the guide has no page " + resource);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static BufferedImage picture(String resource) throws IOException {
        try (var in = Guide.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IOException("the guide has no picture " + resource);
            }
            return ImageIO.read(in);
        }
    }
}
