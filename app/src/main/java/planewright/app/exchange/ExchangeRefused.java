package planewright.app.exchange;

import java.io.IOException;

/** Something that cannot be brought in or taken out at all; the message names it and says why and what to do. */
public final class ExchangeRefused extends IOException {
    private static final long serialVersionUID = 1L;

    public ExchangeRefused(String message) {
        super(message);
    }
}
