package planewright.app.exchange;

import java.util.List;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Heading;
import org.commonmark.node.Image;
import org.commonmark.node.Node;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.DefaultUrlSanitizer;
import org.commonmark.renderer.html.HtmlRenderer;

/** Text as HTML that shows it and does nothing else. */
final class Html {
    private static final Parser PARSER = Parser.builder().build();
    private static final HtmlRenderer RENDERER = HtmlRenderer.builder()
            .escapeHtml(true)
            .sanitizeUrls(true)
            .urlSanitizer(new DefaultUrlSanitizer(List.of("http", "https", "mailto")))
            .build();
    private static final int LEVELS_DOWN = 2;
    private static final int LOWEST_LEVEL = 6;

    private Html() {}

    /** A text as content or as the value of an attribute in quotes. */
    static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;");
    }

    /** CommonMark; raw HTML in it is shown as text, pictures from elsewhere as their words, headings stand below the entry's. */
    static String markup(String commonMark) {
        var document = PARSER.parse(commonMark);
        document.accept(new Tamed());
        return RENDERER.render(document);
    }

    private static final class Tamed extends AbstractVisitor {
        @Override
        public void visit(Image image) {
            for (Node child = image.getFirstChild(); child != null; child = image.getFirstChild()) {
                image.insertBefore(child);
                child.accept(this);
            }
            image.unlink();
        }

        @Override
        public void visit(Heading heading) {
            heading.setLevel(Math.min(LOWEST_LEVEL, heading.getLevel() + LEVELS_DOWN));
            visitChildren(heading);
        }

        @Override
        protected void visitChildren(Node parent) {
            Node next;
            for (Node child = parent.getFirstChild(); child != null; child = next) {
                next = child.getNext();
                child.accept(this);
            }
        }
    }
}
