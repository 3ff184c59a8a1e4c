package planewright.api.calculator;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.apiguardian.api.API;

/** Describes a component of a calculator's inputs record, or of a row in one. Quantities are written {@code 12 mm}. */
@Documented
@Target(ElementType.RECORD_COMPONENT)
@Retention(RetentionPolicy.RUNTIME)
@API(status = API.Status.MAINTAINED, since = "0.1.0")
public @interface Input {
    /** What it is, in a word or two. */
    String label();

    /** A sentence for who is not sure what to put here. */
    String help() default "";

    /** UCUM code of the unit offered first; needed for a quantity. */
    String unit() default "";

    /** Where nothing else is known. */
    String initial() default "";

    /** Refused unless greater. */
    String above() default "";

    /** Refused where smaller. */
    String atLeast() default "";

    /** Refused where greater. */
    String atMost() default "";

    /** Smaller than this is unusual: look again. */
    String usuallyFrom() default "";

    /** Greater than this is unusual: look again. */
    String usuallyTo() default "";

    /** Heading under which the form shows it; empty for the first. */
    String under() default "";

    /** Where in the journal it can be taken from. */
    From from() default @From(From.Place.NOWHERE);
}
