// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.places;

/**
 * The heights of the drawing, all in pixels from its top. From the top down: the ruler, then for each stage its moved
 * body, the strip of the rider row, the teeth, and the strip of the base row; at the bottom the base.
 *
 * @param stages how many stages there are
 * @param top where the carriage begins
 * @param body the height of a body
 * @param teeth the height of the teeth
 * @param lifted the stage that is lifted with all that rides on it
 * @param lift by how much, 0 for none
 */
public record Bands(int stages, int top, int body, int teeth, int lifted, int lift) {
    /** The height of the ruler. */
    public static final int RULER = 44;
    /** The height of the solid part of a row, between its teeth and its body. */
    public static final int STRIP = 8;
    /** From here on a body holds three lines of small text: marks of the row above, its name, marks of the row below. */
    public static final int ROOMY_BODY = 52;
    /** From here on a body holds its name and one line of small text. */
    private static final int TWO_LINES = 35;
    /** A body that holds its name. Lower ones could not be read or taken hold of; the drawing scrolls instead. */
    static final int LEAST_BODY = 19;
    static final int MOST_BODY = 84;
    /** Teeth of this height are given up only where the drawing would not fit otherwise. */
    static final int USUAL_TEETH = 24;
    static final int LEAST_TEETH = 10;
    static final int MOST_TEETH = 34;
    /** How far a lifted stage clears the teeth below. */
    private static final int CLEARANCE = 2;
    /** The gap between ruler and carriage, and below the base. */
    private static final int GAP = 10;

    /**
     * Shares out a height, first to all bodies down to their names, then to teeth and bodies for what else they show.
     *
     * @param stages how many stages there are, at least 0
     * @param height what there is; where it is too little even for names the drawing is higher, and scrolls
     */
    public static Bands of(int stages, int height) {
        int free = height - RULER - 2 * GAP;
        int forTeeth = clamp(free / 12, USUAL_TEETH, MOST_TEETH);
        if (stages > 0 && free < stages * (2 * STRIP + forTeeth) + (stages + 1) * LEAST_BODY) {
            forTeeth = clamp((free - (stages + 1) * LEAST_BODY) / stages - 2 * STRIP, LEAST_TEETH, USUAL_TEETH);
        }
        int body = clamp((free - stages * (2 * STRIP + forTeeth)) / (stages + 1), LEAST_BODY, MOST_BODY);
        int used = stages * (2 * STRIP + forTeeth) + (stages + 1) * body;
        return new Bands(stages, RULER + GAP + Math.max(0, (free - used) / 2), body, forTeeth, 0, 0);
    }

    /** The height at which {@link #of} leaves nothing free, or what there is if that is less. */
    public static int snug(int stages, int most) {
        Bands roomy = of(stages, most);
        return Math.min(most, roomy.height() - (roomy.top() - RULER - GAP));
    }

    private static int clamp(int value, int least, int most) {
        return Math.max(least, Math.min(most, value));
    }

    /** The same heights with a stage, and all that rides on it, lifted out of its teeth by a part of the way, 0 to 1. */
    public Bands lifted(int stage, double part) {
        return new Bands(stages, top, body, teeth, stage, (int) Math.round(part * (teeth + CLEARANCE)));
    }

    /** Whether a body that has a row on one side only has room for the marks and numbers of that row beside its name. */
    public boolean roomyOnOneSide() {
        return body >= TWO_LINES;
    }

    /** Whether a body has room for marks and numbers of its rows beside its name. */
    public boolean roomy() {
        return body >= ROOMY_BODY;
    }

    /** The height of a stage, from the top of its moved body to the bottom of its base row. */
    public int stageHeight() {
        return body + 2 * STRIP + teeth;
    }

    /** The top of a stage, 0 being the lowest; for −1 the top of the base. */
    public int stageTop(int stage) {
        return top + (stages - 1 - stage) * stageHeight() - (stage >= lifted ? lift : 0);
    }

    /** The place of the stack for a new stage that is nearest to a height, from 0 on the base to the number of stages. */
    public int gap(int y) {
        int nearest = 0;
        for (int gap = 1; gap <= stages; gap++) {
            if (Math.abs(gapY(gap) - y) < Math.abs(gapY(nearest) - y)) {
                nearest = gap;
            }
        }
        return nearest;
    }

    /** Where a new stage would go in: the top of the body that it would stand on. */
    public int gapY(int gap) {
        return stageTop(gap - 1);
    }

    /** The top of the strip of a stage's rider row. */
    public int riderTop(int stage) {
        return stageTop(stage) + body;
    }

    /** Where a stage's teeth begin. */
    public int teethTop(int stage) {
        return riderTop(stage) + STRIP;
    }

    /** The top of the strip of a stage's base row, where its teeth end. */
    public int baseTop(int stage) {
        return stageTop(stage - 1) - STRIP;
    }

    /** Where the teeth of a row begin: those of both rows in the same place, unless the stage is lifted. */
    public int teethTop(int stage, boolean base) {
        return base ? baseTop(stage) - teeth : teethTop(stage);
    }

    /** The height of the whole drawing. */
    public int height() {
        return stageTop(-1) + body + GAP;
    }
}
