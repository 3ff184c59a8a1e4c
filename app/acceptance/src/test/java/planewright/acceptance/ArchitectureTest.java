package planewright.acceptance;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.belongToAnyOf;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.io.InputStream;
import java.io.Serializable;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Calendar;
import java.util.Date;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import planewright.app.Main;
import planewright.app.ui.MainWindow;

/** The arrows between modules and packages, on the compiled classes. */
class ArchitectureTest {
    private static final String API = "planewright.api..";
    private static final String SHARED = "planewright.shared..";
    private static final String APP = "planewright.app..";
    private static final String UI = "planewright.app.ui..";
    private static final String SAMPLES = "planewright.samples..";
    private static final String[] SWING = {"javax.swing..", "com.formdev..", "net.miginfocom.."};

    private static final Map<String, JavaClasses> MODULES = new TreeMap<>();

    static {
        for (var module : List.of("api", "shared", "app", "journal-samples")) {
            MODULES.put(module, compiled(Workplace.root().resolve(module)));
        }
        for (var plugin : Workplace.pluginModules()) {
            MODULES.put("plugins/" + plugin.getFileName(), compiled(plugin));
        }
    }

    private static final JavaClasses ALL = new ClassFileImporter()
            .importPaths(Stream.concat(
                            Stream.of("api", "shared", "app", "journal-samples").map(Workplace.root()::resolve),
                            Workplace.pluginModules().stream())
                    .map(ArchitectureTest::classFolder)
                    .toList());

    private static final JavaClasses APPLICATION = MODULES.get("app");

    /** What each package of the program may use of the others; what is not listed uses none. */
    private static final Map<String, List<String>> MAY_USE = Map.ofEntries(
            Map.entry("pictures", List.of("files", "journal")),
            Map.entry("outline", List.of("files", "journal", "pictures")),
            Map.entry("store", List.of("files", "journal", "outline", "pictures")),
            Map.entry("index", List.of("journal")),
            Map.entry("across", List.of("figure", "index", "journal")),
            Map.entry("calc", List.of("files", "journal", "outline", "store")),
            Map.entry("print", List.of("across", "calc", "figure", "files", "journal", "pictures")),
            Map.entry("exchange", List.of("across", "files", "journal", "outline", "pictures", "store")),
            Map.entry("program", List.of("calc", "index", "journal", "pictures", "store")),
            Map.entry(
                    "cli",
                    List.of(
                            "across",
                            "calc",
                            "exchange",
                            "index",
                            "journal",
                            "outline",
                            "pictures",
                            "print",
                            "program",
                            "store")),
            Map.entry(
                    "ui",
                    List.of(
                            "across",
                            "calc",
                            "exchange",
                            "figure",
                            "index",
                            "journal",
                            "outline",
                            "pictures",
                            "print",
                            "program",
                            "store")),
            Map.entry("main", List.of("cli", "program", "ui")));

    @ParameterizedTest
    @CsvSource({
        "api, 20, planewright.api.calculator.Calculator",
        "api, 20, planewright.api.journal.Planform$Panel",
        "shared, 10, planewright.shared.quantity.NumberText",
        "shared, 10, planewright.shared.planform.Outlines",
        "app, 150, planewright.app.Main",
        "app, 150, planewright.app.store.JournalFolder",
        "app, 150, planewright.app.calc.PluginHost",
        "app, 150, planewright.app.cli.CalcCommand",
        "app, 150, planewright.app.ui.MainWindow",
        "journal-samples, 30, planewright.samples.pictures.Main",
        "plugins/balance, 20, planewright.balance.Ledger",
        "plugins/balance, 20, planewright.balance.Weighing$SupportLine",
        "plugins/cure, 20, planewright.cure.CureTime",
        "plugins/ducts, 10, planewright.ducts.SubmergedInlet",
        "plugins/throws, 20, planewright.throws_.ServoLinkage"
    })
    void classesWereLookedAt(String module, int least, String one) {
        assertThat(MODULES).containsKey(module);
        assertThat(MODULES.get(module).size()).isGreaterThanOrEqualTo(least);
        assertThat(MODULES.get(module).contain(one)).as(one).isTrue();
        assertThat(ALL.contain(one)).as(one).isTrue();
    }

    @Test
    void everyModuleHasClassesAndAllOfThemAreOurs() {
        assertThat(MODULES).hasSizeGreaterThanOrEqualTo(5);
        MODULES.forEach((name, module) -> assertThat(module)
                .as(name)
                .isNotEmpty()
                .allMatch(each -> each.getPackageName().startsWith("planewright.")));
        assertThat(ALL.size())
                .isEqualTo(MODULES.values().stream().mapToInt(JavaClasses::size).sum());
    }

    @Test
    void apiKnowsNobody() {
        classes().should().resideInAPackage(API).check(MODULES.get("api"));
        classes().should().onlyDependOnClassesThat(oursOnly(API)).check(MODULES.get("api"));
    }

    @Test
    void sharedKnowsTheApiAlone() {
        classes().should().resideInAPackage(SHARED).check(MODULES.get("shared"));
        classes().should().onlyDependOnClassesThat(oursOnly(SHARED, API)).check(MODULES.get("shared"));
    }

    @Test
    void theProgramKnowsNoPluginAndNoSample() {
        classes().should().resideInAPackage(APP).check(APPLICATION);
        classes().should().onlyDependOnClassesThat(oursOnly(APP, SHARED, API)).check(APPLICATION);
    }

    @Test
    void pluginsKnowNeitherTheProgramNorEachOther() {
        for (var plugin : Workplace.pluginModules()) {
            var name = plugin.getFileName().toString();
            var own = Workplace.packageOf(name) + "..";
            var classes = MODULES.get("plugins/" + name);
            classes().should().resideInAPackage(own).check(classes);
            classes()
                    .should()
                    .onlyDependOnClassesThat(oursOnly(own, SHARED, API))
                    .check(classes);
        }
    }

