package planewright.app.index;

/**
 * What is looked for.
 *
 * @param words all must be there, the last perhaps unfinished; words in quotes stand in a row. Blank: whatever passes the
 *     filter, the newest first
 * @param filter what the entries must pass besides
 * @param most how many hits at most
 */
public record Question(String words, Filter filter, int most) {
    private static final int A_PAGE = 20;

    public Question {
        if (most < 1) {
            throw new IllegalArgumentException("at most " + most + " hits are asked for; accepted: 1 or more");
        }
    }

    /** The first page of what bears these words. */
    public static Question of(String words) {
        return new Question(words, Filter.NONE, A_PAGE);
    }

    public Question keeping(Filter changed) {
        return new Question(words, changed, most);
    }

    public Question most(int changed) {
        return new Question(words, filter, changed);
    }
}
