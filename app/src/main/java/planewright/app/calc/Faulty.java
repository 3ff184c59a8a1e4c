package planewright.app.calc;

/** A calculator whose description cannot be used; the message names the component and what is wrong with it. */
final class Faulty extends Exception {
    private static final long serialVersionUID = 1L;

    Faulty(String english, Object... values) {
        super(PluginWords.say(english, values));
    }
}
