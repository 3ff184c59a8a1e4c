package planewright.app;

/**
 * Stands in for the configuration of the JDK's logging, and configures nothing: libraries stay silent, for what a user needs
 * to know our own messages say. The JDK's property {@code java.util.logging.config.file} lets them speak.
 */
public final class QuietLibraries {
    /** Has the JDK's logging use this class, unless the user has named a configuration. */
    static void use() {
        if (System.getProperty("java.util.logging.config.file") == null) {
            System.setProperty("java.util.logging.config.class", QuietLibraries.class.getName());
        }
    }
}
