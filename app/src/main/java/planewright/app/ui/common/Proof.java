package planewright.app.ui.common;

import java.util.List;
import java.util.stream.Collectors;
import planewright.app.journal.BuildDayRecord;
import planewright.app.journal.TemplateRecord;

/** What has flown with a template. */
public final class Proof {
    private Proof() {}

    /** Which builds have, and since when. */
    public static String of(TemplateRecord template) {
        return template.flewOn().isEmpty()
                ? Texts.TEMPLATE_NOT_FLOWN.text()
                : Texts.TEMPLATE_FLEW_ON.text(names(template.flewOn()));
    }

    /** Builds, each with its day. */
    public static String names(List<BuildDayRecord> days) {
        return days.stream()
                .map(each -> each.name() + " (" + Times.date(each.date()) + ")")
                .collect(Collectors.joining(", "));
    }
}