    @Test
    void theSampleStandsAlone() {
        classes().should().onlyDependOnClassesThat(oursOnly(SAMPLES)).check(MODULES.get("journal-samples"));
    }

    /** Geometry of {@code java.awt.geom} is arithmetic and allowed; so is the stream of a table in the module's own jar. */
    @Test
    void engineeringCodeKnowsNoFilesNoNetworkAndNoWindow() {
        noClasses()
                .that()
                .resideOutsideOfPackages(APP, SAMPLES)
                .should()
                .dependOnClassesThat(resideInAnyPackage(
                                "java.io..",
                                "java.nio.file..",
                                "java.nio.channels..",
                                "java.net..",
                                "java.awt",
                                "java.awt.event..",
                                "java.awt.image..",
                                "java.awt.print..",
                                "javax.swing..")
                        .and(not(belongToAnyOf(
                                Serializable.class, InputStream.class, IOException.class, UncheckedIOException.class))))
                .check(ALL);
    }

    @Test
    void onlyTheWindowKnowsSwing() {
        noClasses()
                .that()
                .resideOutsideOfPackage(UI)
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(SWING)
                .check(ALL);
        noClasses()
                .that()
                .resideOutsideOfPackage(UI)
                .and()
                .doNotBelongToAnyOf(Main.class)
                .should()
                .dependOnClassesThat()
                .resideInAPackage(UI)
                .check(ALL);
        classes()
                .that()
                .belongToAnyOf(Main.class)
                .should()
                .onlyDependOnClassesThat(not(resideInAPackage(UI)).or(belongToAnyOf(MainWindow.class)))
                .check(APPLICATION);
    }

    @Test
    void theJournalInMemoryKnowsNoFiles() {
        noClasses()
                .that()
                .resideInAPackage("planewright.app.journal..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.nio.file..", "java.nio.channels..", "java.awt..")
                .check(APPLICATION);
    }

    @Test
    void packagesOfTheProgramUseWhatTheyMayAndNoMore() {
        var used = new TreeMap<String, TreeSet<String>>();
        for (JavaClass each : APPLICATION) {
            var to = used.computeIfAbsent(part(each), part -> new TreeSet<>());
            each.getDirectDependenciesFromSelf().stream()
                    .map(arrow -> arrow.getTargetClass().getBaseComponentType())
                    .filter(target -> APPLICATION.contain(target.getName()))
                    .map(ArchitectureTest::part)
                    .filter(part -> !part.equals(part(each)))
                    .forEach(to::add);
        }
        assertThat(used.keySet()).containsAll(MAY_USE.keySet()).contains("files", "journal", "figure");
        used.forEach(
                (part, to) -> assertThat(to).as("used by %s", part).isSubsetOf(MAY_USE.getOrDefault(part, List.of())));
        MAY_USE.forEach((part, may) -> assertThat(used.get(part))
                .as("%s may use no more than it does", part)
                .containsAll(may));
    }

    @Test
    void noPackagesGoRoundInCircles() {
        slices().matching("planewright.app.ui.(*)..").should().beFreeOfCycles().check(APPLICATION);
        slices().matching("planewright.api.(*)..").should().beFreeOfCycles().check(MODULES.get("api"));
        slices().matching("planewright.shared.(*)..").should().beFreeOfCycles().check(MODULES.get("shared"));
    }

    @Test
    void onlyMainSpeaksAndEnds() {
        noClasses()
                .that()
                .resideOutsideOfPackage(SAMPLES)
                .and()
                .doNotBelongToAnyOf(Main.class, MainWindow.class)
                .should(ACCESS_STANDARD_STREAMS)
                .check(ALL);
        noClasses()
                .that()
                .doNotBelongToAnyOf(Main.class)
                .should()
                .callMethod(System.class, "exit", int.class)
                .check(ALL);
    }

    @Test
    void datesAreOfJavaTimeAndTheClockIsGiven() {
        noClasses()
                .should()
                .dependOnClassesThat(belongToAnyOf(Date.class, Calendar.class).or(resideInAPackage("java.sql..")))
                .check(ALL);
        noClasses()
                .should()
                .callMethod(LocalDateTime.class, "now")
                .orShould()
                .callMethod(LocalDate.class, "now")
                .orShould()
                .callMethod(Instant.class, "now")
                .orShould()
                .callMethod(System.class, "currentTimeMillis")
                .check(ALL);
        noClasses()
                .that()
                .doNotBelongToAnyOf(Main.class, MainWindow.class)
                .should()
                .callMethod(Clock.class, "systemDefaultZone")
                .orShould()
                .callMethod(Clock.class, "systemUTC")
                .check(ALL);
    }

    private static DescribedPredicate<JavaClass> oursOnly(String... packages) {
        return not(resideInAPackage("planewright..")).or(resideInAnyPackage(packages));
    }

    /** {@code store} for a class of {@code planewright.app.store}; of the package itself, Main stands over all others. */
    private static String part(JavaClass each) {
        var name = each.getPackageName().substring("planewright.app".length());
        if (name.isEmpty()) {
            return each.getName().startsWith(Main.class.getName()) ? "main" : "program";
        }
        return name.split("\\.")[1];
    }

    private static JavaClasses compiled(Path module) {
        return new ClassFileImporter().importPath(classFolder(module));
    }

    private static Path classFolder(Path module) {
        var classes = module.resolve("target/classes");
        assertThat(Files.isDirectory(classes)).as("%s, compiled", classes).isTrue();
        return classes;
    }
}
