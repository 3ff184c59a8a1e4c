package planewright.app.ui.across;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import planewright.app.across.Relation;
import planewright.app.across.View;
import planewright.app.ui.common.Texts;

/** What a line over builds tells, or why there is none, in the language of the window. */
final class SaidAcross {
    private SaidAcross() {}

    static String of(View view) {
        var relation = view.relation();
        var words = new ArrayList<String>();
        relation.problem().ifPresent(problem -> words.add(said(problem)));
        relation.formula(Locale.getDefault(Locale.Category.FORMAT))
                .ifPresent(formula -> words.add(Texts.ACROSS_LINE.text(relation.counting(), formula)));
        if (relation.trend().isPresent() && !relation.isTelling()) {
            words.add(Texts.ACROSS_NOT_TELLING.text());
        }
        words.addAll(asked(view));
        return String.join(" ", words);
    }

    private static List<String> asked(View view) {
        if (view.asked().isEmpty() || view.next().isEmpty()) {
            return List.of();
        }
        double at = view.asked().get();
        var next = view.next().get();
        var words = new ArrayList<String>();
        words.add(Texts.ACROSS_NEXT.text(
                view.onAxisAcross(at), view.onAxis(next.middle()), view.onAxis(next.low()), view.onAxis(next.high())));
        if (!view.relation().isAmong(at)) {
            words.add(Texts.ACROSS_BEYOND.text());
        }
        return words;
    }

    private static String said(Relation.Problem problem) {
        if (problem instanceof Relation.TooFew few) {
            return Texts.ACROSS_TOO_FEW.text(few.count());
        } else if (problem instanceof Relation.AllAlike alike) {
            return Texts.ACROSS_ALL_ALIKE.text(alike.value());
        } else if (problem instanceof Relation.NotAbove0 wrong) {
            return Texts.ACROSS_NOT_ABOVE_0.text(wrong.build(), wrong.value());
        }
        return Texts.ACROSS_NO_POWER.text();
    }
}
