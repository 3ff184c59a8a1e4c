package planewright.app.ui.pictures;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import planewright.app.journal.PictureRecord;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.Cards;
import planewright.app.ui.common.ContextMenu;
import planewright.app.ui.common.Files;
import planewright.app.ui.common.FirstWide;
import planewright.app.ui.common.Icons;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.PictureIntake;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.WhenShown;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;

/** All pictures of the build that is shown; one of them large; two of them side by side. */
public final class PicturesPage extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final String GRID = "grid";
    private static final String LARGE = "large";
    private static final String COMPARE = "compare";

    private final transient Workroom room;
    private final transient Consumer<List<Path>> takeFiles;
    private final Cards cards = new Cards();
    private final PictureGrid grid;
    private final transient PictureActions actions;
    private final LargePicture large;
    private final ComparePictures compare;
    private final JTextField filter = Words.named(new JTextField(), Texts.PICTURES_FILTER.text(), "pictures-filter");
    private final JLabel count = Look.quiet(" ");
    private final JTextArea nothing = Words.quiet("");
    private final JButton openButton =
            Buttons.with(Icons.FIT, Buttons.plain("picture-open", Texts.OPEN_PICTURE.text(), this::open));
    private final JButton compareButton =
            Buttons.with(Icons.COMPARE, Buttons.plain("picture-compare", Texts.COMPARE.text(), this::compare));
    private final JButton captionButton = Buttons.plain("picture-caption", Texts.EDIT_CAPTION.text(), () -> {
        open();
        SwingUtilities.invokeLater(this::editCaption);
    });
    /** What can be done with pictures that are chosen, besides opening and comparing them. */
    private final transient List<JButton> ofChosen;

    private transient Optional<String> build = Optional.empty();
    private String shown = GRID;
    /** Leads back from a picture that stands in no log yet; empty where none is shown. */
    private transient Optional<Runnable> alone = Optional.empty();

    /**
     * @param takeFiles takes picture files into the log
     * @param takePasted takes a pasted picture into the log
     */
    public PicturesPage(Workroom room, Consumer<List<Path>> takeFiles, Consumer<BufferedImage> takePasted) {
        this.room = room;
        this.takeFiles = takeFiles;
        setLayout(cards);
        setName("pictures-page");
        grid = new PictureGrid(room);
        actions = new PictureActions(this, room, grid::chosenPictures);
        ofChosen = Stream.concat(Stream.of(captionButton), actions.buttons("picture").stream())
                .toList();
        large = new LargePicture(room, this::back);
        compare = new ComparePictures(room, this::back);
        add(gridPage(), GRID);
        add(padded(large), LARGE);
        add(padded(compare), COMPARE);
        grid.setTransferHandler(actions.out());
        PictureIntake.on(grid, takeFiles, takePasted);
        PictureIntake.on(this, takeFiles, takePasted);
        GridHands.on(grid, this::open, actions.out()::prepare);
        grid.onChosen(this::chosenChanged);
        chosenChanged();
        grid.getInputMap().put(KeyStroke.getKeyStroke("F2"), "caption");
        grid.getActionMap().put("caption", new javax.swing.AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(java.awt.event.ActionEvent event) {
                captionButton.doClick(0);
            }
        });
        Buttons.onEdit(filter, this::refresh);
        filter.addActionListener(event -> grid.requestFocusInWindow());
        WhenShown.refresh(this, room, this::refresh);
    }

    /**
     * Shows a picture large, whatever the filter hides.
     *
     * @param entryId whose picture it is; empty for whichever entry has it, if any has
     * @param captioned takes the caption of a picture that stands in no log yet
     * @param leave leads back from a picture that stands in no log yet
     */
    public void show(String entryId, PictureRecord picture, Optional<Consumer<String>> captioned, Runnable leave) {
        filter.setText("");
        refresh();
        grid.pictures().stream()
                .filter(each -> (entryId.isEmpty() || each.entry().id().equals(entryId))
                        && each.picture().hash().equals(picture.hash()))
                .findFirst()
                .ifPresentOrElse(
                        wanted -> {
                            choose(wanted);
                            open();
                        },
                        () -> openAlone(picture, captioned, leave));
    }

    private void openAlone(PictureRecord picture, Optional<Consumer<String>> captioned, Runnable leave) {
        build.ifPresent(id -> {
            large.showAlone(LoggedPicture.alone(id, room.now(), picture), captioned);
            alone = Optional.of(leave);
            showLarge();
        });
    }

    private JPanel gridPage() {
        var page = new JPanel(new MigLayout("insets 10, gap 8, fill, hidemode 3", "[grow,fill]", "[][][grow,fill]"));
        var bar = new JPanel(FirstWide.filter());
        filter.putClientProperty("JTextField.showClearButton", true);
        bar.add(filter);
        bar.add(count);
        bar.add(openButton);
        bar.add(compareButton);
        bar.add(Buttons.plain(
                "pictures-add", Texts.ADD_PICTURE.text(), () -> takeFiles.accept(Files.choosePictures(this))));
        compareButton.setToolTipText(Texts.COMPARE_HINT.text());
        nothing.setName("no-pictures");
        page.add(bar, "cell 0 0, wmin 0");
        page.add(nothing, "cell 0 1, wmin 0");
        page.add(grid.scrolled(), "cell 0 2, wmin 0, hmin 80");
        ContextMenu.on(
                grid,
                Stream.concat(Stream.of(openButton, compareButton), ofChosen.stream())
                        .toArray(JButton[]::new));
        return page;
    }

    private static JPanel padded(JPanel page) {
        var padded = new JPanel(new MigLayout("insets 10, fill", "[grow,fill]", "[grow,fill]"));
        padded.add(page, "wmin 0, hmin 0");
        return padded;
    }

    private void refresh() {
        var now = room.build().map(each -> each.id());
        if (!now.equals(build)) {
            build = now;
            grid.chosen().restore(new Chosen.Keys(java.util.Set.of(), Optional.empty()), List.of());
            grid.scrollRectToVisible(new java.awt.Rectangle(0, 0, 1, 1));
            back();
        }
        var all =
                now.map(id -> LoggedPicture.newestFirst(room.journal().log(id))).orElse(List.of());
        var words = Arrays.stream(filter.getText().toLowerCase(Locale.ROOT).split("\\s+"))
                .filter(word -> !word.isEmpty())
                .toList();
        var wanted = words.isEmpty()
                ? all
                : all.stream().filter(each -> each.bears(words)).toList();
        if (!wanted.equals(grid.pictures())) {
            grid.show(wanted);
        }
        grid.repaint();
        count.setText(
                wanted.size() == all.size()
                        ? Texts.PICTURES_COUNT.text(all.size())
                        : Texts.PICTURES_SOME.text(wanted.size(), all.size()));
        Words.show(nothing, wanted.isEmpty() ? nothingThere(all.isEmpty()) : "");
        refreshLarge(all);
    }

    private String nothingThere(boolean none) {
        return none
                ? Texts.NO_PICTURES.text()
                : Texts.NO_PICTURE_BEARS.text(filter.getText().strip());
    }

    /** The picture that is shown large may have another caption now, or be gone. */
    private void refreshLarge(List<LoggedPicture> all) {
        if (shown.equals(LARGE) && alone.isEmpty()) {
            large.shown().ifPresent(before -> {
                var now = all.stream()
                        .filter(each -> each.key().equals(before.key()))
                        .findFirst();
                now.ifPresentOrElse(
                        each -> large.show(grid.pictures().contains(each) ? grid.pictures() : all, each), this::back);
            });
        }
    }

    private void chosenChanged() {
        int chosen = grid.chosen().count();
        openButton.setEnabled(chosen > 0);
        ofChosen.forEach(button -> button.setEnabled(chosen > 0));
        compareButton.setEnabled(chosen == 2);
    }

    private void open() {
        int lead = grid.chosen().lead();
        if (lead >= 0) {
            alone = Optional.empty();
            large.show(grid.pictures(), grid.pictures().get(lead));
            showLarge();
        }
    }

    private void editCaption() {
        if (shown.equals(LARGE)) {
            large.editCaption();
        }
    }

    private void compare() {
        var chosen = grid.chosenPictures();
        if (chosen.size() == 2) {
            compare.show(chosen.get(0), chosen.get(1));
            show(COMPARE);
            compare.focusPicture();
        }
    }

    /** To the grid, where the picture that was shown last is chosen. */
    private void back() {
        if (shown.equals(LARGE)) {
            large.shown().ifPresent(this::choose);
        }
        boolean wasAway = !shown.equals(GRID);
        show(GRID);
        large.close();
        compare.close();
        var leave = alone;
        alone = Optional.empty();
        if (leave.isPresent()) {
            leave.get().run();
        } else if (wasAway) {
            grid.requestFocusInWindow();
            SwingUtilities.invokeLater(grid::reveal);
        }
    }

    private void choose(LoggedPicture picture) {
        for (int place = 0; place < grid.pictures().size(); place++) {
            if (grid.pictures().get(place).key().equals(picture.key())) {
                grid.chosen().only(place);
            }
        }
    }

    /** The picture has the keyboard once whoever had it before is out of sight. */
    private void showLarge() {
        show(LARGE);
        SwingUtilities.invokeLater(large::focusPicture);
    }

    private void show(String card) {
        shown = card;
        cards.show(this, card);
    }
}
