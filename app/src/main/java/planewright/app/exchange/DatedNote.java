package planewright.app.exchange;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.commonmark.node.LinkReferenceDefinition;
import org.commonmark.node.Node;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;
import planewright.app.files.ByteOrderMark;

/**
 * A note in a file of text or Markdown, with a date in its first line or in its name.
 *
 * @param at when it was written; noon where only the day is said
 * @param title what else stands beside the date; may be empty
 * @param paragraphs its blocks in CommonMark: paragraphs, lists, blocks of code
 */
record DatedNote(LocalDateTime at, String title, List<String> paragraphs) {
    private static final long MOST_BYTES = 1 << 20;
    private static final String DATE = "(\\d{4}-\\d{2}-\\d{2}(?:[T ]\\d{2}:\\d{2}(?::\\d{2})?)?)(?!\\d)";
    private static final Pattern FIRST_LINE = Pattern.compile("(?:#{1,6}\\s+)?(?:(?i:date):\\s*)?" + DATE + "(.*)");
    private static final Pattern FILE_NAME = Pattern.compile("(.*?)(?<!\\d)(\\d{4}-\\d{2}-\\d{2})(?!\\d)(.*)");
    private static final Pattern HEADING = Pattern.compile("#{1,6}\\s+(.*?)(?:\\s+#+)?\\s*");
    private static final Parser PARSER =
            Parser.builder().includeSourceSpans(IncludeSourceSpans.BLOCKS).build();

    /**
     * @throws ExchangeRefused if it is no text, or has no date
     */
    static DatedNote read(Path file) throws IOException {
        var text = text(file);
        var first = text.lines().findFirst().orElse("").strip();
        var rest = text.lines().skip(1).collect(Collectors.joining("\n"));
        var dated = FIRST_LINE.matcher(first);
        if (dated.matches()) {
            return of(date(dated.group(1)), bare(dated.group(2)), rest);
        }
        var name = FILE_NAME.matcher(file.getFileName().toString().replaceFirst("\\.[^.]*$", ""));
        if (!name.matches()) {
            throw new ExchangeRefused(
                    ExchangeWords.say("has no date; accepted: one such as 2025-03-14 at the beginning of its first "
                            + "line, or in its name"));
        }
        var at = date(name.group(2));
        var heading = HEADING.matcher(first);
        return heading.matches()
                ? of(at, heading.group(1), rest)
                : of(at, bare(bare(name.group(1)) + " " + bare(name.group(3))), text);
    }

    /** Of a note without a title, a heading that begins it is the title. */
    private static DatedNote of(LocalDateTime at, String title, String text) throws ExchangeRefused {
        var paragraphs = paragraphs(text);
        if (title.isEmpty() && !paragraphs.isEmpty()) {
            var heading = HEADING.matcher(paragraphs.get(0));
            if (heading.matches()) {
                return new DatedNote(at, heading.group(1), paragraphs.subList(1, paragraphs.size()));
            }
        }
        if (title.isEmpty() && paragraphs.isEmpty()) {
            throw new ExchangeRefused(ExchangeWords.say("says nothing besides its date"));
        }
        return new DatedNote(at, title, paragraphs);
    }

    private static String text(Path file) throws IOException {
        if (Files.size(file) > MOST_BYTES) {
            throw new ExchangeRefused(
                    ExchangeWords.say("has {0} bytes; accepted: up to {1}", Files.size(file), MOST_BYTES));
        }
        try {
            var text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(Files.readAllBytes(file)))
                    .toString();
            if (text.indexOf('\0') >= 0) {
                throw new ExchangeRefused(ExchangeWords.say("is not text"));
            }
            return ByteOrderMark.dropped(text).stripLeading();
        } catch (CharacterCodingException broken) {
            throw new ExchangeRefused(ExchangeWords.say("is not UTF-8 text; save it as UTF-8"));
        }
    }

    private static LocalDateTime date(String text) throws ExchangeRefused {
        return DateText.parse(text)
                .orElseThrow(() -> new ExchangeRefused(ExchangeWords.say(
                        "has the date '{0}', which does not exist; accepted: such as 2025-03-14", text)));
    }

    private static String bare(String words) {
        return words.replaceAll("[_\\s]+", " ").replaceAll("^[\\s:,.–—-]+|[\\s:,–—-]+$", "");
    }

    /**
     * The blocks of the outermost level, as they are written, so that each can be rendered alone; all in one where links are
     * defined apart from the words that they belong to.
     */
    private static List<String> paragraphs(String text) {
        var lines = text.lines().toList();
        var starts = new ArrayList<Integer>();
        for (Node block = PARSER.parse(text).getFirstChild(); block != null; block = block.getNext()) {
            if (block instanceof LinkReferenceDefinition) {
                return List.of(text.strip());
            }
            starts.add(block.getSourceSpans().get(0).getLineIndex());
        }
        var paragraphs = new ArrayList<String>();
        for (int i = 0; i < starts.size(); i++) {
            int end = i + 1 < starts.size() ? starts.get(i + 1) : lines.size();
            paragraphs.add(String.join("\n", lines.subList(starts.get(i), end)).stripTrailing());
        }
        return paragraphs;
    }
}
