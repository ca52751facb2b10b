// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.tour;

import java.util.List;

/** Where someone stands on the first tour. One step after the other; what is done stays done. */
final class Tour {
    /** Where the fence of the examples stands when it is opened: 48 teeth of 1/4 in. */
    private static final int RACK_AT_FIRST = 48;

    private final List<TourStep> steps = List.of(
            new TourStep("Open the fence", "It is one of the examples, and opens as a copy that you cannot spoil.",
                    "Open the fence", TourSight::isFence),
            new TourStep("Move a stage", "Click the row “Rack” in the drawing and press → a few times, or drag it. Every press is"
                    + " one tooth, and the position above the drawing goes along.", "",
                    sight -> sight.isFence() && sight.rack() != RACK_AT_FIRST),
            new TourStep("Take it back", "Press Ctrl+Z until the rack stands at index +48 again. Everything can be undone.", "",
                    sight -> sight.isFence() && sight.rack() == RACK_AT_FIRST),
            new TourStep("Set a target", "In the view Target type 37.63 and read the moves below it: which stage, how many teeth,"
                    + " which way. Press Ctrl+Enter to make them.", "Go to Target",
                    sight -> sight.isFence() && sight.standsAt("37.63 in")),
            new TourStep("See what is reached", "The view Coverage shows the whole travel as a strip: full where it is reached,"
                    + " lower and hatched where only over worn teeth, flat where it is not.", "Go to Coverage",
                    sight -> sight.isFence() && sight.isShown().test(TourView.COVERAGE)),
            new TourStep("Bar some teeth", "Click the lower row of “Rack”, choose Stage > Mark Teeth… and mark tooth 200 as"
                    + " barred. The strip shows at once what that costs.", "",
                    sight -> sight.isFence() && sight.hasBarredTeeth()),
            new TourStep("Keep it", "Press Ctrl+S and give it a name. Until then a copy of unsaved work is kept for you.", "",
                    TourSight::isSaved));

    private int current;

    /** All steps. */
    List<TourStep> steps() {
        return steps;
    }

    /** The step to do now, counted from 0; as many as there are steps when all are done. */
    int current() {
        return current;
    }

    /** Whether all is done. */
    boolean isOver() {
        return current == steps.size();
    }

    /**
     * Ticks off what is done.
     *
     * @return whether anything was
     */
    boolean look(TourSight sight) {
        int before = current;
        while (!isOver() && steps.get(current).done().test(sight)) {
            current++;
        }
        return current != before;
    }

    /** Leaves the step out. */
    void skip() {
        current = Math.min(steps.size(), current + 1);
    }

    /** Begins anew. */
    void restart() {
        current = 0;
    }
}
