package planewright.app.ui.common;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Answers as the systems print them (from memory): Windows' registry value AppsUseLightTheme, 0 for dark; macOS' AppleInterfaceStyle, which
 * is there only while it is dark; the key color-scheme of gsettings-desktop-schemas: default, prefer-dark, prefer-light.
 */
class SystemLookTest {
    @ParameterizedTest
    @CsvSource({
        "Windows 11, '    AppsUseLightTheme    REG_DWORD    0x0\r\n\r\n', true",
        "Windows 11, '    AppsUseLightTheme    REG_DWORD    0x1\r\n\r\n', false",
        "Mac OS X, 'Dark\n', true",
        "Linux, '''prefer-dark''\n', true",
        "Linux, '''prefer-light''\n', false",
        "Linux, '''default''\n', false"
    })
    void eachSystemIsAskedInItsOwnWay(String system, String answer, boolean dark) {
        assertThat(SystemLook.isDark(system, command -> Optional.of(answer))).isEqualTo(dark);
    }

    @Test
    void whereNothingAnswersItIsLight() {
        assertThat(SystemLook.isDark("FreeBSD", command -> Optional.empty())).isFalse();
        assertThat(SystemLook.isDark("Mac OS X", command -> Optional.empty())).isFalse();
    }
}
