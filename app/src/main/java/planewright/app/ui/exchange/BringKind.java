package planewright.app.ui.exchange;

import planewright.app.ui.common.Texts;

/** What can be brought in. */
enum BringKind {
    PICTURES(Texts.BRING_PICTURES, Texts.BRING_PICTURES_HINT),
    MEASUREMENTS(Texts.BRING_MEASUREMENTS, Texts.BRING_MEASUREMENTS_HINT),
    NOTES(Texts.BRING_NOTES, Texts.BRING_NOTES_HINT),
    JOURNAL(Texts.BRING_JOURNAL, Texts.BRING_JOURNAL_HINT);

    private final Texts word;
    private final Texts hint;

    BringKind(Texts word, Texts hint) {
        this.word = word;
        this.hint = hint;
    }

    String word() {
        return word.text();
    }

    String hint() {
        return hint.text();
    }
}
