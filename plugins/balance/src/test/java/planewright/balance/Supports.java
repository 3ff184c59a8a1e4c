package planewright.balance;

import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Mass;
import planewright.api.calculator.Language;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;

/** Short ways to write weighings: pounds and inches as in the handbooks, or grams and millimetres. */
final class Supports {
    private Supports() {}

    static Weighing.Results weigh(Weighing.SupportLine... supports) throws UnsuitableInput {
        return weigh(List.of(supports));
    }

    static Weighing.Results weigh(List<Weighing.SupportLine> supports) throws UnsuitableInput {
        return WeighingAnswer.of(
                        new Words(Language.ENGLISH),
                        new Weighing.Inputs(supports, Optional.empty(), Optional.empty(), Optional.empty()))
                .results();
    }

    static Weighing.SupportLine metric(String name, Measured<Mass> reading, double x, String round) {
        return new Weighing.SupportLine(
                name,
                reading,
                Measured.of(0, Units.GRAM),
                Measured.of(x, Units.MILLIMETRE),
                Measured.of(0, Units.MILLIMETRE),
                round);
    }

    static Weighing.SupportLine support(String name, double load, double x, double y) {
        return new Weighing.SupportLine(
                name, pounds(load), pounds(0), Measured.of(x, Units.INCH), Measured.of(y, Units.INCH), "");
    }

    static Measured<Mass> pounds(double pounds) {
        return Measured.of(pounds, Units.POUND);
    }
}
