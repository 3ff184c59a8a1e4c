package planewright.app.ui.common;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** The window's words. The compiler knows every key, so none can be missing or misspelled. */
public enum Texts {
    ADD_PICTURE,
    ADD_ROW,
    BUILDS_FILTER,
    CALCULATORS,
    CALCULATORS_HINT,
    CAPTION,
    CAPTURE,
    CAPTURE_HINT,
    CAUTIONS,
    CAUTION_BENCH,
    DATUM,
    DELETE,
    DISCARD,
    DARK,
    EDIT,
    EMPTY_LOG,
    EMPTY_SHELF,
    ENTRY_TAGS,
    ENTRY_TEXT,
    ENTRY_TITLE,
    ENTRY_WHEN,
    FOUND,
    FOUND_NEARLY,
    FOUND_NOTHING,
    FROM_JOURNAL_AGAIN,
    GIVEN,
    JOINTS,
    KEEP,
    KEPT,
    KIND,
    LAYOUT,
    LIFE,
    LIGHT,
    LOG,
    MEASUREMENTS,
    METHOD,
    NAME,
    NEW_BUILD,
    NEW_ENTRY,
    NOTICES,
    NO_NOTICES,
    OLDER,
    OPENING,
    OPEN_IN_CALCULATOR,
    PARTS,
    PARTS_HINT,
    PICTURES,
    PICK_BUILD,
    PRINT,
    PRINTED,
    PROPOSED,
    QUANTITY,
    REDO,
    REMOVE,
    RUN,
    SAVE,
    SAVED,
    SEARCH,
    SEARCH_HINT,
    SET_UP,
    SOURCES,
    STALE,
    STOP,
    UNDO,
    WORKING;

    private static final ResourceBundle BUNDLE =
            ResourceBundle.getBundle("planewright.app.ui.Texts", Locale.getDefault());

    /** The words, with the values in their places. */
    public String text(Object... values) {
        var pattern = BUNDLE.getString(name());
        return values.length == 0 ? pattern : MessageFormat.format(pattern, values);
    }
}
