package planewright.app.ui.common;

import java.awt.Color;
import java.awt.Font;
import java.util.List;
import java.util.stream.Collectors;
import javax.swing.JEditorPane;
import javax.swing.text.html.HTMLEditorKit;
import javax.swing.text.html.StyleSheet;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;
import planewright.app.index.Hits;

/** CommonMark, and found words, as components. */
public final class Markup {
    private static final Parser PARSER = Parser.builder().build();
    private static final HtmlRenderer RENDERER =
            HtmlRenderer.builder().escapeHtml(true).sanitizeUrls(true).build();

    private Markup() {}

    /** Paragraphs of CommonMark; raw HTML in them is shown as text. */
    public static JEditorPane of(List<String> paragraphs) {
        return pane(paragraphs.stream()
                .map(paragraph -> RENDERER.render(PARSER.parse(paragraph)))
                .collect(Collectors.joining()));
    }

    /**
     * An excerpt with its found words marked.
     *
     * @param more what else there is to say, after it
     */
    public static JEditorPane of(Hits.Excerpt excerpt, String more) {
        return pane(inColour(Look.colour("quiet"), Terms.of(excerpt.where())) + "&nbsp; " + marked(excerpt)
                + escaped(more));
    }

    /** As {@link #of(Hits.Excerpt, String)}, as a title. */
    public static JEditorPane title(Hits.Excerpt excerpt) {
        return pane("<b>" + marked(excerpt) + "</b>");
    }

    private static String marked(Hits.Excerpt excerpt) {
        var html = new StringBuilder();
        int at = 0;
        for (var mark : excerpt.marks()) {
            html.append(escaped(excerpt.text().substring(at, mark.from())));
            html.append("<span style='background-color:" + hex(Look.colour("mark")) + "'>");
            html.append(escaped(excerpt.text().substring(mark.from(), mark.to())))
                    .append("</span>");
            at = mark.to();
        }
        return html.append(escaped(excerpt.text().substring(at))).toString();
    }

    private static JEditorPane pane(String html) {
        var pane = new JEditorPane() {
            private static final long serialVersionUID = 1L;

            @Override
            public void updateUI() {
                super.updateUI();
                setBorder(null);
                setMargin(null);
            }
        };
        pane.setEditorKit(new Kit());
        pane.setCaret(new StillCaret());
        pane.setEditable(false);
        pane.setFocusable(false);
        pane.setOpaque(false);
        pane.putClientProperty(JEditorPane.HONOR_DISPLAY_PROPERTIES, true);
        Look.sized(pane, 1, Font.PLAIN);
        pane.setText("<html><body style='margin:0'>" + html + "</body></html>");
        pane.getAccessibleContext().setAccessibleName(Texts.ENTRY_TEXT.text());
        return pane;
    }

    /** HTML with the distances that text in a card needs. */
    private static final class Kit extends HTMLEditorKit {
        private static final long serialVersionUID = 1L;
        private static final StyleSheet STYLES = styles();

        @Override
        public StyleSheet getStyleSheet() {
            return STYLES;
        }

        private static StyleSheet styles() {
            var styles = new StyleSheet();
            styles.addStyleSheet(new HTMLEditorKit().getStyleSheet());
            styles.addRule("p { margin: 0 0 5 0 }");
            styles.addRule("ul, ol { margin: 0 0 5 22 }");
            return styles;
        }
    }

    /** A text as HTML that shows just that text. */
    public static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace("\n", " ");
    }

    /** A text as HTML in a colour. */
    public static String inColour(Color colour, String text) {
        return "<span style='color:" + hex(colour) + "'>" + escaped(text) + "</span>";
    }

    private static String hex(Color colour) {
        return String.format(java.util.Locale.ROOT, "#%06x", colour.getRGB() & 0xffffff);
    }
}
