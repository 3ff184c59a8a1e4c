package planewright.app.ui.common;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.measure.Unit;
import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JMenu;
import javax.swing.JPopupMenu;
import javax.swing.JRadioButtonMenuItem;
import planewright.api.quantity.Units;

/** A button that offers the units of what a builder measures most; the choice holds on every page. */
public final class UnitsMenu {
    private static final List<Kind> KINDS = List.of(
            new Kind(Texts.UNITS_OF_LENGTHS, Units.MILLIMETRE),
            new Kind(Texts.UNITS_OF_MASSES, Units.GRAM),
            new Kind(Texts.UNITS_OF_AREAS, Units.SQUARE_DECIMETRE),
            new Kind(Texts.UNITS_OF_WING_LOADINGS, Units.GRAM_PER_SQUARE_DECIMETRE),
            new Kind(Texts.UNITS_OF_MOMENTS, Units.GRAM_MILLIMETRE),
            new Kind(Texts.UNITS_OF_INERTIA, Units.KILOGRAM_SQUARE_METRE),
            new Kind(Texts.UNITS_OF_TORQUES, Units.NEWTON_CENTIMETRE),
            new Kind(Texts.UNITS_OF_SPEEDS, Units.METRE_PER_SECOND));

    private final Workroom room;

    private UnitsMenu(Workroom room) {
        this.room = room;
    }

    private record Kind(Texts words, Unit<?> unit) {}

    /**
     * The button.
     *
     * @param name its name for tests
     */
    public static JButton button(Workroom room, String name) {
        var button = Buttons.plain(name, Texts.UNITS.text(), () -> {});
        button.setToolTipText(Texts.SHOWN_UNIT.text());
        button.addActionListener(event -> new UnitsMenu(room).menu().show(button, 0, button.getHeight()));
        return button;
    }

    private JPopupMenu menu() {
        var menu = new JPopupMenu();
        KINDS.forEach(kind -> menu.add(menu(kind)));
        return menu;
    }

    private JMenu menu(Kind kind) {
        var menu = new JMenu(kind.words().text());
        menu.setName("units-" + Units.codeOf(kind.unit()));
        var group = new ButtonGroup();
        Stream.concat(
                        Stream.of(Optional.<Unit<?>>empty()),
                        Units.alike(kind.unit()).stream().map(coded -> Optional.<Unit<?>>of(coded.unit())))
                .map(unit -> item(kind, unit))
                .forEach(item -> {
                    group.add(item);
                    menu.add(item);
                });
        return menu;
    }

    private JRadioButtonMenuItem item(Kind kind, Optional<Unit<?>> unit) {
        var item = new JRadioButtonMenuItem(
                unit.map(Units::symbolOf).orElse(Texts.AS_WRITTEN.text()),
                room.units().preferred(kind.unit()).equals(unit));
        item.setName("unit-" + unit.map(Units::codeOf).orElse("as-written"));
        item.addActionListener(event -> {
            room.units().prefer(kind.unit(), unit);
            room.remembered();
        });
        return item;
    }
}
