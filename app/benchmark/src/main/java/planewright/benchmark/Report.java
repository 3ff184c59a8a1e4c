package planewright.benchmark;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.MathContext;
import planewright.app.store.JsonFiles;

/** What a run has measured, as one JSON object. */
final class Report {
    private final ObjectNode json = JsonFiles.object()
            .put("java", Runtime.version().toString())
            .put("system", System.getProperty("os.name") + ", " + System.getProperty("os.arch"))
            .put("processors", Runtime.getRuntime().availableProcessors());
    private final ObjectNode journal = json.putObject("journal");

    Report() {
        json.putArray("goals");
        json.putObject("figures");
        json.putArray("leftOut");
    }

    /** Says something of the journal that is measured with. */
    void journal(String what, double number) {
        journal.put(what, rounded(number));
    }

    void goal(Goal goal) {
        json.withArray("/goals").add(goal.json());
    }

    /** A number without a goal. */
    void figure(String group, String name, double number) {
        json.withObject("/figures").withObject("/" + group).put(name, rounded(number));
    }

    /** Says what could not be measured here, and why. */
    void leftOut(String what, String why) {
        json.withArray("/leftOut").addObject().put("what", what).put("why", why);
    }

    ObjectNode json() {
        return json;
    }

    /** Four figures: no time on a running machine is known better. */
    static BigDecimal rounded(double number) {
        var four = new BigDecimal(number).round(new MathContext(4));
        return new BigDecimal(four.stripTrailingZeros().toPlainString());
    }
}
