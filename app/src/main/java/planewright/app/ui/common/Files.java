package planewright.app.ui.common;

import java.awt.Component;
import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;
import javax.swing.SwingUtilities;
import javax.swing.filechooser.FileNameExtensionFilter;
import planewright.app.print.Paper;
import planewright.app.print.Sheet;
import planewright.app.print.SheetPdf;

/** Choosing files, and printing into one. */
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

    /**
     * Asks for a file, then writes a sheet into it in the background.
     *
     * @param name what the file is called unless the builder says otherwise
     * @param sheet put together in the background
     */
    public static void print(Component over, Workroom room, String name, Supplier<Sheet> sheet) {
        choosePdf(over, name)
                .ifPresent(pdf -> room.background().run(() -> java.nio.file.Files.exists(pdf), exists -> {
                    if (!exists || mayReplace(over, pdf)) {
                        write(room, sheet, pdf);
                    }
                }));
    }

    private static void write(Workroom room, Supplier<Sheet> sheet, Path pdf) {
        room.say(Texts.PRINTING.text(pdf.getFileName()));
        room.background()
                .run(
                        () -> {
                            SheetPdf.write(sheet.get(), paper(), pdf);
                            return pdf;
                        },
                        written -> room.say(Texts.PRINTED.text(written)));
    }

    private static boolean mayReplace(Component over, Path pdf) {
        Object[] choices = {Texts.BACK.text(), Texts.REPLACE.text()};
        return JOptionPane.showOptionDialog(
                        windowOf(over),
                        Texts.REPLACE_FILE.text(pdf.getFileName()),
                        Texts.PRINT_AS.text(),
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

    private static Optional<Path> choosePdf(Component over, String name) {
        var chooser = new JFileChooser();
        chooser.setName("print-chooser");
        chooser.setFileFilter(new FileNameExtensionFilter("PDF", "pdf"));
        chooser.setSelectedFile(new File(name.replaceAll("[^\\p{L}\\p{N} ._-]", "_") + ".pdf"));
        chooser.setDialogTitle(Texts.PRINT_AS.text());
        if (chooser.showSaveDialog(windowOf(over)) != JFileChooser.APPROVE_OPTION) {
            return Optional.empty();
        }
        var chosen = chooser.getSelectedFile();
        return Optional.of(
                chosen.getName().toLowerCase(Locale.ROOT).endsWith(".pdf")
                        ? chosen.toPath()
                        : Path.of(chosen.getPath() + ".pdf"));
    }

    /** Letter where it is the custom (CLDR), A4 elsewhere. */
    private static Paper paper() {
        return List.of("US", "CA", "MX", "PH", "CL", "CO")
                        .contains(Locale.getDefault().getCountry())
                ? Paper.LETTER
                : Paper.A4;
    }
}
