package planewright.app.ui.common;

import java.awt.Point;

/** A component of our own that shows things of which some can be chosen. */
public interface Choosing {
    /** Chooses what lies at a place, where it is not chosen already. */
    void chooseAt(Point place);
}
