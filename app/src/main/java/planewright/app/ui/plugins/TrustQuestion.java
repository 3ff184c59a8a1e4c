package planewright.app.ui.plugins;

import java.awt.Component;
import java.awt.Font;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import planewright.app.calc.PluginShelf.Offer;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Words;

/** Asks whether a plugin is trusted, with all there is to know of it; what is chosen unless one thinks is not to add it. */
final class TrustQuestion {
    private static final int WIDTH = 520;

    private TrustQuestion() {}

    static boolean isTrusted(Component over, Offer offer) {
        Object[] choices = {Texts.BACK.text(), Texts.TRUST_AND_ADD.text()};
        return JOptionPane.showOptionDialog(
                        SwingUtilities.getWindowAncestor(over),
                        facts(offer),
                        Texts.PLUGIN_ADD.text(),
                        JOptionPane.DEFAULT_OPTION,
                        JOptionPane.PLAIN_MESSAGE,
                        null,
                        choices,
                        choices[0])
                == 1;
    }

    private static JComponent facts(Offer offer) {
        var facts = new JPanel(new MigLayout("insets 0, gap 8 4, wrap 2", "[][" + WIDTH + "!,fill]"));
        facts.setName("trust-question");
        fact(facts, Texts.PLUGIN.text(), offer.id() + " " + offer.version());
        fact(facts, Texts.PLUGIN_WHAT.text(), said(offer.told()));
        fact(facts, Texts.PLUGIN_MADE_BY.text(), said(offer.provider()));
        fact(facts, Texts.PLUGIN_NEEDS.text(), offer.requires());
        fact(facts, "SHA-256", offer.hash());
        facts.add(Words.of(Texts.TRUST_WARNING.text()), "span, growx, wmin 0, gaptop 8");
        facts.add(Look.sized(Words.of(Texts.TRUST_ASK.text()), 1, Font.BOLD), "span, growx, wmin 0");
        return facts;
    }

    private static void fact(JPanel facts, String label, String text) {
        facts.add(new JLabel(label), "aligny top");
        facts.add(Words.of(text), "wmin 0");
    }

    private static String said(String text) {
        return text.isBlank() ? Texts.PLUGIN_SAYS_NOTHING.text() : text;
    }
}
