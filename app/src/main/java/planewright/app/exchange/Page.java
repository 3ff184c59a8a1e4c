package planewright.app.exchange;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Puts a page together, piece by piece. All text goes through {@link Html}. */
final class Page {
    /** Stands at the beginning of every page. */
    static final String GENERATOR = "<meta name=\"generator\" content=\"Planewright\">";

    private final StringBuilder html = new StringBuilder();

    /** What the search says, by the name under which {@code pages.js} finds it. */
    private static final Map<String, String> FOUND = new TreeMap<>(Map.of(
            "missing", "The words of this journal are missing: the file words.js is not there.",
            "nothing", "Nothing found.",
            "one", "1 entry",
            "more", "{0} entries",
            "first", "{0} entries, the first {1} of them"));

    /**
     * @param root the way from the page to the folder of all pages: empty, or {@code ../}
     * @param journal its name
     * @param title of this page
     */
    Page(String root, String journal, String title) {
        raw("<!DOCTYPE html>\n<html lang=\"" + ExchangeWords.locale().getLanguage()
                + "\">\n<head>\n<meta charset=\"utf-8\">\n");
        raw("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
        raw("<meta name=\"referrer\" content=\"no-referrer\">\n" + GENERATOR + "\n");
        line("title", "", title);
        raw("<link rel=\"stylesheet\" href=\"" + root + "pages.css\">\n");
        raw("<script src=\"" + root + "pages.js\" defer></script>\n</head>\n<body data-root=\"" + root + "\"");
        FOUND.forEach((name, text) -> raw(" data-" + name + "=\"" + Html.escaped(ExchangeWords.say(text)) + "\""));
        raw(">\n");
        raw("<header><a href=\"" + root + "index.html\">" + Html.escaped(journal) + "</a>\n");
        raw("<label for=\"find\">" + Html.escaped(ExchangeWords.say("Search"))
                + " <input id=\"find\" type=\"search\" autocomplete=\"off\"></label></header>\n");
        raw("<main>\n<section id=\"found\" aria-live=\"polite\" hidden></section>\n<div id=\"page\">\n");
    }

    /** The whole page. */
    String done() {
        return html + "</div>\n</main>\n</body>\n</html>\n";
    }

    /** HTML as it is. */
    Page raw(String piece) {
        html.append(piece);
        return this;
    }

    /** An element with a text in it; nothing where the text is blank. */
    Page line(String element, String style, String text) {
        return text.isBlank()
                ? this
                : raw("<" + element + style(style) + ">" + Html.escaped(text) + "</" + element + ">\n");
    }

    /** Paragraphs of CommonMark. */
    Page markup(List<String> paragraphs) {
        paragraphs.forEach(paragraph -> raw(Html.markup(paragraph)));
        return this;
    }

    /**
     * A table; nothing where it has no rows.
     *
     * @param headings one that begins with {@code >} stands over numbers
     */
    Page table(List<String> headings, List<List<String>> rows) {
        if (rows.isEmpty()) {
            return this;
        }
        raw("<div class=\"table\"><table>\n<tr>");
        headings.forEach(heading -> raw("<th" + numeric(heading) + ">" + Html.escaped(bare(heading)) + "</th>"));
        raw("</tr>\n");
        for (var row : rows) {
            raw("<tr>");
            for (int i = 0; i < row.size(); i++) {
                raw("<td" + numeric(headings.get(i)) + ">" + Html.escaped(row.get(i)) + "</td>");
            }
            raw("</tr>\n");
        }
        return raw("</table></div>\n");
    }

    private static String numeric(String heading) {
        return style(heading.startsWith(">") ? "number" : "");
    }

    private static String bare(String heading) {
        return heading.startsWith(">") ? heading.substring(1) : heading;
    }

    private static String style(String name) {
        return name.isEmpty() ? "" : " class=\"" + name + "\"";
    }
}
