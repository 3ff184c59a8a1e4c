package planewright.app.ui.common;

import java.awt.Component;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;
import javax.swing.SwingUtilities;
import javax.swing.filechooser.FileNameExtensionFilter;
import planewright.api.figure.Drawing;
import planewright.app.print.CutLines;
import planewright.app.print.Paper;
import planewright.app.print.Sheet;
import planewright.app.print.SheetPdf;

/** Choosing files, and printing or drawing into one. */
public final class Files {
    private Files() {}

    /** Pictures that the builder chooses; none where they change their mind. */
    public static List<Path> choosePictures(Component over) {
        var chooser = new JFileChooser();
        chooser.setName("picture-chooser");
        chooser.setMultiSelectionEnabled(true);
        chooser.setFileFilter(new FileNameExtensionFilter(Texts.PICTURE_FILES.text(), "jpg", "jpeg", "png"));
        return chooser.showOpenDialog(windowOf(over)) == JFileChooser.APPROVE_OPTION
                ? List.of(chooser.getSelectedFiles()).stream().map(File::toPath).toList()
                : List.of();
    }

    /** A folder that the builder chooses, new or not; none where they change their mind. */
    public static Optional<Path> chooseFolder(Component over) {
        return choose(over, JFileChooser.DIRECTORIES_ONLY);
    }

    /** A file or folder that the builder chooses. */
    public static Optional<Path> chooseFileOrFolder(Component over) {
        return choose(over, JFileChooser.FILES_AND_DIRECTORIES);
    }

    /** A file with one of these endings that the builder chooses. */
    public static Optional<Path> chooseFile(Component over, String... endings) {
        return choose(over, JFileChooser.FILES_ONLY, endings);
    }

    private static Optional<Path> choose(Component over, int mode, String... endings) {
        var chooser = new JFileChooser();
        chooser.setName("place-chooser");
        chooser.setFileSelectionMode(mode);
        if (endings.length > 0) {
            chooser.setFileFilter(new FileNameExtensionFilter(String.join(", ", endings), endings));
        }
        return chooser.showDialog(windowOf(over), Texts.CHOOSE_THIS.text()) == JFileChooser.APPROVE_OPTION
                ? Optional.of(chooser.getSelectedFile().toPath())
                : Optional.empty();
    }

    /**
     * A file to write that the builder chooses.
     *
     * @param title of the chooser
     * @param name what it is called unless the builder says otherwise
     */
    public static Optional<Path> chooseTarget(Component over, String title, String name, String ending) {
        var chooser = new JFileChooser();
        chooser.setDialogTitle(title);
        chooser.setName("target-chooser");
        chooser.setFileFilter(new FileNameExtensionFilter(ending.toUpperCase(Locale.ROOT), ending));
        chooser.setSelectedFile(new File(name.replaceAll("[^\\p{L}\\p{N} ._-]", "_") + "." + ending));
        if (chooser.showSaveDialog(windowOf(over)) != JFileChooser.APPROVE_OPTION) {
            return Optional.empty();
        }
        var chosen = chooser.getSelectedFile();
        return Optional.of(
                chosen.getName().toLowerCase(Locale.ROOT).endsWith("." + ending)
                        ? chosen.toPath()
                        : Path.of(chosen.getPath() + "." + ending));
    }

    /**
     * Asks for a file, then writes a sheet into it in the background.
     *
     * @param name what the file is called unless the builder says otherwise
     * @param sheet put together in the background
     */
    public static void print(Component over, Workroom room, String name, Supplier<Sheet> sheet) {
        save(over, room, name, Kind.PDF, pdf -> SheetPdf.write(sheet.get(), paper(), pdf));
    }

    /** Asks for a file, then writes what is cut of drawings into it in the background. */
    public static void saveCutLines(Component over, Workroom room, String name, List<Drawing> drawings) {
        save(over, room, name, Kind.SVG, svg -> CutLines.write(drawings, svg));
    }

    /**
     * Asks for a file, then writes a picture into it in the background.
     *
     * @param type {@code jpg} or {@code png}
     */
    public static void savePicture(Component over, Workroom room, String name, String type, Writer writer) {
        save(over, room, name, Kind.valueOf(type.toUpperCase(Locale.ROOT)), writer);
    }

    private static void save(Component over, Workroom room, String name, Kind kind, Writer writer) {
        chooseTarget(over, kind.title.text(), name, kind.ending())
                .ifPresent(file -> room.background().run(() -> java.nio.file.Files.exists(file), exists -> {
                    if (!exists || mayReplace(over, file, kind)) {
                        write(room, writer, file, kind);
                    }
                }));
    }

    private static void write(Workroom room, Writer writer, Path file, Kind kind) {
        room.say(Texts.PRINTING.text(file.getFileName()));
        room.background()
                .run(
                        () -> {
                            writer.write(file);
                            return file;
                        },
                        written -> room.say(kind.done.text(written)));
    }

    private static boolean mayReplace(Component over, Path file, Kind kind) {
        Object[] choices = {Texts.BACK.text(), Texts.REPLACE.text()};
        return JOptionPane.showOptionDialog(
                        windowOf(over),
                        Texts.REPLACE_FILE.text(file.getFileName()),
                        kind.title.text(),
                        JOptionPane.DEFAULT_OPTION,
                        JOptionPane.WARNING_MESSAGE,
                        null,
                        choices,
                        choices[0])
                == 1;
    }

    /** A dialog stands over the middle of its window, not over that of a long page. */
    private static Component windowOf(Component component) {
        return SwingUtilities.getWindowAncestor(component);
    }

    /** Letter where it is the custom (CLDR), A4 elsewhere. */
    private static Paper paper() {
        return List.of("US", "CA", "MX", "PH", "CL", "CO")
                        .contains(Locale.getDefault().getCountry())
                ? Paper.LETTER
                : Paper.A4;
    }

    /** Kinds of files, by the names that builders know them by. */
    private enum Kind {
        PDF(Texts.PRINT_AS, Texts.PRINTED),
        SVG(Texts.CUT_LINES_AS, Texts.CUT_LINES_SAVED),
        JPG(Texts.SAVE_COPY, Texts.COPY_SAVED),
        PNG(Texts.SAVE_COPY, Texts.COPY_SAVED);

        private final Texts title;
        private final Texts done;

        Kind(Texts title, Texts done) {
            this.title = title;
            this.done = done;
        }

        private String ending() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** Writes into the file that was chosen; in the background. */
    @FunctionalInterface
    public interface Writer {
        void write(Path file) throws IOException;
    }
}
