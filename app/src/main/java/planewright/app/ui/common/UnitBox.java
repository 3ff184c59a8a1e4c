package planewright.app.ui.common;

import java.util.Optional;
import javax.measure.Unit;
import javax.swing.JComboBox;
import planewright.api.quantity.Units;

/** Offers the units that a kind of quantity can be shown in; the choice holds for that kind on every page. */
public final class UnitBox extends JComboBox<String> {
    private static final long serialVersionUID = 1L;

    private final transient Workroom room;
    private transient Optional<Unit<?>> kind = Optional.empty();
    private boolean filling;

    /**
     * @param name its name for tests
     */
    public UnitBox(Workroom room, String name) {
        this.room = room;
        setName(name);
        getAccessibleContext().setAccessibleName(Texts.SHOWN_UNIT.text());
        setToolTipText(Texts.SHOWN_UNIT.text());
        addActionListener(event -> chosen());
    }

    /** Offers the units of the same kind as this one. */
    public void offer(Unit<?> unit) {
        filling = true;
        kind = Optional.of(unit);
        removeAllItems();
        addItem(Texts.AS_WRITTEN.text());
        Units.alike(unit).stream().filter(coded -> !coded.symbol().isEmpty()).forEach(coded -> addItem(coded.symbol()));
        setSelectedItem(room.units().preferred(unit).map(Units::symbolOf).orElse(Texts.AS_WRITTEN.text()));
        filling = false;
    }

    private void chosen() {
        if (filling || kind.isEmpty()) {
            return;
        }
        var wanted = Units.alike(kind.get()).stream()
                .filter(coded -> coded.symbol().equals(getSelectedItem()))
                .findFirst();
        room.units().prefer(kind.get(), wanted.map(Units.Coded::unit));
        room.remembered();
    }
}
