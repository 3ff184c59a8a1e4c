package planewright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import planewright.app.calc.PluginShelf;
import planewright.app.calc.TestPlugins;
import planewright.app.cli.CommandLineBench.Said;

/** Adding, trusting, switching and removing plugins from the command line. */
class PluginsCommandTest {
    private static final String PROPERTIES = "plugin.id=loft\nplugin.version=2.1\nplugin.provider=the loft workshop\n"
            + "plugin.description=Where its middle is\nplugin.requires=>=0.3.0 & <0.4.0\n";

    private final InputStream systemIn = System.in;

    @TempDir
    private Path temp;

    private CommandLineBench bench;
    private Path zip;
    private String hash;

    @BeforeEach
    void offerOne() throws IOException {
        bench = new CommandLineBench(temp);
        zip = TestPlugins.zip(
                temp.resolve("downloads/loft.zip"),
                PROPERTIES,
                Map.of(
                        "loft.Station",
                        TestPlugins.STATION
                                .replace("package bench;", "package loft;")
                                .replace("bench.station", "loft.station")));
        hash = PluginShelf.look(zip).hash();
    }

    @AfterEach
    void giveBackTheKeyboard() {
        System.setIn(systemIn);
    }

    private Said typing(String line, String... words) {
        System.setIn(new ByteArrayInputStream((line + "\n").getBytes(StandardCharsets.UTF_8)));
        return bench.run(words);
    }

    @Test
    void nothingIsAddedUnlessTheAnswerIsTrust() {
        var said = typing("yes", "plugins", "add", zip.toString());
        assertThat(said.code()).isEqualTo(1);
        assertThat(said.out())
                .contains("loft 2.1", "the loft workshop", ">=0.3.0 & <0.4.0", hash, "can do whatever you can do");
        assertThat(said.err()).contains("only the answer 'trust' adds a plugin");
        assertThat(bench.run("plugins", "list").out()).doesNotContain("loft");
    }

    @Test
    void aTrustedPluginRunsTillItIsSwitchedOffOrRemoved() {
        assertThat(typing("trust", "plugins", "add", zip.toString()).out())
                .contains("Added plugin loft 2.1, which brings loft.station");
        assertThat(bench.run("calc").out()).contains("loft.station");
        assertThat(bench.run("plugins", "list").out()).containsPattern("runs +loft +2.1 +added by you +loft.station");
        assertThat(bench.run("plugins", "off", "loft").code()).isZero();
        assertThat(bench.run("calc").out()).doesNotContain("loft.station");
        assertThat(bench.run("plugins", "list").out())
                .containsPattern("off +loft +2.1 +added by you +Where its middle is");
        assertThat(bench.run("plugins", "on", "loft").code()).isZero();
        assertThat(bench.run("calc").out()).contains("loft.station");
        assertThat(bench.run("plugins", "remove", "loft").out()).contains("Removed plugin loft");
        assertThat(bench.run("calc").out()).doesNotContain("loft.station");
    }

    @Test
    void pluginsOfTheProgramCanBeSwitchedOffButNotRemoved() {
        assertThat(bench.run("plugins", "off", "bench").code()).isZero();
        assertThat(bench.run("calc").out()).doesNotContain("bench.station");
        assertThat(bench.run("plugins", "on", "bench").code()).isZero();
        var said = bench.run("plugins", "remove", "bench");
        assertThat(said.code()).isEqualTo(1);
        assertThat(said.err()).contains("plugin 'bench' was not added by you", "accepted: none");
    }

    @Test
    void aHashForScriptsMustBeThatOfTheFile() {
        var wrong = bench.run("plugins", "add", zip.toString(), "--trust", "00" + hash.substring(2));
        assertThat(wrong.code()).isEqualTo(2);
        assertThat(wrong.err()).contains("--trust is '00", hash);
        assertThat(bench.run("plugins", "add", zip.toString(), "--trust", hash).code())
                .isZero();
        assertThat(bench.run("plugins", "list", "--json").out()).contains("\"sha256\": \"" + hash + "\"");
    }

    @Test
    void aPluginThatWasChangedOnDiskDoesNotRunUntilItIsTrustedAgain() throws IOException {
        bench.run("plugins", "add", zip.toString(), "--trust", hash);
        var other = TestPlugins.zip(
                temp.resolve("downloads/other.zip"),
                PROPERTIES.replace("2.1", "2.2"),
                Map.of(
                        "loft.Station",
                        TestPlugins.STATION
                                .replace("package bench;", "package loft;")
                                .replace("bench.station", "loft.station")));
        var place = bench.settings().user().data().resolve("plugins/loft.zip");
        Files.copy(other, place, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        assertThat(bench.run("calc").out())
                .doesNotContain("loft.station  ")
                .contains(
                        "its content is not what was trusted",
                        hash,
                        PluginShelf.look(other).hash());
        bench.run(
                "plugins",
                "add",
                other.toString(),
                "--trust",
                PluginShelf.look(other).hash());
        assertThat(bench.run("plugins", "list").out()).containsPattern("runs +loft +2.2");
    }

    @Test
    void aZipThatSomebodyLaidThereIsNotRun() throws IOException {
        var place = bench.settings().user().data().resolve("plugins/stray.zip");
        Files.createDirectories(place.getParent());
        Files.copy(zip, place);
        assertThat(bench.run("plugins", "list").out())
                .containsPattern("refused +loft")
                .contains("nobody has said that it is trusted");
        assertThat(bench.run("plugins", "remove", "loft").code()).isZero();
        assertThat(place).doesNotExist();
    }

    @Test
    void whatIsNoPluginIsRefusedByName() throws IOException {
        var text = Files.writeString(temp.resolve("notes.txt"), "no zip");
        assertThat(bench.run("plugins", "add", text.toString()).err()).contains("notes.txt", "no sound zip");
        assertThat(bench.run("plugins", "add", temp.resolve("gone.zip").toString())
                        .err())
                .contains("gone.zip", "not there");
        assertThat(bench.run("plugins", "off", "nonsense").err()).contains("'nonsense' is not there; accepted: bench");
    }

    @Test
    void aNewPluginIsWrittenIntoANewFolderOnly() throws IOException {
        var folder = temp.resolve("wing-shed");
        assertThat(bench.run("plugins", "new", folder.toString()).out()).contains("Wrote plugin wing-shed");
        assertThat(Files.readString(folder.resolve("src/main/java/wingshed/Dihedral.java")))
                .contains("package wingshed;", "id = \"wingshed.dihedral\"")
                .doesNotContain("@PACKAGE@", "@ID@");
        assertThat(bench.run("plugins", "new", folder.toString()).err()).contains("is not empty");
        assertThat(bench.run("plugins", "new", temp.resolve("Über").toString()).err())
                .contains("'Über'", "lower-case letters");
    }
}
