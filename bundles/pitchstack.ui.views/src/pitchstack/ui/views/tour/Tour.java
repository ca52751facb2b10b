// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.tour;

import java.util.List;

/** Where someone stands on the first tour. One step after the other; what is done stays done. */
final class Tour {
    /** Where the fence of the examples stands when it is opened: 48 teeth of 1/4 in. */
    static final int RACK_AT_FIRST = 48;
    /** Where the fence stands then. */
    static final String AT_FIRST = "12 in";
    /** Half of the fence's step of 0.010 in. */
    private static final String HALF_STEP = "0.005";

    private final List<TourStep> steps = List.of(
            new TourStep("Open the fence", "It is one of the examples, and opens as a copy that you cannot spoil. One that"
                    + " was moved before stays as it is: the tour begins with a fresh copy.", "Open the fence",
                    TourSight::isFresh),
            new TourStep("Move a stage", "Click the row “Rack” in the drawing and press → a few times, or drag it. Every press is"
                    + " one tooth, and the position above the drawing goes along.", "",
                    sight -> sight.isFence() && sight.rack() != RACK_AT_FIRST),
            new TourStep("Take it back", "Press Ctrl+Z until the rack stands at index +48 again. Everything can be undone.", "",
                    sight -> sight.isFence() && sight.rack() == RACK_AT_FIRST),
            new TourStep("Set a target", "In the view Target type 37.63 and read the moves below it: which stage, how many teeth,"
                    + " which way. Press Ctrl+Enter, or Apply, to make them.", "Go to Target",
                    sight -> sight.isFence() && sight.standsAt("37.63 in")),
            new TourStep("See the coverage", "The view Coverage draws the travel as a strip: blue is reached, hatched only over worn"
                    + " teeth, grey not. Type " + HALF_STEP + " as the tolerance there, half a step, and all is reached.", "Go to Coverage",
                    sight -> sight.isFence() && sight.isReachedWithin(HALF_STEP)),
            new TourStep("Bar a tooth", "Click the long row of teeth on the base, choose Stage > Mark Teeth…, type 200 as the"
                    + " first tooth, choose barred, and press Mark. The strip shows at once what that costs.", "",
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
