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

    /** {@return UCUM code of the unit it is shown in; needed for a quantity} */
    String unit() default "";
}
