package planewright.api.calculator;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.apiguardian.api.API;

/** Describes a component of a calculator's results record, or of a row in one. */
@Documented
@Target(ElementType.RECORD_COMPONENT)
@Retention(RetentionPolicy.RUNTIME)
@API(status = API.Status.MAINTAINED, since = "0.1.0")
public @interface Result {
    /** {@return what it is, in a word or two} */
    String label();

    /** {@return a sentence on how to read it} */
    String help() default "";

    /** {@return the heading that it stands under, apart from the main figures; empty for a main figure} */
    String under() default "";

    /**
     * {@return the component that holds the other end of a range that begins with this one; both are shown as one, {@code 20 mm to 30 mm}}
     */
    String upTo() default "";

    /** {@return UCUM code of the unit it is shown in; needed for a quantity} */
    String unit() default "";
}
