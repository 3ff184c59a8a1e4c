package planewright.app.across;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.Unit;
import javax.measure.quantity.Mass;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.app.journal.BuildFacts;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.OpenJournal;
import planewright.shared.quantity.Written;

/** What builds have without anybody having measured it: masses of their ledgers, sizes of their shapes, lengths of their logs. */
final class BuildFigures {
    static final String MASS = BuildFacts.ALL_UP_MASS;

    private final OpenJournal journal;
    private final Map<String, Measured<Mass>> weighed;

    /**
     * @param weighed what builds weigh all up, by their ids, as far as they were weighed
     */
    BuildFigures(OpenJournal journal, Map<String, Measured<Mass>> weighed) {
        this.journal = journal;
        this.weighed = weighed;
    }

    /** A figure under its name. */
    record Figure(String name, BuildValue value) {}

    /** The figures of a build; masses of parts first. */
    List<Figure> of(BuildRecord build) {
        var figures = new ArrayList<Figure>();
        for (var part : build.parts()) {
            part.mass()
                    .ifPresent(mass -> figures.add(
                            figure(build, part.name(), mass, part.carried() ? Source.CARRIED : Source.LEDGER)));
        }
        for (var fact : BuildFacts.figures(journal, build, Optional.ofNullable(weighed.get(build.id())))) {
            boolean ledger = fact.label().equals(BuildFacts.LEDGER_MASS);
            boolean carried = fact.standing() == BuildFacts.Standing.CARRIED;
            figures.add(figure(
                    build,
                    ledger ? MASS : fact.label(),
                    fact.value(),
                    ledger
                            ? carried ? Source.CARRIED : Source.LEDGER
                            : carried ? Source.CARRIED_SHAPE : Source.PLANFORM));
        }
        var lines = journal.lines(build.id());
        long days =
                lines.stream().map(line -> line.at().toLocalDate()).distinct().count();
        figures.add(figure(build, "days at work", Measured.of(days, Units.NUMBER), Source.LOG));
        figures.add(figure(build, "entries", Measured.of(lines.size(), Units.NUMBER), Source.LOG));
        return figures;
    }

    /** What a build has of a name and kind; empty where it has none. */
    Optional<BuildValue> of(BuildRecord build, String name, Unit<?> kind) {
        return of(build).stream()
                .filter(figure ->
                        new Named(figure.name(), figure.value().quantity().unit(), 1).is(name, kind))
                .map(Figure::value)
                .findFirst();
    }

    private static Figure figure(BuildRecord build, String name, Measured<?> value, Source source) {
        return new Figure(name, new BuildValue(build, Written.of(value), source, Optional.empty()));
    }
}
