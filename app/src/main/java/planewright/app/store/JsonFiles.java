package planewright.app.store;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.JsonGeneratorDelegate;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import planewright.app.files.ByteOrderMark;

/** JSON as the journal's files carry it: UTF-8 in NFC, two spaces, line feeds, one element a line, a final newline. */
public final class JsonFiles {
    /** A file of the journal that is larger is not one of ours. */
    static final int MOST_BYTES = 8 << 20;

    private static final char REPLACEMENT = '\uFFFD';

    private static final JsonMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxDocumentLength(MOST_BYTES)
                            .maxNestingDepth(64)
                            .maxNumberLength(100)
                            .build())
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .build())
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS, DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
            .build();

    private JsonFiles() {}

    /**
     * The object in a file.
     *
     * @throws Unreadable if it holds none; the message says why, with line and column where it can
     * @throws IOException if the file cannot be read at all
     */
    public static ObjectNode read(Path file) throws IOException {
        return parse(content(file));
    }

    /**
     * The text in a file.
     *
     * @throws Unreadable if it is too large or no UTF-8
     */
    static String content(Path file) throws IOException {
        long size = Files.size(file);
        if (size > MOST_BYTES) {
            throw new Unreadable("it has {0} bytes; accepted: up to {1}", size, MOST_BYTES);
        }
        return utf8(Files.readAllBytes(file));
    }

    /**
     * The object in a text.
     *
     * @throws Unreadable if it holds none
     */
    public static ObjectNode parse(String text) throws Unreadable {
        try {
            if (MAPPER.readTree(ByteOrderMark.dropped(text)) instanceof ObjectNode object) {
                return object;
            }
            throw new Unreadable("it holds no JSON object");
        } catch (JsonProcessingException broken) {
            var place = broken.getLocation();
            var wrong = broken.getOriginalMessage().replaceFirst("(?s) \\(start marker at .*|\\R.*", "");
            throw place == null
                    ? new Unreadable("it is not JSON: {0}", wrong)
                    : new Unreadable(
                            "it is not JSON: line {0}, column {1}: {2}", place.getLineNr(), place.getColumnNr(), wrong);
        }
    }

    /** An object as a file carries it. */
    public static String text(ObjectNode object) {
        var indenter = new DefaultIndenter("  ", "\n");
        var printer = new DefaultPrettyPrinter(Separators.createDefaultInstance()
                        .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
                        .withObjectEmptySeparator("")
                        .withArrayEmptySeparator(""))
                .withObjectIndenter(indenter)
                .withArrayIndenter(indenter);
        var text = new StringWriter();
        try (var generator = new Plain(MAPPER.createGenerator(text))) {
            MAPPER.writer(printer).writeValue(generator, object);
        } catch (IOException impossible) {
            throw new IllegalStateException("a tree that cannot be written", impossible);
        }
        return text.append('\n').toString();
    }

    /** A new, empty object. */
    public static ObjectNode object() {
        return MAPPER.createObjectNode();
    }

    /** A decoder that reports what is no UTF-8 is several times slower than one that replaces it, so it only looks where something was replaced. */
    private static String utf8(byte[] bytes) throws Unreadable {
        var text = new String(bytes, StandardCharsets.UTF_8);
        return text.indexOf(REPLACEMENT) < 0 ? text : strictUtf8(bytes);
    }

    private static String strictUtf8(byte[] bytes) throws Unreadable {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException broken) {
            throw new Unreadable("it is not UTF-8 text");
        }
    }

    /** Writes a text or number as it is written once it has been read. */
    private static final class Plain extends JsonGeneratorDelegate {
        private Plain(JsonGenerator generator) {
            super(generator, false);
        }

        @Override
        public void writeString(String text) throws IOException {
            super.writeString(Normalizer.normalize(text, Normalizer.Form.NFC));
        }

        @Override
        public void writeNumber(double number) throws IOException {
            super.writeNumber(new BigDecimal(Double.toString(number)));
        }
    }
}
