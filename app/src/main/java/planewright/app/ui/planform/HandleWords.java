package planewright.app.ui.planform;

import java.util.Optional;
import planewright.api.journal.Planform;
import planewright.app.ui.common.Texts;

/** Handles in words, for the line below the drawing, for people who cannot see it, and for the list of edits. */
final class HandleWords {
    private final Lengths lengths;

    HandleWords(Lengths lengths) {
        this.lengths = lengths;
    }

    /** Which one it is and where. */
    String of(Planform shape, Handle handle, Sight sight) {
        var surface = shape.surfaces().get(handle.surface());
        var place = handle.place(shape);
        var what = what(handle);
        if (handle.part().isOfControl()) {
            var control = surface.controls().get(handle.number());
            double share = switch (handle.part()) {
                case FROM -> control.from();
                case TO -> control.to();
                case HINGE -> control.hinge();
                default -> control.hingeTo();
            };
            return surface.name() + ", " + control.name() + ", " + what + " · " + Lengths.percent(share);
        }
        var section = handle.number() == 0
                ? Texts.PLANFORM_ROOT.text()
                : handle.number() == surface.panels().size()
                        ? Texts.PLANFORM_TIP.text()
                        : Texts.PLANFORM_SECTION.text(handle.number() + 1);
        return surface.name() + ", " + section + ", " + what + " · "
                + Texts.PLANFORM_AT.text(lengths.text(place.x()), lengths.text(sight.across(place)));
    }

    /** The edit that moving it is. */
    String edit(Optional<Handle> handle, PlanformDraft draft) {
        return draft.shape()
                .flatMap(shape -> handle.filter(held -> held.isIn(shape))
                        .map(held -> Texts.PLANFORM_MOVE_EDIT.text(
                                what(held), shape.surfaces().get(held.surface()).name())))
                .orElseGet(Texts.PLANFORM_EDIT::text);
    }

    private static String what(Handle handle) {
        return (switch (handle.part()) {
                    case EDGE -> Texts.PLANFORM_EDGE_HANDLE;
                    case CHORD -> Texts.PLANFORM_CHORD_END;
                    case FROM -> Texts.PLANFORM_INNER_END;
                    case TO -> Texts.PLANFORM_OUTER_END;
                    case HINGE -> Texts.PLANFORM_HINGE_HANDLE;
                    case HINGE_TO -> Texts.PLANFORM_HINGE_END_HANDLE;
                })
                .text();
    }
}
