package planewright.app.index;

import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.tokenattributes.BytesTermAttribute;
import org.apache.lucene.analysis.tokenattributes.PositionIncrementAttribute;
import org.apache.lucene.util.BytesRef;
import org.apache.lucene.util.BytesRefBuilder;
import org.apache.lucene.util.IntsRefBuilder;

/** The words of one field of a document, gathered first and then told to the index; used again for the next document. */
final class FieldWords extends TokenStream {
    private final BytesTermAttribute word = addAttribute(BytesTermAttribute.class);
    private final PositionIncrementAttribute step = addAttribute(PositionIncrementAttribute.class);
    private final BytesRefBuilder letters = new BytesRefBuilder();
    private final IntsRefBuilder ends = new IntsRefBuilder();
    private final IntsRefBuilder steps = new IntsRefBuilder();
    private final BytesRef told = new BytesRef();
    private int next;

    /** Forgets all words. */
    void clear() {
        letters.clear();
        ends.clear();
        steps.clear();
    }

    /**
     * @param after how many places after the last word it stands
     */
    void add(BytesRef written, int after) {
        letters.append(written);
        ends.append(letters.length());
        steps.append(after);
    }

    @Override
    public void reset() {
        next = 0;
    }

    @Override
    public boolean incrementToken() {
        if (next == ends.length()) {
            return false;
        }
        told.bytes = letters.bytes();
        told.offset = next == 0 ? 0 : ends.intAt(next - 1);
        told.length = ends.intAt(next) - told.offset;
        word.setBytesRef(told);
        step.setPositionIncrement(steps.intAt(next));
        next++;
        return true;
    }
}
