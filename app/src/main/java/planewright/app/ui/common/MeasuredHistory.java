package planewright.app.ui.common;

import planewright.api.figure.Chart;
import planewright.api.quantity.Units;
import planewright.app.figure.History;
import planewright.app.journal.Reading;

/** One thing measured again and again in the build that is shown. */
public final class MeasuredHistory {
    private MeasuredHistory() {}

    /** Its history in the unit in which this reading is shown. */
    public static History of(Workroom room, Reading reading) {
        var measurement = reading.measurement();
        var unit = room.units().written(measurement.quantity()).unit();
        var log = room.journal().log(reading.entry().build());
        var readings = Reading.history(log, measurement).stream()
                .map(each -> {
                    var numbers = ShownUnits.numbers(each.measurement().value(), unit);
                    return new History.Reading(each.entry().at(), numbers[0], numbers[1]);
                })
                .toList();
        return new History(
                Texts.HISTORY.text(measurement.name(), readings.size()),
                new Chart.Axis("", Units.codeOf(unit)),
                readings);
    }
}
