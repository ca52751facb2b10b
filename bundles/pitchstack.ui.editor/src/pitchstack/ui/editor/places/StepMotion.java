// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.places;

import pitchstack.core.plan.Step;

/**
 * One step as it goes on in time: the stage is lifted, moved and seated, and rests.
 *
 * @param step the step
 */
public record StepMotion(Step step) {
    private static final int LIFT_MS = 400;
    private static final int SEAT_MS = 400;
    private static final int REST_MS = 500;
    private static final int TOOTH_MS = 120;
    private static final int LEAST_MOVE_MS = 400;
    /** Nobody wants to watch a long rack being counted. */
    private static final int MOST_MOVE_MS = 3000;

    private int moveMs() {
        return (int) Math.max(LEAST_MOVE_MS, Math.min(MOST_MOVE_MS, Math.abs((long) step.teeth()) * TOOTH_MS));
    }

    /** How long it lasts. */
    public int durationMs() {
        return LIFT_MS + moveMs() + SEAT_MS + REST_MS;
    }

    /** How far the stage is lifted, from 0 seated to 1. */
    public double lift(int ms) {
        double seating = (ms - LIFT_MS - moveMs()) / (double) SEAT_MS;
        return Math.max(0, Math.min(1, Math.min(ms / (double) LIFT_MS, 1 - seating)));
    }

    /** The index it stands over: whole teeth only. */
    public int index(int ms) {
        double part = Math.max(0, Math.min(1, (ms - LIFT_MS) / (double) moveMs()));
        return step.from() + (int) Math.round(part * step.teeth());
    }

    /** What happens at a time. */
    public Phase phase(int ms) {
        return ms < LIFT_MS ? Phase.LIFT : ms < LIFT_MS + moveMs() ? Phase.MOVE : Phase.SEAT;
    }

    /** The parts of a step. */
    public enum Phase {
        /** It is lifted out of its teeth. */
        LIFT,
        /** It is moved, tooth by tooth. */
        MOVE,
        /** It is seated, and rests. */
        SEAT
    }
}
