package planewright.app.outline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIOException;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import planewright.api.figure.Point;

class OutlineShelfTest {
    private static final String FIN = "<svg xmlns='http://www.w3.org/2000/svg' width='80mm' height='40mm'"
            + " viewBox='0 0 80 40'><path d='M0 40 C 10 10 30 5 60 0 L 80 40 Z'/></svg>";

    @TempDir
    private Path temp;

    @Test
    void aFileIsKeptAsItIsUnderItsHash() throws Exception {
        var file = Files.writeString(temp.resolve("fin.svg"), FIN);
        var hash = shelf().add(file);
        assertThat(hash)
                .isEqualTo(HexFormat.of()
                        .formatHex(MessageDigest.getInstance("SHA-256").digest(FIN.getBytes(StandardCharsets.UTF_8))));
        assertThat(shelf().file(hash))
                .isEqualTo(temp.resolve("outlines/" + hash.substring(0, 2) + "/" + hash + ".svg"))
                .hasContent(FIN);
        assertThat(shelf().add(file)).isEqualTo(hash);
        assertThat(shelf().read(hash).paths().get(0).closed()).isTrue();
    }

    @Test
    void anOutlineThatIsWrittenIsReadBackToATenThousandth() throws IOException {
        var fin =
                Sketch.read("<path d='M 10.12345 20 C 10 10 30 5 60.98765 0 L 80 40 Z'/><circle cx='9' cy='8' r='3'/>");
        var back = shelf().read(shelf().add(fin, "Fin & <rudder>\u0001"));
        assertThat(back.width()).isEqualTo(fin.width());
        assertThat(back.paths()).hasSameSizeAs(fin.paths());
        for (int i = 0; i < fin.paths().size(); i++) {
            var before = fin.paths().get(i);
            var after = back.paths().get(i);
            assertThat(after.closed()).isEqualTo(before.closed());
            assertClose(after.start(), before.start());
            for (int j = 0; j < before.pieces().size(); j++) {
                assertThat(after.pieces().get(j)).hasSameClassAs(before.pieces().get(j));
                assertClose(after.pieces().get(j).end(), before.pieces().get(j).end());
            }
        }
        assertThat(shelf().add(back, "Fin & <rudder> ")).isEqualTo(shelf().add(fin, "Fin & <rudder>\u0001"));
    }

    @Test
    void whatCannotBeReadBackIsNotTakenIn() throws IOException {
        var file = Files.writeString(temp.resolve("fin.svg"), FIN.replace("<path", "<use"));
        assertRefused(() -> shelf().add(file), file.toString(), "'use'");
        assertRefused(() -> shelf().add(temp.resolve("none.svg")), "none.svg", "not there");
        assertRefused(() -> shelf().add(temp), "accepted: an SVG file");
        assertThat(temp.resolve("outlines")).doesNotExist();
    }

    @Test
    void nothingIsTakenInWhereNothingMayBeWritten() throws IOException {
        var file = Files.writeString(temp.resolve("fin.svg"), FIN);
        var closed = new OutlineShelf(temp.resolve("outlines"), () -> {
            throw new IOException("open for reading only");
        });
        assertThatIOException().isThrownBy(() -> closed.add(file)).withMessageContaining("reading only");
        assertThat(temp.resolve("outlines")).doesNotExist();
    }

    @Test
    void damageIsCalledDamageAndMendedByTakingItInAgain() throws IOException {
        var file = Files.writeString(temp.resolve("fin.svg"), FIN);
        var hash = shelf().add(file);
        Files.writeString(shelf().file(hash), FIN.replace("80 40 Z", "80 41 Z"));
        assertRefused(() -> shelf().read(hash), "not what its name says");
        shelf().add(file);
        assertThat(shelf().read(hash).width()).isEqualTo(80);
        Files.delete(shelf().file(hash));
        assertRefused(() -> shelf().read(hash), "missing");
        try (Stream<Path> files = Files.walk(temp.resolve("outlines"))) {
            assertThat(files.filter(Files::isRegularFile)).isEmpty();
        }
    }

    private OutlineShelf shelf() {
        return new OutlineShelf(temp.resolve("outlines"), () -> {});
    }

    private static void assertClose(Point one, Point other) {
        assertThat(one.x()).isEqualTo(other.x(), within(5.1e-5));
        assertThat(one.y()).isEqualTo(other.y(), within(1.1e-4));
    }

    private static void assertRefused(ThrowingCallable work, String... told) {
        assertThatExceptionOfType(OutlineRefused.class).isThrownBy(work).withMessageContainingAll(told);
    }
}
