package planewright.api;

import org.apiguardian.api.API;

/** The API itself. */
@API(status = API.Status.MAINTAINED, since = "0.1.0")
public final class Api {
    /** Its semantic version (2.0.0 of that scheme); a plugin asks for a range of it in {@code plugin.requires}. */
    public static final String VERSION = "0.3.0";

    /** The range that a plugin written against this version asks for: until 1.0 the next minor version may break it. */
    public static final String COMPATIBLE = ">=0.3.0 & <0.4.0";

    private Api() {}
}
