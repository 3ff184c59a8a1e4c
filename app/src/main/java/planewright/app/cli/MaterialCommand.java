package planewright.app.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import planewright.api.journal.JournalReader;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.app.journal.Edit;
import planewright.app.journal.Ids;
import planewright.app.journal.MaterialRecord;
import planewright.app.journal.MaterialsRecord;
import planewright.app.store.RecordFiles;
import planewright.shared.quantity.QuantityText;

@Command(name = "material", description = "What you have found of glues and fillers, which goes before the table.")
final class MaterialCommand extends Group {
    static CommandLine line(Desk desk) {
        return new CommandLine(new MaterialCommand())
                .addSubcommand(new All(desk))
                .addSubcommand(new SetOne(desk))
                .addSubcommand(new Remove(desk));
    }

    @Command(name = "list", description = "List your materials.")
    private static final class All implements Callable<Integer> {
        private final Desk desk;

        @Mixin
        private JournalOption common;

        All(Desk desk) {
            this.desk = desk;
        }

        @Override
        public Integer call() throws IOException {
            try (var program = desk.open(common.journal())) {
                var materials = program.journal().materialsRecord().orElse(MaterialsRecord.EMPTY);
                if (common.json()) {
                    desk.json(RecordFiles.json(materials));
                    return 0;
                }
                var rows = new ArrayList<List<String>>();
                rows.add(List.of("MATERIAL", "CLASS", "WORKING", "DRYING", "HANDS OFF", "CURED", "AT", "NOTE"));
                for (var each : materials.materials()) {
                    rows.add(List.of(
                            each.name(),
                            each.material(),
                            shown(each.workingTime()),
                            shown(each.flashOff()),
                            shown(each.handsOff()),
                            shown(each.fullyCured()),
                            shown(each.at()),
                            each.note()));
                }
                desk.table(List.of(false, false, true, true, true, true, true, false), rows);
            }
            return 0;
        }

        private static String shown(Optional<? extends Measured<?>> value) {
            return value.map(QuantityText::show).orElse("");
        }
    }

    @Command(name = "set", description = "Write down what you have found of a material; what is not given stays.")
    private static final class SetOne implements Callable<Integer> {
        private final Desk desk;

        @Mixin
        private JournalOption common;

        @Parameters(paramLabel = "NAME", description = "What it is called at your bench.")
        private String name;

        @Option(names = "--class", paramLabel = "WORDS", description = "Such as: laminating epoxy. Else as the name.")
        private Optional<String> material = Optional.empty();

        @Option(names = "--working-time", paramLabel = "TIME")
        private Optional<String> workingTime = Optional.empty();

        @Option(names = "--drying", paramLabel = "TIME", description = "Of a contact adhesive before it is closed.")
        private Optional<String> flashOff = Optional.empty();

        @Option(names = "--hands-off", paramLabel = "TIME", description = "Until it may be touched.")
        private Optional<String> handsOff = Optional.empty();

        @Option(names = "--cured", paramLabel = "TIME", description = "Until it carries its load.")
        private Optional<String> fullyCured = Optional.empty();

        @Option(names = "--at", paramLabel = "TEMPERATURE", description = "How warm it was.")
        private Optional<String> at = Optional.empty();

        @Option(names = "--note", paramLabel = "WORDS")
        private Optional<String> note = Optional.empty();

        SetOne(Desk desk) {
            this.desk = desk;
        }

        @Override
        public Integer call() throws IOException {
            try (var program = desk.open(common.journal())) {
                var before = program.journal().materialsRecord();
                var materials =
                        new ArrayList<>(before.map(MaterialsRecord::materials).orElse(List.of()));
                int place = place(materials, name);
                var known = place < 0 ? Optional.<MaterialRecord>empty() : Optional.of(materials.get(place));
                var changed = changed(known);
                if (place < 0) {
                    materials.add(changed);
                } else {
                    materials.set(place, changed);
                }
                var after = new MaterialsRecord(materials);
                program.journal().apply(Edit.put("set material", before, after));
                desk.said(common.json(), after, "Wrote down '" + changed.name() + "', " + changed.material());
            }
            return 0;
        }

        private MaterialRecord changed(Optional<MaterialRecord> known) {
            return new MaterialRecord(
                    known.map(MaterialRecord::id).orElseGet(Ids::small),
                    known.map(MaterialRecord::name).orElse(name),
                    material.or(() -> known.map(MaterialRecord::material)).orElse(name),
                    time("--working-time", workingTime).or(() -> known.flatMap(MaterialRecord::workingTime)),
                    time("--drying", flashOff).or(() -> known.flatMap(MaterialRecord::flashOff)),
                    time("--hands-off", handsOff).or(() -> known.flatMap(MaterialRecord::handsOff)),
                    time("--cured", fullyCured).or(() -> known.flatMap(MaterialRecord::fullyCured)),
                    at.map(text -> Desk.quantity("--at", text, Units.CELSIUS, Temperature.class))
                            .or(() -> known.flatMap(MaterialRecord::at)),
                    note.or(() -> known.map(MaterialRecord::note)).orElse(""));
        }

        private static Optional<Measured<Time>> time(String option, Optional<String> typed) {
            return typed.map(text -> Desk.quantity(option, text, Units.HOUR, Time.class));
        }
    }

    @Command(name = "remove", description = "Take a material out of the list.")
    private static final class Remove implements Callable<Integer> {
        private final Desk desk;

        @Mixin
        private JournalOption common;

        @Parameters(paramLabel = "NAME")
        private String name;

        Remove(Desk desk) {
            this.desk = desk;
        }

        @Override
        public Integer call() throws IOException {
            try (var program = desk.open(common.journal())) {
                var before = program.journal().materialsRecord();
                var materials =
                        new ArrayList<>(before.map(MaterialsRecord::materials).orElse(List.of()));
                int place = place(materials, name);
                if (place < 0) {
                    throw CommandFailed.work("material '" + name + "' is not in the list; accepted: "
                            + String.join(
                                    ", ",
                                    materials.stream().map(MaterialRecord::name).toList()));
                }
                materials.remove(place);
                var after = new MaterialsRecord(materials);
                program.journal().apply(Edit.put("remove material", before, after));
                desk.said(common.json(), after, "Took '" + name + "' out of the list");
            }
            return 0;
        }
    }

    private static int place(List<MaterialRecord> materials, String name) {
        for (int i = 0; i < materials.size(); i++) {
            if (JournalReader.sameName(materials.get(i).name(), name)) {
                return i;
            }
        }
        return -1;
    }
}
