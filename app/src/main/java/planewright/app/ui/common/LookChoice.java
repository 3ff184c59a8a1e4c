package planewright.app.ui.common;

/** What the builder wants the window to be. */
public enum LookChoice {
    AS_SYSTEM,
    LIGHT,
    DARK
}
