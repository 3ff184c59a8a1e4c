package planewright.app.calc;

/** Kinds of values that go into a calculator or come out of it. */
public enum Kind {
    QUANTITY,
    TEXT,
    YES_NO,
    WHOLE_NUMBER,
    CHOICE,
    DATE_TIME,
    PLANFORM,
    OUTLINE,
    CALENDAR,
    PICTURE,
    ROWS,
    CHART,
    DRAWING,
    FINDINGS,
    PROPOSALS
}
