package planewright.app.synthetic;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import planewright.app.journal.KeptResult;
import planewright.app.store.JsonFiles;

/** A kept weighing on three supports: its balance point is that of its loads. */
final class SyntheticWeighing {
    private final Figures figures;

    SyntheticWeighing(Figures figures) {
        this.figures = figures;
    }

    KeptResult make() {
        var inputs = JsonFiles.object();
        var supports = inputs.putArray("supports");
        int mass = 0;
        int moment = 0;
        int sideways = 0;
        for (var support : Support.values()) {
            int load = figures.between(support.least, support.most);
            mass += load;
            moment += load * support.x;
            sideways += load * support.y;
            row(supports, support, load);
        }
        var results = JsonFiles.object();
        results.set("mass", value(mass, "g", 2));
        results.set("balanceX", value((double) moment / mass, "mm", 1));
        results.set("balanceY", value((double) sideways / mass, "mm", 1));
        return new KeptResult("balance.weighing", "1", inputs, JsonFiles.object(), results);
    }

    private static void row(ArrayNode supports, Support support, int load) {
        var row = supports.addObject().put("name", support.label);
        row.set("reading", value(load, "g", 1));
        row.set("tare", value(0, "g", 0));
        row.set("x", value(support.x, "mm", 1));
        row.set("y", value(support.y, "mm", 1));
        row.put("round", "");
    }

    private static ObjectNode value(double number, String unit, double spread) {
        var value = JsonFiles.object().put("value", number).put("unit", unit);
        if (spread > 0) {
            value.put("plusMinus", spread);
        }
        return value;
    }

    private enum Support {
        TAIL("tail skid", 40, 200, 812, 0),
        LEFT("left wheel", 300, 900, -12, -165),
        RIGHT("right wheel", 300, 900, -12, 165);

        private final String label;
        private final int least;
        private final int most;
        private final int x;
        private final int y;

        Support(String label, int least, int most, int x, int y) {
            this.label = label;
            this.least = least;
            this.most = most;
            this.x = x;
            this.y = y;
        }
    }
}
