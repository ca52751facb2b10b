// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.places;

/**
 * How much of a row can be shown at a scale.
 *
 * @param pitchPx the width of a tooth's cell in pixels
 */
public record Detail(double pitchPx) {
    /** Below this a tooth is a blur; a band with ticks says more. */
    public static final double LEAST_TOOTH_PX = 3;
    /** Below this the outline of a tooth would cover the tooth. */
    private static final double LEAST_OUTLINE_PX = 6;
    private static final double LEAST_TICK_PX = 5;

    /** Whether single teeth are drawn. */
    public boolean teeth() {
        return pitchPx >= LEAST_TOOTH_PX;
    }

    /** Whether teeth get an outline. */
    public boolean outlines() {
        return pitchPx >= LEAST_OUTLINE_PX;
    }

    /** A band has a tick at every so many teeth: a power of ten, at least 10. */
    public int tickEvery() {
        int every = 10;
        while (every * pitchPx < LEAST_TICK_PX && every < 1_000_000_000) {
            every *= 10;
        }
        return every;
    }

    /**
     * Every so many teeth a number can stand: 1, 2 or 5 times a power of ten.
     *
     * @param widthPx what a number takes, with the space around it
     */
    public int numberEvery(double widthPx) {
        int power = 1;
        while (power < 100_000_000) {
            for (int times : new int[] {1, 2, 5}) {
                if (times * power * pitchPx >= widthPx) {
                    return times * power;
                }
            }
            power *= 10;
        }
        return power;
    }
}
