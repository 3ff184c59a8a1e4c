package planewright.app.exchange;

import java.util.List;
import java.util.Locale;

/** What a table of measurements says, and the headers it is known by. */
public enum Column {
    BUILD("build", false, "build", "aircraft", "model"),
    DATE("date", true, "date", "day", "when", "time"),
    NAME("name", true, "name", "measurement", "what", "part"),
    VALUE("value", true, "value", "amount", "reading"),
    UNIT("unit", false, "unit", "units"),
    PLUS_MINUS("plus-minus", false, "±", "+/-", "+-", "plus-minus", "plus or minus", "uncertainty", "tolerance"),
    METHOD("method", false, "method", "how", "measured with", "instrument");

    private final String word;
    private final boolean needed;
    private final List<String> headers;

    Column(String word, boolean needed, String... headers) {
        this.word = word;
        this.needed = needed;
        this.headers = List.of(headers);
    }

    /** How it is called in options and messages. */
    public String word() {
        return word;
    }

    boolean isNeeded() {
        return needed;
    }

    List<String> headers() {
        return headers;
    }

    /** Whether a header names it, letter case aside. */
    public boolean isCalled(String header) {
        return headers.contains(header.strip().toLowerCase(Locale.ROOT));
    }
}
