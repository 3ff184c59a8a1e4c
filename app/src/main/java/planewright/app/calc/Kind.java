package planewright.app.calc;

/** Kinds of values that go into a calculator or come out of it. */
public enum Kind {
    QUANTITY,
    TEXT,
    YES_NO,
    WHOLE_NUMBER,
    CHOICE,
    PLANFORM,
    ROWS,
    CHART,
    DRAWING,
    FINDINGS,
    PROPOSALS
}
