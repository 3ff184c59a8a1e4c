package planewright.app.ui.exchange;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.PictureIntake;
import planewright.app.ui.common.Texts;

/** Where something is or shall be: typed, dropped, or chosen. */
final class PlaceField extends JPanel {
    private static final long serialVersionUID = 1L;

    private final JTextField field = new JTextField();

    /**
     * @param name of the field, for tests
     * @param label what it is, for those who cannot see it
     * @param chooser asks the builder
     * @param edited runs at every change
     */
    PlaceField(String name, String label, Supplier<Optional<Path>> chooser, Runnable edited) {
        super(new MigLayout("insets 0, gap 6, fillx", "[grow,fill][]"));
        setOpaque(false);
        field.setName(name);
        field.getAccessibleContext().setAccessibleName(label);
        Buttons.onEdit(field, edited);
        PictureIntake.on(field, files -> field.setText(files.get(0).toString()), nothing -> {});
        add(field, "wmin 60");
        add(Buttons.of(
                name + "-choose",
                Texts.CHOOSE.text(),
                () -> chooser.get().ifPresent(path -> field.setText(path.toString()))));
    }

    /** The place; empty where nothing, or no place, is typed. */
    Optional<Path> place() {
        try {
            return Optional.of(field.getText().strip())
                    .filter(text -> !text.isEmpty())
                    .map(Path::of);
        } catch (InvalidPathException none) {
            return Optional.empty();
        }
    }
}
