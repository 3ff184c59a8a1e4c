package planewright.api.journal;

import org.apiguardian.api.API;

/** A picture of an entry; the journal keeps the file under its hash. */
@API(status = API.Status.MAINTAINED, since = "0.1.0")
public interface Picture {
    /** {@return SHA-256 of the file, 64 lower-case hexadecimal digits} */
    String hash();

    /** {@return how the file's name ends: {@code jpg}, {@code png}} */
    String type();

    /** {@return what is to be seen; may be empty} */
    String caption();
}
