package planewright.api.calculator;

import java.lang.annotation.Documented;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.apiguardian.api.API;

/** Where in the journal an input can be taken from; always offered, never forced. */
@Documented
@Target({})
@Retention(RetentionPolicy.RUNTIME)
@API(status = API.Status.MAINTAINED, since = "0.1.0")
public @interface From {
    /** {@return the place} */
    Place value();

    /** {@return which measurement, set-up value, field, or heading; see the places} */
    String name() default "";

    /** Places in the journal. */
    enum Place {
        /** The builder writes it. */
        NOWHERE,
        /** The newest measurement called {@link From#name()}; within {@link #MEASUREMENT_ROWS} see there. */
        MEASUREMENT,
        /**
         * The set-up value called {@link From#name()} that the build flies with now, leaving out what results of this
         * calculator have set; within {@link #SET_UP_ROWS} see there.
         */
        SET_UP,
        /** The build's {@code name}, {@code layout}, {@code datum} or {@code planform}. */
        BUILD,
        /** For a list: a row for each part of the mass ledger. */
        PART_ROWS,
        /**
         * Within {@link #PART_ROWS}: the part's {@code name}, {@code group}, {@code mass}, {@code x}, {@code y},
         * {@code z}, {@code length}, {@code width} or {@code height}. Its mass is the newest measurement of mass that
         * bears the part's name, else the ledger's own.
         */
        PART,
        /** For a list: a row for each control surface of the build's planform. */
        CONTROL_ROWS,
        /**
         * Within {@link #CONTROL_ROWS}: the control surface's {@code name}, the {@code surface} that bears it, its {@code
         * role}, and as shares {@code from}, {@code to}, {@code hinge} and {@code hingeTo}, which is empty where it is
         * that of {@code hinge}.
         */
        CONTROL,
        /**
         * For a list: a row for each thing measured whose name starts with {@link From#name()}. With {@code scale},
         * measurements {@code scale nose}, {@code scale nose x} and {@code scale left} give the rows {@code nose} and
         * {@code left}: a {@link #MEASUREMENT} without name is {@code scale nose} itself, one named {@code x} is
         * {@code scale nose x}.
         */
        MEASUREMENT_ROWS,
        /** Within {@link #MEASUREMENT_ROWS} and {@link #SET_UP_ROWS}: the row's own name, {@code nose}. */
        ROW_NAME,
        /**
         * For a list: a row for each set-up value that the build flies with and whose name holds the word {@link
         * From#name()}, except where a comma tells a variant, as in {@code elevator throw, low rate}. With {@code throw},
         * {@code aileron throw up} gives a row: its {@link #ROW_NAME} is the whole name, a {@link #SET_UP} without name the
         * value, where that is of the same kind, and a {@link #MEASUREMENT} named {@code chord} is {@code aileron chord}.
         */
        SET_UP_ROWS,
        /** For a list: a row for each joint of the log, the newest first; of joints that share a name, the newest. */
        JOINT_ROWS,
        /**
         * The joint's {@code name}, {@code material}, {@code start}, {@code handsOffUntil} or {@code fullyCured}. Within
         * {@link #JOINT_ROWS} of the row's joint, elsewhere of the newest joint that has no {@code fullyCured} yet.
         */
        JOINT,
        /**
         * For a text: the material of the newest joint. The program offers the names of its table of materials that
         * belong under {@link From#name()}, such as {@code cure}; other words are let through, for joints hold words.
         */
        MATERIAL,
        /**
         * For an outline: the journal's outline template called {@link From#name()}; without a name, the newest that was
         * taken from this build.
         */
        TEMPLATE,
        /** For a picture: the newest of the build's log whose caption holds {@link From#name()}; without a name, the newest. */
        PICTURE,
        /** For a calendar: that of the journal. */
        CALENDAR
    }
}
