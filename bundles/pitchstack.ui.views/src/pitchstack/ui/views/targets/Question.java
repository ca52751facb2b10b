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
 * @param target the wanted position, or how far from where the stages stand; blank while none is typed
 * @param relative whether it is a distance from where the stages stand, positive towards higher positions
 * @param tolerance the largest error that counts as reached; blank for the tolerance of the axis
 * @param worn when a setting over worn teeth may be offered
 */
record Question(String target, boolean relative, String tolerance, WornPolicy worn) {
    /** Nothing typed yet. */
    static final Question NONE = new Question("", false, "", WornPolicy.AVOID);
    /** How many settings beside the best are offered at first: as many as can be read at a glance. */
    static final int ALTERNATIVES = 5;
    /** How many further ones are offered each time a person asks for more. */
    static final int MORE = 20;

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
     * @param alternatives how many settings beside the best to list
     */
    Reading read(AxisSpec axis, Setting from, Directions last, int alternatives) {
        long allowed;
        try {
            allowed = axis.tolerance(tolerance);
        } catch (QuantityException e) {
            return new Reading.BadTolerance(e.getMessage());
        }
        if (target.isBlank()) {
            return new Reading.Nothing();
        }
        try {
            return new Reading.Asked(new PlanRequest(position(axis, from), allowed, from, last, worn, alternatives));
        } catch (QuantityException e) {
            return new Reading.BadTarget(e.getMessage());
        } catch (ArithmeticException tooFar) {
            return new Reading.BadTarget("A distance of " + target.strip() + " leads farther than the program can count.");
        }
    }

    /** The target as a position. */
    private long position(AxisSpec axis, Setting from) {
        long typed = axis.scale().parse(target);
        return relative ? axis.positionFrom(from, typed) : typed;
    }
}
