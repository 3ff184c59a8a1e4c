package planewright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PackagedPluginTest {
    @Test
    void thereIsAPackagedPlugin() {
        assertThat(Workplace.pluginZips()).isNotEmpty();
        assertThat(Workplace.sample().resolve("journal.json")).exists();
    }
}
