// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.targets;

import pitchstack.core.plan.PlanRequest;
import pitchstack.core.plan.WornPolicy;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Directions;
import pitchstack.core.stack.Setting;
import pitchstack.core.units.QuantityException;

/**
 * What a person asks, as typed.
 *
 * @param target the wanted position; blank while none is typed
 * @param tolerance the largest error that counts as reached; blank for the tolerance of the axis
 * @param worn when a setting over worn teeth may be offered
 */
record Question(String target, String tolerance, WornPolicy worn) {
    /** Nothing typed yet. */
    static final Question NONE = new Question("", "", WornPolicy.AVOID);
    /** How many settings beside the best are offered: as many as can be read at a glance. */
    static final int ALTERNATIVES = 5;

    /** What the typed texts come to on an axis. */
    sealed interface Reading {
        /** Nothing is asked. */
        record Nothing() implements Reading { }

        /**
         * It can be planned.
         *
         * @param request what to ask the planner
         */
        record Asked(PlanRequest request) implements Reading { }

        /**
         * The target cannot be read.
         *
         * @param sentence what is wrong and what is allowed
         */
        record BadTarget(String sentence) implements Reading { }

        /**
         * The tolerance cannot be read.
         *
         * @param sentence what is wrong and what is allowed
         */
        record BadTolerance(String sentence) implements Reading { }
    }

    /**
     * Reads the texts.
     *
     * @param axis the axis to plan on
     * @param from where its stages stand
     * @param last which way each moved last
     */
    Reading read(AxisSpec axis, Setting from, Directions last) {
        long allowed;
        try {
            allowed = tolerance.isBlank() ? axis.tolerance() : axis.scale().parse(tolerance);
        } catch (QuantityException e) {
            return new Reading.BadTolerance(e.getMessage());
        }
        if (allowed < 0) {
            return new Reading.BadTolerance(
                    "A tolerance of " + tolerance.strip() + " is not allowed; it must not be negative.");
        }
        if (target.isBlank()) {
            return new Reading.Nothing();
        }
        try {
            return new Reading.Asked(new PlanRequest(axis.scale().parse(target), allowed, from, last, worn, ALTERNATIVES));
        } catch (QuantityException e) {
            return new Reading.BadTarget(e.getMessage());
        }
    }
}
