package planewright.api.calculator;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.apiguardian.api.API;

/** What a calculator is. */
@Documented
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@API(status = API.Status.MAINTAINED, since = "0.1.0")
public @interface About {
    /** {@return plugin and name, {@code balance.ledger}: scripts use it, so it never changes} */
    String id();

    /** {@return version of the computation; a kept result carries it} */
    String version();

    /** {@return two or three words for lists} */
    String title();

    /** {@return the question it answers, as a builder would ask it} */
    String question();

    /** {@return published sources of the method} */
    String[] sources() default {};

    /** {@return what can hurt someone or something where the result is put to use} */
    String[] cautions() default {};

    /** {@return whether it answers at once, so that the program may recompute at every keystroke} */
    boolean quick() default true;
}
