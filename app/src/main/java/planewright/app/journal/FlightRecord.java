package planewright.app.journal;

import java.util.Optional;
import javax.measure.quantity.Time;
import planewright.api.journal.Flight;
import planewright.api.quantity.Measured;

/** A flight as the journal holds it. */
public record FlightRecord(String id, Optional<Measured<Time>> duration, String conditions, String behaviour)
        implements Flight {}
