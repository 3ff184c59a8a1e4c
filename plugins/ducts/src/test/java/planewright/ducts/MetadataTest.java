package planewright.ducts;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.pf4j.Extension;
import planewright.api.calculator.About;
import planewright.api.calculator.Calculator;
import planewright.api.calculator.Input;
import planewright.api.calculator.Result;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;

/** What a form, a command line and a schema are made of is there. */
class MetadataTest {
    @ParameterizedTest
    @ValueSource(classes = SubmergedInlet.class)
    void saysWhatItIs(Class<? extends Calculator<?, ?>> calculator) {
        var about = calculator.getAnnotation(About.class);
        assertThat(about.id()).isEqualTo("ducts.inlet");
        assertThat(about.version()).isNotBlank();
        assertThat(about.title()).isNotBlank();
        assertThat(about.question()).endsWith("?");
        assertThat(about.sources()).anyMatch(source -> source.contains("NACA RM A7I30"));
        assertThat(about.sources()).anyMatch(source -> source.contains("JCGM 100:2008"));
        for (var word :
                List.of("Hot wire", "fumes", "local rules", "Knife", "mask", "lithium pack", "maker's limits")) {
            assertThat(about.cautions()).as(word).anyMatch(caution -> caution.contains(word));
        }
        assertThat(calculator).hasAnnotation(Extension.class).isPublic().isFinal();
        assertThat(calculator.getConstructors())
                .singleElement()
                .satisfies(constructor ->
                        assertThat(constructor.getParameterCount()).isZero());
    }

    /** Every input has a label, a help sentence and, if a quantity, a unit; labels within a record differ. */
    @ParameterizedTest
    @ValueSource(classes = SubmergedInlet.Inputs.class)
    void everyInputIsDescribed(Class<? extends Record> inputs) {
        assertThat(described(inputs, true)).isGreaterThan(8);
    }

    @ParameterizedTest
    @ValueSource(classes = SubmergedInlet.Results.class)
    void everyResultIsDescribed(Class<? extends Record> results) {
        assertThat(described(results, false)).isGreaterThan(20);
    }

    private static int described(Class<?> type, boolean input) {
        assertThat(Modifier.isPublic(type.getModifiers())).as(type.getName()).isTrue();
        var labels = new HashSet<String>();
        int count = 0;
        for (var component : type.getRecordComponents()) {
            var label = input ? input(component) : result(component);
            assertThat(labels.add(label))
                    .as("label '%s' of %s once", label, type.getSimpleName())
                    .isTrue();
            count++;
            if (component.getType() == List.class) {
                var element = (Class<?>) ((ParameterizedType) component.getGenericType()).getActualTypeArguments()[0];
                count += element.getEnclosingClass() == type.getEnclosingClass() ? described(element, input) : 0;
            }
        }
        return count;
    }

    private static String input(RecordComponent component) {
        var input = component.getAnnotation(Input.class);
        assertThat(input).as(component.toString()).isNotNull();
        assertThat(input.help()).as("help of " + component.getName()).matches("(?s)[A-Z].*\\.");
        unit(component, input.unit());
        return input.label();
    }

    private static String result(RecordComponent component) {
        var result = component.getAnnotation(Result.class);
        assertThat(result).as(component.toString()).isNotNull();
        unit(component, result.unit());
        return result.label();
    }

    private static void unit(RecordComponent component, String code) {
        boolean quantity = component.getType() == Measured.class
                || component.getGenericType().getTypeName().contains(Measured.class.getName());
        assertThat(Units.ofCode(code).isPresent())
                .as("unit '%s' of %s", code, component)
                .isEqualTo(quantity);
    }
}
