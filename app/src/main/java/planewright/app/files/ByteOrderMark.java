package planewright.app.files;

import java.io.BufferedReader;
import java.io.IOException;

/** U+FEFF, which some editors and spreadsheets put before UTF-8 text; it is none of the text. */
public final class ByteOrderMark {
    private static final char MARK = '\uFEFF';

    private ByteOrderMark() {}

    /** A text without the mark. */
    public static String dropped(String text) {
        return !text.isEmpty() && text.charAt(0) == MARK ? text.substring(1) : text;
    }

    /** The reader, behind the mark where there is one. */
    public static BufferedReader passed(BufferedReader reader) throws IOException {
        reader.mark(1);
        if (reader.read() != MARK) {
            reader.reset();
        }
        return reader;
    }
}
