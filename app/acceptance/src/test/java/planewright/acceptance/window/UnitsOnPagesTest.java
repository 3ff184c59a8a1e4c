package planewright.acceptance.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Component;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import planewright.app.calc.Described;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.KeptResult;
import planewright.app.store.JournalFolder;
import planewright.app.store.UserFolders;

/**
 * Lengths, masses, areas, loadings and moments in the units that a builder prefers, on every page; the journal keeps what was written and calculators
 * compute with that. Factors: NIST Special Publication 811 (2008), appendix B: 25.4 mm, 28.349523125 g, 6.4516 cm².
 */
class UnitsOnPagesTest {
    private static final String BUILD = "Slate Ray Two";
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 28);

    @RegisterExtension
    final EventThread eventThread = new EventThread();

    @TempDir
    Path folder;

    private Path journal;
    private UserFolders user;

    @BeforeEach
    void sample() throws Exception {
        journal = Copies.copy(OpenWindow.root().resolve("journal-samples/workshop"), folder.resolve("journal"));
        user = UserFolders.under(folder.resolve("user"));
    }

    private void preferInches() throws Exception {
        Files.createDirectories(user.data());
        Files.write(user.data().resolve("window.txt"), List.of("unit kg=[oz_av]", "unit m=[in_i]", "unit m2=[sin_i]"));
    }

    /** The left panel: 231 g ± 2 g at 321 mm; it balances at 217 mm, and the wing has 38.98 dm². */
    @Test
    void partsShapeAndAnswersAreReadInThem() throws Exception {
        preferInches();
        try (var window = OpenWindow.on(journal, user)) {
            window.build(BUILD);
            window.page("Parts");
            JTable parts = Hands.find(JTable.class, "parts");
            Hands.waitUntil(
                    "ounces",
                    () -> parts.getRowCount() > 0 && parts.getValueAt(0, 2).equals("8.148 oz ± 0.071 oz"));
            assertThat(Hands.onEventThread(() -> parts.getValueAt(0, 4))).isEqualTo("12.6 in ± 0.2 in");
            assertThat(Hands.text("parts-sum")).endsWith(" oz");
            Hands.typeCell(parts, 0, 4, "12.5");
            Hands.waitUntil("inches", () -> parts.getValueAt(0, 4).equals("12.5 in"));

            window.page("Planform");
            Hands.find(JLabel.class, "of the area", label -> "604.12 in²".equals(label.getText()));

            window.page("Calculators");
            choose("balance.planform");
            Hands.find(JLabel.class, "with the unit", label -> "Mass (oz)".equals(label.getText()));
            assertThat(Hands.find(JTextField.class, "input-mass").getText()).isEqualTo("46.95 oz ± 0.14 oz");
            assertThat(Hands.text("value-Wing area")).isEqualTo("604 in²");
            assertThat(Hands.text("value-Wing span")).endsWith(" in");
            Hands.find(
                    JTextArea.class,
                    "with the balance point in inches",
                    area -> area.getText().matches("It balances at \\d+\\.\\d\\d in, a static margin of .*"));
        }
    }

    /** 1 oz/ft² is 3.051517 g/dm², 1 oz·in is 720.0779 g·mm; shown to as many places as the ± deserves: for a ± of 4 oz·in none. */
    @Test
    void wingLoadingsAndMomentsAreReadInThemToo() throws Exception {
        try (var window = OpenWindow.on(journal, user)) {
            window.build(BUILD);
            window.page("Calculators");
            choose("balance.planform");
            var metric = inOf("value-Wing loading", " g/dm²");
            prefer("units-g/dm2", "unit-[oz_av]/[sft_i]");
            assertThat(inOf("value-Wing loading", " oz/ft²")).isCloseTo(metric / 3.051517, within(0.03));
            choose("balance.lean");
            var moment = inOf("value-Lean", " g·mm");
            prefer("units-g.mm", "unit-[oz_av].[in_i]");
            assertThat(inOf("value-Lean", " oz·in")).isCloseTo(moment / 720.0779, within(0.5));
        }
    }

    @Test
    void theyAreChosenBesideTheAnswerAndWhatIsTypedStays() throws Exception {
        try (var window = OpenWindow.on(journal, user)) {
            window.build(BUILD);
            window.page("Calculators");
            choose("balance.planform");
            Hands.find(JLabel.class, "of the span", label -> "value-Wing span".equals(label.getName()));
            Hands.type("input-mass", "1400");
            Hands.find(JLabel.class, "of the answer for it", label -> "35.9 g/dm²".equals(label.getText()));
            prefer("units-g", "unit-[oz_av]");
            Hands.find(JLabel.class, "with the unit", label -> "Mass (oz)".equals(label.getText()));
            Hands.waitUntil(
                    "what was typed, in ounces",
                    () -> Hands.all(JTextField.class).stream()
                            .anyMatch(field -> "input-mass".equals(field.getName())
                                    && field.getText().equals("49.38 oz")));
            prefer("units-mm", "unit-[in_i]");
            Hands.find(
                    JLabel.class,
                    "in inches",
                    label -> "value-Wing span".equals(label.getName())
                            && label.getText().endsWith(" in"));
            window.page("Parts");
            JTable parts = Hands.find(JTable.class, "parts");
            Hands.waitUntil(
                    "ounces",
                    () -> parts.getRowCount() > 0
                            && parts.getValueAt(0, 2).toString().endsWith(" oz"));
        }
    }

    @Test
    void whatIsKeptIsTheSameWhateverIsPreferredAndTheLogTellsItInThem() throws Exception {
        preferInches();
        keep();
        Files.write(user.data().resolve("window.txt"), List.of("unit kg=", "unit m=", "unit m2="));
        keep();
        var ids = new ArrayList<String>();
        try (var opened = JournalFolder.open(journal, user)) {
            var build = opened.journal().builds().stream()
                    .filter(each -> each.name().equals(BUILD))
                    .findFirst()
                    .orElseThrow();
            var kept = opened.journal().log(build.id()).stream()
                    .filter(entry -> entry.at().toLocalDate().equals(TODAY))
                    .peek(entry -> ids.add(entry.id()))
                    .map(EntryRecord::keptResult)
                    .map(Optional::orElseThrow)
                    .toList();
            assertThat(kept).hasSize(2);
            assertThat(kept.get(1).inputs()).isEqualTo(kept.get(0).inputs());
            for (var number : List.of("value", "plusMinus")) {
                assertThat(kept.get(1).results().findValues(number))
                        .hasSizeGreaterThan(5)
                        .isEqualTo(kept.get(0).results().findValues(number));
            }
            assertThat(kept).extracting(KeptResult::calculator).containsOnly("balance.ledger");
        }
        preferInches();
        try (var window = OpenWindow.on(journal, user)) {
            window.build(BUILD);
            window.page("Log");
            for (var id : ids) {
                var told = Hands.find(JTextArea.class, "kept-values-" + id);
                Hands.waitUntil(
                        "ounces and inches",
                        () -> told.getText().contains(" oz") && told.getText().contains(" in"));
                assertThat(Hands.isThere("stale-" + id)).isFalse();
            }
        }
    }

    private void keep() throws Exception {
        try (var window = OpenWindow.on(journal, user)) {
            window.build(BUILD);
            window.page("Calculators");
            choose("balance.ledger");
            Hands.click("keep");
            Hands.find(
                    JLabel.class,
                    "that it is kept",
                    label -> label.getText() != null && label.getText().startsWith("Kept"));
        }
    }

    private static void choose(String calculator) {
        JComboBox<?> choice = Hands.find(JComboBox.class, "calculator");
        Hands.waitUntil("calculators", () -> choice.getItemCount() > 1);
        Hands.onEventThread(() -> {
            for (int i = 0; i < choice.getItemCount(); i++) {
                if (((Described) choice.getItemAt(i)).id().equals(calculator)) {
                    choice.setSelectedIndex(i);
                }
            }
            return choice;
        });
        var title = Hands.onEventThread(() -> ((Described) choice.getSelectedItem()).id());
        Hands.find(JTextArea.class, "of its answer", area -> area.getText().contains(title));
        Hands.find(Component.class, "result");
    }

    /** The number that is shown before a unit, without its ±. */
    private static double inOf(String name, String unit) {
        var label = Hands.find(
                JLabel.class,
                "in" + unit,
                each -> name.equals(each.getName()) && each.getText().endsWith(unit));
        return Double.parseDouble(label.getText().split(" ")[0].replace("−", "-"));
    }

    private static void prefer(String kind, String unit) {
        Hands.click("answer-units");
        var menu = Hands.find(JMenu.class, kind);
        Hands.onEventThread(() -> {
            Stream.of(menu.getMenuComponents())
                    .filter(item -> unit.equals(item.getName()))
                    .map(JMenuItem.class::cast)
                    .forEach(AbstractButton::doClick);
            javax.swing.MenuSelectionManager.defaultManager().clearSelectedPath();
            return menu;
        });
    }
}
