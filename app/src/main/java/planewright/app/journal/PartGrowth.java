package planewright.app.journal;

import java.util.regex.Pattern;
import planewright.app.journal.CarryOver.Scaling;

/**
 * How the mass of a part goes with the size of the aircraft, by what its name and group say it is. What has its own thickness whatever
 * the size, such as film and paint, goes with the area; what has its own section, such as a rod or a lead, with the length; the rest of the
 * airframe is solid, and spars with it, whose section grows as well. Common practice, no source; the builder sees it and may write
 * another value.
 */
final class PartGrowth {
    private static final String AIRFRAME = "airframe";
    private static final String BALLAST = "ballast";

    private static final Pattern SKIN = words(
            "finish|lack|paint|painting|paintwork|primer|varnish|lacquer|dope|covering|film|tissue|skins?|sheeting|cloth|tape|decals?|stickers?",
            "klarlack|spannlack|decklack|lackierung|farbe|grundierung|folie|papier|bespannung|beplankung|haut|gewebe|klebeband");

    private static final Pattern LINE = words(
            "rods?|pushrods?|tubes?|dowels?|wires?|cables?|leads|(?:extension|power|servo|motor|pack) lead|snakes?",
            "stäbe|kohlestab|rundstab|stange|stangen|gestänge|rohr|rohre|dübel|draht|drähte|kabel|bowdenzug|bowdenzüge");

    private PartGrowth() {}

    /** German puts what a thing is at the end of the word. */
    private static Pattern words(String english, String german) {
        return Pattern.compile(
                "\\b(?:" + english + "|\\p{L}*(?:" + german + "))\\b",
                Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE | Pattern.UNICODE_CHARACTER_CLASS);
    }

    static Scaling of(PartRecord part) {
        if (isIn(part, BALLAST)) {
            return Scaling.STAYS;
        }
        if (LINE.matcher(part.name()).find()) {
            return Scaling.LENGTH;
        }
        if (SKIN.matcher(part.name()).find()) {
            return Scaling.AREA;
        }
        return isIn(part, AIRFRAME) ? Scaling.MASS : Scaling.STAYS;
    }

    private static boolean isIn(PartRecord part, String group) {
        return part.group().strip().equalsIgnoreCase(group);
    }
}
