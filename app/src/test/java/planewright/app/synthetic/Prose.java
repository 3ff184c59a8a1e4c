package planewright.app.synthetic;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Text of entries: CommonMark, a paragraph an element. */
final class Prose {
    private static final List<String> SAID_QUANTITIES =
            List.of("%d g", "%d mm", "%d°", "%d min", "1/%d in", "%d.5 oz", "%d %%", "%d mAh", "%d h", "%d °C");

    private final Vocabulary vocabulary;
    private final Random random;

    Prose(Vocabulary vocabulary, Random random) {
        this.vocabulary = vocabulary;
        this.random = random;
    }

    List<String> paragraphs() {
        var paragraphs = new ArrayList<String>();
        int count = 1 + random.nextInt(5);
        for (int i = 0; i < count; i++) {
            if (random.nextInt(12) == 0) {
                list(paragraphs);
            } else {
                paragraphs.add(paragraph());
            }
        }
        return paragraphs;
    }

    String title() {
        return capital(words(2 + random.nextInt(5)));
    }

    String sentence() {
        var text = words(5 + random.nextInt(14));
        if (random.nextInt(6) == 0) {
            text += ", " + quantity();
        }
        return capital(text) + (random.nextInt(15) == 0 ? "?" : ".");
    }

    private String paragraph() {
        var text = new StringBuilder(sentence());
        int more = 1 + random.nextInt(5);
        for (int i = 0; i < more; i++) {
            text.append(' ').append(sentence());
        }
        return text.toString();
    }

    private void list(List<String> paragraphs) {
        int items = 2 + random.nextInt(3);
        for (int i = 0; i < items; i++) {
            paragraphs.add("- " + words(3 + random.nextInt(6)));
        }
    }

    private String words(int count) {
        var text = new StringBuilder();
        for (int i = 0; i < count; i++) {
            var word = vocabulary.draw(random);
            text.append(i == 0 ? "" : " ").append(random.nextInt(60) == 0 && i > 0 ? "**" + word + "**" : word);
        }
        return text.toString();
    }

    private String quantity() {
        return String.format(
                SAID_QUANTITIES.get(random.nextInt(SAID_QUANTITIES.size())),
                2 + random.nextInt(random.nextBoolean() ? 20 : 400));
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
