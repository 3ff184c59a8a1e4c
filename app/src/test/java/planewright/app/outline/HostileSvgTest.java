package planewright.app.outline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Files that are damaged, hostile, or draw in a way that is not read. */
class HostileSvgTest {
    @TempDir
    private Path temp;

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            <script>1</script>                                           | 'script'
            <g><foreignObject/></g>                                      | 'foreignObject'
            <image href='data:,'/>                                       | 'image'
            <path d='M0 0L9 9' onclick='x()'/>                           | 'onclick'
            <a href='https://example.org/'><path d='M0 0L9 9'/></a>      | 'href'
            <defs><g><script/></g></defs><path d='M0 0L9 9'/>            | 'script'
            <path d='M0 0L9 9'><animate/></path>                         | 'animate'
            <path d='M0 0L9 9' style='transform: scale(2)'/>             | style of 'path'
            <path d='M0 0L9 9' clip-path='url(#c)'/>                     | 'clip-path'
            <style>path { transform: scale(2) }</style>                  | style sheet has 'transform'
            <use href='#fin'/>                                           | 'use', which is not read; turn it into paths
            <svg><path d='M0 0L9 9'/></svg>                              | 'svg', which is not read
            <path d='M0 0L9'/>                                           | it ends at character 7
            <path d='L9 9'/>                                             | M or m first
            <path d='M0 0B9 9'/>                                         | 'B'
            <path d='M0 0L9 1e999'/>                                     | finite
            <path d='M0 0A5 5 0 2 0 9 9'/>                               | a flag, 0 or 1
            <path d='M0 0L9 9' transform='turn(9)'/>                     | 'turn(9)'
            <path d='M0 0L9 9' transform='scale(1e300) scale(1e300)'/>   | finite
            <polygon points='1 2 3'/>                                    | 3 numbers
            <circle cx='5%' r='9'/>                                      | '5%'
            <text>only words</text>                                      | draws no lines
            <path d='M5 5'/>                                             | draws no lines
            """)
    void whatIsDrawnInAWayThatIsNotReadIsRefusedByName(String shapes, String told) {
        assertThatExceptionOfType(OutlineRefused.class)
                .isThrownBy(() -> Sketch.read(shapes))
                .withMessageContaining(told)
                .withMessageMatching("(?s).*(accepted|draws no lines).*");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            width='100mm' height='50mm'                           | no viewBox
            width='100' height='50' viewBox='0 0 100 50'          | its width is '100', so its true size is not known
            width='100px' height='50px' viewBox='0 0 100 50'      | '100px'
            width='100%' height='100%' viewBox='0 0 100 50'       | '100%'
            viewBox='0 0 100 50'                                  | width is missing
            width='100mm' height='50mm' viewBox='0 0 100 60'      | not in proportion
            width='100mm' height='50mm' viewBox='0 0 100'         | four numbers
            width='100mm' height='50mm' viewBox='0 0 0 0'         | above 0
            width='99999mm' height='99999mm' viewBox='0 0 10 10'  | up to 10000 mm
            width='-5mm' height='-5mm' viewBox='0 0 10 10'        | above 0 mm
            width='e+mm' height='5mm' viewBox='0 0 10 10'         | 'e+mm'
            """)
    void aSheetWithoutATrueSizeIsRefused(String head, String told) {
        assertThatExceptionOfType(OutlineRefused.class)
                .isThrownBy(() -> SvgReader.read(Sketch.bytes(
                        "<svg xmlns='http://www.w3.org/2000/svg' " + head + "><path d='M0 0L9 9'/></svg>")))
                .withMessageContaining(told);
    }

    /** An entity that names another ten times, and so on, is a thousand million letters: it is not even begun. */
    @Test
    void entitiesAreRefusedBeforeTheyAreRead() throws Exception {
        var secret = Files.writeString(temp.resolve("secret.txt"), "M0 0L9 9");
        var external = "<!DOCTYPE svg [<!ENTITY x SYSTEM '" + secret.toUri() + "'>]>" + svg("<path d='&x;'/>");
        assertRefused(external, "entities");
        assertRefused("<!DOCTYPE svg [<!ENTITY a 'aaaa'><!ENTITY b '&a;&a;'>]>" + svg("<desc>&b;</desc>"), "entities");
        assertRefused(svg("<desc>&b;</desc>"), "not XML");
    }

    /** Many programs write the document type of SVG 1.1; it is not fetched. */
    @Test
    void aDocumentTypeWithoutDeclarationsDoesNoHarm() throws OutlineRefused {
        var read = SvgReader.read(Sketch.bytes("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<!DOCTYPE svg PUBLIC"
                + " \"-//W3C//DTD SVG 1.1//EN\" \"http://localhost:9/never-there.dtd\">"
                + svg("<path d='M0 0L9 9'/>")));
        assertThat(read.paths()).hasSize(1);
    }

    @Test
    void whatIsNoSvgIsRefused() {
        assertRefused("", "not XML");
        assertRefused(
                "<svg width='1mm' height='1mm' viewBox='0 0 1 1'><path d='M0 0L9 9'/></svg>", "begins with 'svg'");
        assertRefused("<html/>", "begins with 'html'");
        assertRefused(svg("<path d='M0 0L9 9'/>").substring(0, 100), "not XML: line 1");
        assertThatExceptionOfType(OutlineRefused.class)
                .isThrownBy(() -> SvgReader.read(svg("<path d='M0 0L9 9'/>").getBytes(StandardCharsets.UTF_16)))
                .withMessageContaining("UTF-8");
        assertThatExceptionOfType(OutlineRefused.class)
                .isThrownBy(() -> SvgReader.read(new byte[SvgReader.MOST_BYTES + 1]))
                .withMessageContaining("accepted: up to " + SvgReader.MOST_BYTES);
        assertRefused(svg("<g>".repeat(1000) + "<path d='M0 0L9 9'/>" + "</g>".repeat(1000)), "deeper than 64");
    }

    /** What other programs write into their files for themselves is passed over, hidden lines too. */
    @Test
    void whatIsNotShownIsNotRead() throws OutlineRefused {
        var read =
                SvgReader.read(Sketch.bytes("<svg xmlns='http://www.w3.org/2000/svg' xmlns:e='urn:editor' width='9mm'"
                        + " height='9mm' viewBox='0 0 9 9'><metadata><e:x/></metadata><e:view><e:y/></e:view>"
                        + "<defs><path d='M0 0L1 1'/></defs><g display='none'><path d='M0 0L2 2'/></g>"
                        + "<path style='fill:none; display : none' d='M0 0L3 3'/><text>words</text>"
                        + "<style>path { stroke: red }</style><path e:z='7' d='M0 0L4 5'/></svg>"));
        assertThat(read.paths()).hasSize(1);
        assertThat(read.paths().get(0).pieces().get(0).end().x()).isEqualTo(4);
    }

    private static String svg(String shapes) {
        return "<svg xmlns='http://www.w3.org/2000/svg' width='9mm' height='9mm' viewBox='0 0 9 9'>" + shapes
                + "</svg>";
    }

    private static void assertRefused(String text, String told) {
        assertThatExceptionOfType(OutlineRefused.class)
                .isThrownBy(() -> SvgReader.read(Sketch.bytes(text)))
                .withMessageContaining(told);
    }
}
