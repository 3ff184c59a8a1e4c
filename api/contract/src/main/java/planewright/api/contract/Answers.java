package planewright.api.contract;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import planewright.api.calculator.Finding;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.quantity.Measured;

/** Looks through everything that a calculator answers. */
final class Answers {
    private Answers() {}

    /** How many numbers there are: every one is finite, nothing is null, every finding says something. */
    static int check(String what, Record results) {
        return numbers(what + ": ", results);
    }

    /** A refusal names inputs that there are, and says what each is, what it was given and what is accepted. */
    static void check(String what, UnsuitableInput refused, Class<? extends Record> inputs) {
        for (var problem : refused.problems()) {
            Checks.require(
                    problem.input().isEmpty() || known(problem.input(), inputs),
                    what + " refuses '" + problem.input() + "', which is no input");
            Checks.require(
                    !problem.name().isBlank()
                            && !problem.value().isBlank()
                            && !problem.accepted().isBlank(),
                    what + " refuses without saying what, which value, or what is accepted: " + problem);
        }
    }

    private static int numbers(String place, Object value) {
        Checks.require(value != null, place + "null");
        if (value instanceof Double number) {
            Checks.require(Double.isFinite(number), place + number + "; accepted: a finite number");
            return 1;
        } else if (value instanceof Measured<?> measured) {
            return numbers(place, measured.value().getValue().doubleValue())
                    + measured.plusMinus()
                            .map(spread ->
                                    numbers(place + "± ", spread.getValue().doubleValue()))
                            .orElse(0);
        } else if (value instanceof Optional<?> optional) {
            return optional.map(present -> numbers(place, present)).orElse(0);
        } else if (value instanceof List<?> list) {
            return list.stream().mapToInt(element -> numbers(place, element)).sum();
        } else if (value instanceof Finding finding) {
            Checks.require(!finding.text().isBlank(), place + "a finding that says nothing");
            return 0;
        }
        return value instanceof Record record ? components(place, record) : 0;
    }

    private static int components(String place, Record record) {
        return Arrays.stream(record.getClass().getRecordComponents())
                .mapToInt(component -> numbers(place + component.getName() + " ", Records.value(record, component)))
                .sum();
    }

    /** Whether a path such as {@code parts[2].mass} leads to a component. */
    private static boolean known(String path, Class<?> inputs) {
        Class<?> type = inputs;
        for (var step : List.of(path.split("\\."))) {
            if (type == null || !type.isRecord()) {
                return false;
            }
            var name = step.replaceFirst("\\[\\d+]$", "");
            type = Arrays.stream(type.getRecordComponents())
                    .filter(component -> component.getName().equals(name))
                    .findFirst()
                    .map(Records::content)
                    .orElse(null);
        }
        return type != null;
    }
}
