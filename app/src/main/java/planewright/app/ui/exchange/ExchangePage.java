package planewright.app.ui.exchange;

import java.util.Optional;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import net.miginfocom.swing.MigLayout;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Workroom;

/** Where things come into the journal and go out of it. */
public final class ExchangePage extends JPanel {
    private static final long serialVersionUID = 1L;

    private static final int TAKE = 1;

    private final BringPanel bring;
    private transient Optional<TakePanel> take = Optional.empty();

    public ExchangePage(Workroom room) {
        super(new MigLayout("insets 10 6 0 10, fill", "[grow,fill]", "[grow,fill]"));
        setName("exchange");
        bring = new BringPanel(room);
        var tabs = new JTabbedPane();
        tabs.setName("exchange-tabs");
        tabs.getAccessibleContext().setAccessibleName(Texts.EXCHANGE.text());
        tabs.addTab(Texts.EXCHANGE_BRING.text(), bring);
        tabs.addTab(Texts.EXCHANGE_TAKE.text(), new JPanel());
        tabs.addChangeListener(event -> {
            if (take.isEmpty() && tabs.getSelectedIndex() == TAKE) {
                take = Optional.of(new TakePanel(room));
                tabs.setComponentAt(TAKE, take.get());
            }
        });
        add(tabs, "wmin 0");
    }

    /** Ends work under way at its next step; what it has begun is taken back. */
    public void stop() {
        bring.stop();
        take.ifPresent(TakePanel::stop);
    }
}
