// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.design;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * Finds printed stages that divide one tooth of a rack without a gap.
 *
 * <p>A stage of pitch c·P − d, with P the rack's pitch and c whole, moves the carriage by −d beside whole rack teeth. The
 * finest stage takes d as the step that is wanted, or a little less where that pitch cannot be made, and N neighbouring
 * indices reach N places d apart. Each stage below takes N times the difference of the one above, or less, so that its
 * places follow each other without a gap; the lowest needs as many indices as its difference goes into P, rounded up.
 * No two neighbouring places are then farther apart than the step, those at the seam of two rack teeth included.
 */
public final class FineStages {
    /** Indices one stage may take: more are slow to count by hand, and make a long row. */
    public static final int MOST_INDICES = 30;
    /** With more, the sum of all their play is hardly finer than one tooth's scatter. */
    public static final int MOST_STAGES = 3;

    private final long rack;
    private final long least;
    private final Grain grain;

    /**
     * @param rack the rack's pitch, above 0
     * @param least the smallest pitch that can be printed, at least 0
     * @param grain the pitches that can be written down
     */
    public FineStages(long rack, long least, Grain grain) {
        this.rack = rack;
        this.least = least;
        this.grain = grain;
    }

    /**
     * The stages for a step, the lowest first; none where the rack alone is fine enough.
     *
     * @param step the widest spacing of neighbouring positions that is wanted, above 0
     * @return empty where {@value #MOST_STAGES} stages of {@value #MOST_INDICES} indices do not divide a tooth so finely
     */
    public Optional<List<FineStage>> dividing(long step) {
        if (step >= rack) {
            return Optional.of(List.of());
        }
        for (int stages = 1; stages <= MOST_STAGES; stages++) {
            List<FineStage> found = divided(step, stages);
            if (found.stream().allMatch(stage -> stage.indices() <= MOST_INDICES)) {
                return Optional.of(found);
            }
        }
        return Optional.empty();
    }

    /** The smallest step that can be divided into, in whole counts. */
    public long finest() {
        long coarsest = rack;
        long tooFine = 0;
        while (coarsest - tooFine > 1) {
            long middle = tooFine + (coarsest - tooFine) / 2;
            if (dividing(middle).isPresent()) {
                coarsest = middle;
            } else {
                tooFine = middle;
            }
        }
        return coarsest;
    }

    private List<FineStage> divided(long step, int stages) {
        List<FineStage> found = new ArrayList<>();
        long wanted = step;
        for (int left = stages; left >= 1; left--) {
            long pitch = pitch(wanted);
            long difference = difference(pitch);
            // A coarse grain may leave no difference, or jump past the rack's own pitch.
            if (difference == 0 || difference > wanted) {
                return List.of(new FineStage(rack, Integer.MAX_VALUE));
            }
            long parts = -Math.floorDiv(-rack, difference);
            int indices = (int) Math.min(Integer.MAX_VALUE, left == 1 ? parts : root(parts, left));
            found.add(new FineStage(pitch, indices));
            wanted = difference * indices;
            if (wanted >= rack) {
                break;
            }
        }
        Collections.reverse(found);
        return found;
    }

    /** The pitch that differs from whole rack teeth by a length, or by as little less as can be made. */
    private long pitch(long difference) {
        long teeth = 1;
        while (teeth * rack - difference < least || teeth * rack - difference < 1) {
            teeth++;
        }
        return grain.up(teeth * rack - difference);
    }

    private long difference(long pitch) {
        return Math.floorMod(-pitch, rack);
    }

    private static long root(long number, int degree) {
        long root = Math.round(Math.pow(number, 1.0 / degree));
        while (Math.pow(root, degree) < number) {
            root++;
        }
        return Math.max(2, root);
    }
}
