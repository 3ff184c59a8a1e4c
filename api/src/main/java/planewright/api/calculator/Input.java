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
    /** {@return what it is, in a word or two} */
    String label();

    /** {@return a sentence for who is not sure what to put here} */
    String help() default "";

    /** {@return UCUM code of the unit offered first; needed for a quantity} */
    String unit() default "";

    /** {@return the value where nothing else is known, as it would be typed; empty for none} */
    String initial() default "";

    /** {@return the bound that a value must exceed, else it is refused; empty for none} */
    String above() default "";

    /** {@return the least value that is not refused; empty for none} */
    String atLeast() default "";

    /** {@return the greatest value that is not refused; empty for none} */
    String atMost() default "";

    /** {@return the least value that is usual; a smaller one is remarked on; empty for none} */
    String usuallyFrom() default "";

    /** {@return the greatest value that is usual; a greater one is remarked on; empty for none} */
    String usuallyTo() default "";

    /** {@return heading under which the form shows it; empty for the first} */
    String under() default "";

    /** {@return where in the journal it can be taken from} */
    From from() default @From(From.Place.NOWHERE);
}
